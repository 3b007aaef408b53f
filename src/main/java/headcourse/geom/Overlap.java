package headcourse.geom;

import java.util.List;

/** Whether convex figures overlap, by separating lines. */
public final class Overlap {
  private Overlap() {}

  /** How deep two convex polygons overlap, mm; not positive where they are apart. */
  public static double depth(List<Point> a, List<Point> b) {
    return Math.min(least(a, a, b), least(b, a, b));
  }

  /** How deep a segment runs into a convex polygon, mm; not positive where it stays outside. */
  public static double depth(List<Point> polygon, Point from, Point to) {
    return depth(polygon, List.of(from, to));
  }

  private static double least(List<Point> axes, List<Point> a, List<Point> b) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < axes.size(); i++) {
      Vec side = axes.get((i + 1) % axes.size()).minus(axes.get(i));
      if (side.length() < 1e-9) {
        continue;
      }
      Vec n = side.normal().unit();
      double a0 = Double.POSITIVE_INFINITY;
      double a1 = Double.NEGATIVE_INFINITY;
      for (Point p : a) {
        double d = p.x() * n.x() + p.y() * n.y();
        a0 = Math.min(a0, d);
        a1 = Math.max(a1, d);
      }
      double b0 = Double.POSITIVE_INFINITY;
      double b1 = Double.NEGATIVE_INFINITY;
      for (Point p : b) {
        double d = p.x() * n.x() + p.y() * n.y();
        b0 = Math.min(b0, d);
        b1 = Math.max(b1, d);
      }
      least = Math.min(least, Math.min(a1 - b0, b1 - a0));
    }
    return least;
  }
}
