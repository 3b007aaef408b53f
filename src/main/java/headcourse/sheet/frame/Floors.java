package headcourse.sheet.frame;

import headcourse.geom.Box;
import headcourse.geom.Edge;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Straight;
import java.util.ArrayList;
import java.util.List;

/** The level lines of a frame on one page, which end the room of what is written above them. */
final class Floors {
  private static final double LEVEL = 0.01;

  /** What hangs below a base line, of its pitch. */
  private static final double TAIL = 0.2;

  private final List<Box> lines = new ArrayList<>();

  void add(Path path) {
    for (Edge e : path.edges()) {
      if (e instanceof Straight && Math.abs(e.from().y() - e.to().y()) < LEVEL) {
        double x = Math.min(e.from().x(), e.to().x());
        lines.add(Box.of(x, e.from().y(), e.from().distance(e.to()), 0));
      }
    }
  }

  /**
   * How many lines stand between a first base line and the next level line below it; at least one.
   *
   * @param pitch from one base line to the next, mm
   */
  int lines(Point at, double width, double pitch) {
    double floor = Double.POSITIVE_INFINITY;
    for (Box l : lines) {
      if (l.minY() > at.y() && l.minX() < at.x() + width && l.maxX() > at.x()) {
        floor = Math.min(floor, l.minY());
      }
    }
    double more = (floor - at.y() - TAIL * pitch) / pitch;
    return more > Integer.MAX_VALUE ? Integer.MAX_VALUE : 1 + (int) Math.max(0, more);
  }
}
