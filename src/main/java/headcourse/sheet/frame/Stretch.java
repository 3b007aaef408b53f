package headcourse.sheet.frame;

import headcourse.geom.Box;
import headcourse.geom.Cubic;
import headcourse.geom.Edge;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Straight;
import java.util.ArrayList;
import java.util.List;

/**
 * Maps the reference page of a frame to another page: what lies in its left half keeps its distance
 * from the left edge, what lies in its right half from the right edge, what lies on the middle line
 * stays there; up and down likewise.
 */
final class Stretch {
  /** So near to the middle is on it, mm. */
  private static final double MIDDLE = 0.5;

  private final double width;
  private final double height;
  private final double growX;
  private final double growY;
  private final double left;

  /**
   * A map between two sizes, mm.
   *
   * @param left added to what lies in the left half
   */
  Stretch(double fromWidth, double fromHeight, double toWidth, double toHeight, double left) {
    width = fromWidth;
    height = fromHeight;
    growX = toWidth - fromWidth;
    growY = toHeight - fromHeight;
    this.left = left;
  }

  private static double shift(double v, double size, double low, double high) {
    double fromMiddle = v - size / 2;
    return fromMiddle < -MIDDLE ? low : fromMiddle > MIDDLE ? high : high / 2;
  }

  double shiftX(double x) {
    return shift(x, width, left, growX);
  }

  double shiftY(double y) {
    return shift(y, height, 0, growY);
  }

  Point apply(Point p) {
    return new Point(p.x() + shiftX(p.x()), p.y() + shiftY(p.y()));
  }

  Path apply(Path path) {
    List<Edge> edges = new ArrayList<>();
    for (Edge e : path.edges()) {
      if (e instanceof Cubic c) {
        edges.add(
            new Cubic(apply(c.from()), apply(c.control1()), apply(c.control2()), apply(c.to())));
      } else {
        edges.add(new Straight(apply(e.from()), apply(e.to())));
      }
    }
    return new Path(edges, path.closed());
  }

  /** Null where the page is so small that the box would be inside out. */
  Box apply(Box b) {
    Point p = apply(new Point(b.minX(), b.minY()));
    Point q = apply(new Point(b.maxX(), b.maxY()));
    return p.x() < q.x() && p.y() < q.y() ? new Box(p.x(), p.y(), q.x(), q.y()) : null;
  }
}
