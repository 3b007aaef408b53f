package headcourse.geom;

import java.util.List;

/** Whether convex figures overlap, by separating lines. */
public final class Overlap {
  private Overlap() {}

  /** How deep two convex polygons overlap, mm; not positive where they are apart. */
  public static double depth(List<Point> a, List<Point> b) {
    return Math.min(
        least(a, a, b, Double.NEGATIVE_INFINITY), least(b, a, b, Double.NEGATIVE_INFINITY));
  }

  /** How deep a segment runs into a convex polygon, mm; not positive where it stays outside. */
  public static double depth(List<Point> polygon, Point from, Point to) {
    return depth(polygon, List.of(from, to));
  }

  /**
   * Whether two convex polygons overlap deeper than so much, mm; a negative depth asks whether they
   * come nearer than that. A polygon of two places is a segment.
   */
  public static boolean deeper(List<Point> a, List<Point> b, double depth) {
    return least(a, a, b, depth) > depth && least(b, a, b, depth) > depth;
  }

  // The least depth square to any side, or the first that is found to be small enough.
  private static double least(List<Point> sides, List<Point> a, List<Point> b, double enough) {
    double least = Double.POSITIVE_INFINITY;
    // Both sides of a segment are the same line.
    int n = sides.size() == 2 ? 1 : sides.size();
    for (int i = 0; i < n && least > enough; i++) {
      Point from = sides.get(i);
      Point to = sides.get(i + 1 == sides.size() ? 0 : i + 1);
      double x = from.y() - to.y();
      double y = to.x() - from.x();
      double length = x == 0 ? Math.abs(y) : y == 0 ? Math.abs(x) : Math.hypot(x, y);
      if (length >= 1e-9) {
        least = Math.min(least, along(x / length, y / length, a, b));
      }
    }
    return least;
  }

  // How deep two sets of places overlap along a unit vector.
  private static double along(double x, double y, List<Point> a, List<Point> b) {
    double a0 = Double.POSITIVE_INFINITY;
    double a1 = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < a.size(); i++) {
      double d = a.get(i).x() * x + a.get(i).y() * y;
      a0 = d < a0 ? d : a0;
      a1 = d > a1 ? d : a1;
    }
    double b0 = Double.POSITIVE_INFINITY;
    double b1 = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < b.size(); i++) {
      double d = b.get(i).x() * x + b.get(i).y() * y;
      b0 = d < b0 ? d : b0;
      b1 = d > b1 ? d : b1;
    }
    return Math.min(a1 - b0, b1 - a0);
  }
}
