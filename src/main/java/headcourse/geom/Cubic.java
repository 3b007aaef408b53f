package headcourse.geom;

import java.util.ArrayList;
import java.util.List;

/** A cubic Bézier edge; only drawings and frames use it. */
public record Cubic(Point from, Point control1, Point control2, Point to) implements Edge {
  @Override
  public double length() {
    double sum = 0;
    Point last = from;
    for (Point p : flattened(Tolerance.PAPER)) {
      sum += last.distance(p);
      last = p;
    }
    return sum;
  }

  @Override
  public Point at(double t) {
    Point a = from.towards(control1, t);
    Point b = control1.towards(control2, t);
    Point c = control2.towards(to, t);
    return a.towards(b, t).towards(b.towards(c, t), t);
  }

  @Override
  public Vec tangent(double t) {
    Point a = from.towards(control1, t).towards(control1.towards(control2, t), t);
    Point b = control1.towards(control2, t).towards(control2.towards(to, t), t);
    Vec d = b.minus(a);
    return d.length() > 0 ? d.unit() : to.minus(from).unit();
  }

  @Override
  public Cubic reversed() {
    return new Cubic(to, control2, control1, from);
  }

  @Override
  public Cubic transformed(Similarity map) {
    return new Cubic(map.apply(from), map.apply(control1), map.apply(control2), map.apply(to));
  }

  @Override
  public List<Point> flattened(double tolerance) {
    // Panels from the second differences: the chord error of a cubic is at most |d²|·(3/4)/n².
    double dd =
        Math.max(
            Math.hypot(
                from.x() - 2 * control1.x() + control2.x(),
                from.y() - 2 * control1.y() + control2.y()),
            Math.hypot(
                control1.x() - 2 * control2.x() + to.x(),
                control1.y() - 2 * control2.y() + to.y()));
    int n = Math.max(1, (int) Math.ceil(Math.sqrt(0.75 * dd / tolerance)));
    List<Point> points = new ArrayList<>(n);
    for (int i = 1; i <= n; i++) {
      points.add(i == n ? to : at((double) i / n));
    }
    return points;
  }

  @Override
  public double crossIntegral() {
    double sum = 0;
    Point last = from;
    for (Point p : flattened(1e-4)) {
      sum += last.x() * p.y() - p.x() * last.y();
      last = p;
    }
    return sum;
  }
}
