/**
 * Plane geometry in bare doubles: millimetres and radians. Nothing outside this package, the layout
 * and the drawing does arithmetic on bare doubles; lengths that are printed are {@code
 * headcourse.units.Length}.
 */
package headcourse.geom;
