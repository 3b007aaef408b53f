package headcourse.sheet.elevation;

import headcourse.geom.Box;
import headcourse.geom.Path;
import headcourse.geom.Point;
import java.util.List;

/** The outline of a stone on paper, with the places on it where a label may stand. */
final class StoneFace {
  /** How far below its middle, over half its height: the middle first, then lower and higher. */
  private static final double[] SHIFTS = {0, 0.12, -0.12, 0.24, -0.24, 0.36, 0.48, -0.36, 0.6};

  /** How many places there are. */
  static final int PLACES = SHIFTS.length;

  private final Path outline;
  private final Box box;
  private final List<Point> vertices;
  private final Point[] places = new Point[PLACES];

  StoneFace(Path outline) {
    this.outline = outline;
    this.box = outline.bounds();
    this.vertices = outline.vertices(0.05);
  }

  Path outline() {
    return outline;
  }

  Box box() {
    return box;
  }

  /** A place, the one to be tried first is number nought. */
  Point place(int number) {
    if (places[number] == null) {
      places[number] = middle(box.centre().y() + SHIFTS[number] * (box.height() / 2));
    }
    return places[number];
  }

  // The middle of the outline at a height, so that labels of a row line up and follow a rake.
  private Point middle(double y) {
    double x0 = Double.POSITIVE_INFINITY;
    double x1 = Double.NEGATIVE_INFINITY;
    Point a = vertices.get(vertices.size() - 1);
    for (Point b : vertices) {
      if ((a.y() - y) * (b.y() - y) <= 0 && Math.abs(a.y() - b.y()) > 1e-9) {
        double x = a.x() + (b.x() - a.x()) * (y - a.y()) / (b.y() - a.y());
        x0 = Math.min(x0, x);
        x1 = Math.max(x1, x);
      }
      a = b;
    }
    return x0 <= x1 ? new Point((x0 + x1) / 2, y) : new Point(box.centre().x(), y);
  }
}
