package headcourse.work;

import headcourse.geom.Point;
import java.util.List;
import java.util.TreeSet;

/**
 * Where two figures side by side come nearest to each other.
 *
 * @param left how far the left one reaches there, along the wall; mm
 * @param right where the right one begins there
 * @param joint what must lie between them
 */
record Gap(double left, double right, double joint) {
  /** What arithmetic leaves of a height, mm. */
  private static final double NOTHING = 1e-3;

  /** What is free between them besides the joint; negative where they overlap. */
  double room() {
    return right - left - joint;
  }

  static Gap lesser(Gap a, Gap b) {
    return a == null || b != null && b.room() < a.room() ? b : a;
  }

  /** The least over all heights at which both have something, or null where there is none. */
  static Gap between(List<Point[]> left, List<Point[]> right, double joint) {
    double low = Math.max(end(left, false), end(right, false)) + NOTHING;
    double high = Math.min(end(left, true), end(right, true)) - NOTHING;
    if (!(low < high)) {
      return null;
    }
    TreeSet<Double> heights = new TreeSet<>(List.of(low, high));
    for (List<Point[]> edges : List.of(left, right)) {
      for (Point[] e : edges) {
        for (Point p : e) {
          // Just above and just below, because a stepped head jumps where it steps.
          heights.add(Math.max(low, Math.min(high, p.y() - NOTHING)));
          heights.add(Math.max(low, Math.min(high, p.y() + NOTHING)));
        }
      }
    }
    Gap least = null;
    for (double y : heights) {
      double reaches = at(left, y, true);
      double begins = at(right, y, false);
      if (Double.isFinite(reaches) && Double.isFinite(begins)) {
        least = lesser(least, new Gap(reaches, begins, joint));
      }
    }
    return least;
  }

  private static double end(List<Point[]> edges, boolean top) {
    double end = top ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
    for (Point[] e : edges) {
      for (Point p : e) {
        end = top ? Math.max(end, p.y()) : Math.min(end, p.y());
      }
    }
    return end;
  }

  /** The farthest right of edges at a height, or the farthest left. */
  private static double at(List<Point[]> edges, double y, boolean farRight) {
    double far = farRight ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
    for (Point[] e : edges) {
      double from = e[0].y() - y;
      double to = e[1].y() - y;
      if (from * to <= 0 && from != to) {
        double x = e[0].x() + (e[1].x() - e[0].x()) * from / (from - to);
        far = farRight ? Math.max(far, x) : Math.min(far, x);
      }
    }
    return far;
  }
}
