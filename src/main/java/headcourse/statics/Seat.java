package headcourse.statics;

import headcourse.geom.Point;

/**
 * Where a stone lies on the jamb, level.
 *
 * @param inner its end towards the opening: the jamb line, or the stone's inner joint beyond it
 * @param outer under the stone's outer joint
 */
public record Seat(Point inner, Point outer) {
  Seat mirrored() {
    return new Seat(inner.mirrored(), outer.mirrored());
  }
}
