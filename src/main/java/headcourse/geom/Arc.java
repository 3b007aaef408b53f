package headcourse.geom;

import java.util.ArrayList;
import java.util.List;

/**
 * A circular arc.
 *
 * @param centre its centre
 * @param radius its radius, positive
 * @param start the angle of its start, radians from x towards y
 * @param sweep how far it turns, radians, positive from x towards y, at most one turn either way
 */
public record Arc(Point centre, double radius, double start, double sweep) implements Edge {
  private static final int MOST = 1 << 14;

  /** Refuses a radius that is not positive and more than one turn. */
  public Arc {
    if (!(radius > 0) || !Double.isFinite(start) || !(Math.abs(sweep) <= 2 * Math.PI + 1e-9)) {
      throw new IllegalArgumentException("not an arc: r " + radius + ", sweep " + sweep);
    }
  }

  private Point on(double angle) {
    return new Point(centre.x() + Math.cos(angle) * radius, centre.y() + Math.sin(angle) * radius);
  }

  @Override
  public Point from() {
    return on(start);
  }

  @Override
  public Point to() {
    return on(start + sweep);
  }

  @Override
  public double length() {
    return radius * Math.abs(sweep);
  }

  @Override
  public Point at(double t) {
    return on(start + sweep * t);
  }

  @Override
  public Vec tangent(double t) {
    Vec n = Vec.direction(start + sweep * t).normal();
    return sweep < 0 ? n.times(-1) : n;
  }

  @Override
  public Arc reversed() {
    return new Arc(centre, radius, start + sweep, -sweep);
  }

  @Override
  public Arc transformed(Similarity map) {
    return new Arc(
        map.apply(centre),
        radius * map.scale(),
        map.applyAngle(start),
        map.flip() ? -sweep : sweep);
  }

  @Override
  public List<Point> flattened(double tolerance) {
    int n = chords(tolerance, radius, sweep);
    List<Point> points = new ArrayList<>(n);
    for (int i = 1; i <= n; i++) {
      points.add(at((double) i / n));
    }
    return points;
  }

  /**
   * How many chords keep to a circle within a tolerance, at most 16384. The angle of a chord of
   * sagitta h is {@code 4·asin √(h/2r)}, which stays exact where h/r is lost beside one.
   */
  static int chords(double tolerance, double radius, double sweep) {
    double step =
        tolerance >= radius ? Math.PI / 2 : 4 * Math.asin(Math.sqrt(tolerance / (2 * radius)));
    return (int) Math.min(MOST, Math.max(1, Math.ceil(Math.abs(sweep) / step)));
  }

  @Override
  public double crossIntegral() {
    Vec a = Vec.direction(start);
    Vec b = Vec.direction(start + sweep);
    return radius * radius * sweep
        + radius * (centre.x() * (b.y() - a.y()) - centre.y() * (b.x() - a.x()));
  }
}
