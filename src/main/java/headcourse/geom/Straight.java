package headcourse.geom;

import java.util.List;

/** A straight edge. */
public record Straight(Point from, Point to) implements Edge {
  @Override
  public double length() {
    return from.distance(to);
  }

  @Override
  public Point at(double t) {
    return from.towards(to, t);
  }

  @Override
  public Vec tangent(double t) {
    return to.minus(from).unit();
  }

  @Override
  public Straight reversed() {
    return new Straight(to, from);
  }

  @Override
  public Straight transformed(Similarity map) {
    return new Straight(map.apply(from), map.apply(to));
  }

  @Override
  public List<Point> flattened(double tolerance) {
    return List.of(to);
  }

  @Override
  public double crossIntegral() {
    return from.x() * to.y() - to.x() * from.y();
  }
}
