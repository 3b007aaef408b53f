package headcourse.geom;

import java.util.ArrayList;
import java.util.List;

/**
 * How far along a direction an arc lies: {@code d + a·cos u + b·sin u}, with {@code u} running from
 * {@code start} by {@code sweep}.
 */
record Harmonic(double d, double a, double b, double start, double sweep) {
  /** Of a curved edge along a direction; null for an edge that is no arc. */
  static Harmonic of(Edge edge, Vec n) {
    if (edge instanceof Arc c) {
      return new Harmonic(
          c.centre().x() * n.x() + c.centre().y() * n.y(),
          c.radius() * n.x(),
          c.radius() * n.y(),
          c.start(),
          c.sweep());
    }
    if (edge instanceof EllipticArc e) {
      double cos = Math.cos(e.turn());
      double sin = Math.sin(e.turn());
      return new Harmonic(
          e.centre().x() * n.x() + e.centre().y() * n.y(),
          e.rx() * (cos * n.x() + sin * n.y()),
          e.ry() * (cos * n.y() - sin * n.x()),
          e.start(),
          e.sweep());
    }
    return null;
  }

  /** Fractions of the edge, 0 … 1, where it lies {@code level} along the direction. */
  List<Double> reaching(double level) {
    double r = Math.hypot(a, b);
    double cos = (level - d) / r;
    if (!(Math.abs(cos) <= 1)) {
      return List.of();
    }
    double mid = Math.atan2(b, a);
    double off = Math.acos(cos);
    List<Double> found = new ArrayList<>();
    collect(mid + off, found);
    collect(mid - off, found);
    return found;
  }

  /** Fractions of the edge, 0 … 1, where it turns back along the direction. */
  List<Double> turning() {
    List<Double> found = new ArrayList<>();
    double mid = Math.atan2(b, a);
    collect(mid, found);
    collect(mid + Math.PI, found);
    return found;
  }

  private void collect(double u, List<Double> found) {
    double turn = 2 * Math.PI;
    double first = Math.min(start, start + sweep);
    double last = Math.max(start, start + sweep);
    for (double v = u + turn * Math.ceil((first - u) / turn); v <= last; v += turn) {
      found.add((v - start) / sweep);
    }
  }
}
