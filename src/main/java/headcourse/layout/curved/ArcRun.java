package headcourse.layout.curved;

import headcourse.geom.Arc;
import headcourse.geom.Edge;
import headcourse.geom.Point;
import headcourse.geom.Vec;
import java.util.List;

/**
 * A circular piece of an intrados.
 *
 * @param centre where it is struck from
 * @param radius its radius
 * @param start the angle of its inner end, radians from x towards y
 * @param angle how far it turns outwards, not negative
 */
record ArcRun(Point centre, double radius, double start, double angle) implements Run {
  @Override
  public double length() {
    return radius * angle;
  }

  @Override
  public Frame frame(double s) {
    Vec out = Vec.direction(start - s / radius);
    return new Frame(centre.plus(out.times(radius)), out.normal().times(-1), 1 / radius);
  }

  @Override
  public Edge between(double s0, double s1) {
    return arc(radius, s0, s1);
  }

  @Override
  public List<Edge> outside(double d, double s0, double s1) {
    return List.of(arc(radius + d, s0, s1));
  }

  private Arc arc(double r, double s0, double s1) {
    return new Arc(centre, r, start - s0 / radius, (s0 - s1) / radius);
  }
}
