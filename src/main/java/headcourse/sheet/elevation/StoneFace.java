package headcourse.sheet.elevation;

import headcourse.geom.Box;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Region;
import headcourse.geom.Vec;
import java.util.List;

/** The outline of a stone on paper, with the places on it where a label may stand. */
final class StoneFace {
  /** How far below its middle, over half its height: the middle first, then lower and higher. */
  private static final double[] SHIFTS = {0, 0.12, -0.12, 0.24, -0.24, 0.36, 0.48, -0.36, 0.6};

  /** A direction this far beyond plumb is still read from the right, degrees. */
  private static final double OVERHANG = 12;

  /** How many places there are. */
  static final int PLACES = SHIFTS.length;

  private final Path outline;
  private final Box box;
  private final List<Point> vertices;
  private Point centroid;
  private double axis = Double.NaN;
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

  /**
   * Direction of its longer axis of inertia, degrees as seen from level, so that text along it is
   * read from below or from the right.
   */
  double axis() {
    if (Double.isNaN(axis)) {
      double degrees = -Math.toDegrees(Inertia.axis(vertices, centroid()));
      axis = degrees <= -90 + OVERHANG ? degrees + 180 : degrees;
    }
    return axis;
  }

  /** A place on its longer axis, the one to be tried first is number nought. */
  Point along(int number) {
    Vec way = Vec.direction(-Math.toRadians(axis()));
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (Point p : vertices) {
      double d = p.minus(centroid()).dot(way);
      least = Math.min(least, d);
      most = Math.max(most, d);
    }
    return centroid().plus(way.times(SHIFTS[number] * (most - least) / 2));
  }

  private Point centroid() {
    if (centroid == null) {
      centroid = Region.within(outline).centroid();
    }
    return centroid;
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
