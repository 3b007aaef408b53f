package headcourse.layout.curved;

import headcourse.geom.Edge;
import headcourse.geom.Point;
import headcourse.geom.Straight;
import headcourse.geom.Vec;
import java.util.List;

/**
 * A straight piece of an intrados, such as a stilt.
 *
 * @param from its inner end
 * @param to its outer end
 */
record StraightRun(Point from, Point to) implements Run {
  @Override
  public double length() {
    return from.distance(to);
  }

  @Override
  public Point at(double s) {
    return from.plus(tangent(s).times(s));
  }

  @Override
  public Vec tangent(double s) {
    return to.minus(from).unit();
  }

  @Override
  public double curvature(double s) {
    return 0;
  }

  @Override
  public Edge between(double s0, double s1) {
    return new Straight(at(s0), at(s1));
  }

  @Override
  public List<Edge> outside(double d, double s0, double s1) {
    Vec out = normal(0).times(d);
    return List.of(new Straight(at(s0).plus(out), at(s1).plus(out)));
  }
}
