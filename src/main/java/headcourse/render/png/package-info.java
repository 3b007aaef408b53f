/** Pictures in pixels, by Batik; its classes are loaded when a picture is asked for. */
package headcourse.render.png;
