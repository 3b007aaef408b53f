/** A job's folder as one page for a browser. */
package headcourse.overview;
