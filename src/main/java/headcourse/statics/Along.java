package headcourse.statics;

import headcourse.geom.Path;
import headcourse.geom.Point;
import java.util.List;

/** Places along a line, by their distance from its start. */
final class Along {
  /** How far a chord may stand off a curve, mm. */
  private static final double OFF = 0.01;

  private final List<Point> points;
  private final double[] at;

  Along(Path path) {
    points = path.vertices(OFF);
    at = new double[points.size()];
    for (int i = 1; i < at.length; i++) {
      at[i] = at[i - 1] + points.get(i - 1).distance(points.get(i));
    }
  }

  /** The distance at which it comes nearest to a place. */
  double nearest(Point p) {
    double best = Double.MAX_VALUE;
    double where = 0;
    for (int i = 1; i < at.length; i++) {
      Point a = points.get(i - 1);
      double length = at[i] - at[i - 1];
      if (length == 0) {
        continue;
      }
      double t = p.minus(a).dot(points.get(i).minus(a)) / (length * length);
      double within = Math.max(0, Math.min(1, t));
      double off = p.distance(a.towards(points.get(i), within));
      if (off < best) {
        best = off;
        where = at[i - 1] + within * length;
      }
    }
    return where;
  }

  /** The place at a distance. */
  Point at(double distance) {
    int i = 1;
    while (i < at.length - 1 && at[i] < distance) {
      i++;
    }
    double length = at[i] - at[i - 1];
    return length == 0
        ? points.get(i)
        : points.get(i - 1).towards(points.get(i), (distance - at[i - 1]) / length);
  }
}
