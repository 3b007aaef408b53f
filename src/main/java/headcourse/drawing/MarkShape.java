package headcourse.drawing;

import headcourse.geom.Box;
import headcourse.geom.Point;
import java.util.List;

/** A mark as ink on a page: a box around it, and its exact shape once somebody comes near. */
abstract sealed class MarkShape permits TextShape, LineShape {
  private final Box box;

  MarkShape(Box box) {
    this.box = box;
  }

  /** A box around it, perhaps a little wider than it is. */
  final Box box() {
    return box;
  }

  /**
   * Whether it comes as near as a margin to a convex quadrilateral.
   *
   * @param around the box around the quadrilateral and its margin
   */
  abstract boolean touches(List<Point> quad, Box around, double margin);
}
