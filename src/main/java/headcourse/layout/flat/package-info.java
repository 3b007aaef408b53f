/** Flat heads: what the job asks of them, and which stones and lines each shape has. */
package headcourse.layout.flat;
