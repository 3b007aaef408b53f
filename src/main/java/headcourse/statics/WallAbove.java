package headcourse.statics;

import headcourse.geom.Point;
import headcourse.job.Above;
import java.util.List;

/**
 * The wall that weighs on a head's back: none, up to a level, or the triangle of 45° that stands on
 * the clear width at the soffit or springing line and holds itself up above that (common practice,
 * no source).
 *
 * @param above what the job says
 * @param half half the clear width, mm
 * @param top the highest joint's end, mm above the soffit line
 */
record WallAbove(Above above, double half, double top) {
  /**
   * Parts that the wall over a straight back is weighed in; even, so that one edge is its middle.
   */
  private static final int PARTS = 32;

  /** What weighs on a back, given from left to right. */
  Load on(List<Point> back) {
    Load sum = Load.NONE;
    if (above.kind() == Above.Kind.NOTHING) {
      return sum;
    }
    int parts = Math.max(1, PARTS / (back.size() - 1));
    for (int k = 1; k < back.size(); k++) {
      for (int p = 0; p < parts; p++) {
        Point a = back.get(k - 1).towards(back.get(k), p / (double) parts);
        Point b = back.get(k - 1).towards(back.get(k), (p + 1) / (double) parts);
        sum = sum.plus(column(a, b));
      }
    }
    return sum;
  }

  private Load column(Point a, Point b) {
    double wide = b.x() - a.x();
    double one = high(a);
    double other = high(b);
    double area = wide * (one + other) / 2;
    return area <= 0
        ? Load.NONE
        : new Load(area, a.x() + wide * (one + 2 * other) / (3 * (one + other)));
  }

  private double high(Point p) {
    double to =
        above.kind() == Above.Kind.LEVEL ? top + above.height().mm() : half - Math.abs(p.x());
    return Math.max(0, to - p.y());
  }
}
