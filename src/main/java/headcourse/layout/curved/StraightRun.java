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
  public Frame frame(double s) {
    Vec along = to.minus(from).unit();
    return new Frame(from.plus(along.times(s)), along, 0);
  }

  @Override
  public Edge between(double s0, double s1) {
    return new Straight(frame(s0).at(), frame(s1).at());
  }

  @Override
  public List<Edge> outside(double d, double s0, double s1) {
    return List.of(new Straight(frame(s0).outside(d), frame(s1).outside(d)));
  }
}
