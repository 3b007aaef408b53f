package headcourse.statics;

import headcourse.geom.Point;

/**
 * Where an end stone lies on the jamb, level.
 *
 * @param inner at the jamb line
 * @param outer under the end joint
 */
public record Seat(Point inner, Point outer) {
  Seat mirrored() {
    return new Seat(inner.mirrored(), outer.mirrored());
  }
}
