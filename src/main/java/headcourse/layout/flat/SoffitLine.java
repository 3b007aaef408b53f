package headcourse.layout.flat;

import headcourse.geom.Arc;
import headcourse.geom.Edge;
import headcourse.geom.Point;
import headcourse.geom.Straight;
import headcourse.geom.Vec;
import java.util.ArrayList;
import java.util.List;

/**
 * The underside: level, or a shallow arc from jamb to jamb that rises {@code camber} in the middle
 * and is level where it bears. R = (H² + c²) / 2c.
 *
 * @param half half the clear width, mm
 * @param camber rise in the middle, mm; zero for a level one
 */
record SoffitLine(double half, double camber) {
  boolean level() {
    return camber == 0;
  }

  double radius() {
    return (half * half + camber * camber) / (2 * camber);
  }

  Point centre() {
    return new Point(0, camber - radius());
  }

  /** Its height at a place. */
  double y(double x) {
    if (level()) {
      return 0;
    }
    double r = radius();
    return Math.abs(x) >= half ? 0 : Math.max(0, Math.sqrt(r * r - x * x) - (r - camber));
  }

  /** Where an edge meets it. */
  Point meets(EdgeLine edge) {
    if (level()) {
      return new Point(edge.foot(), 0);
    }
    // The arc is shallow and joints are steep, so each round gains more than a digit.
    double y = 0;
    for (int i = 0; i < 60; i++) {
      y = y(edge.x(y));
    }
    return new Point(edge.x(y), y);
  }

  /** The underside between two of its points, left to right. */
  List<Edge> between(Point from, Point to) {
    if (level()) {
      return List.of(new Straight(from, to));
    }
    List<Edge> edges = new ArrayList<>();
    Point at = from;
    Point left = new Point(-half, 0);
    Point right = new Point(half, 0);
    if (at.x() < -half) {
      Point stop = to.x() <= -half ? to : left;
      edges.add(new Straight(at, stop));
      at = stop;
    }
    if (at.x() < to.x() && at.x() < half) {
      Point stop = to.x() >= half ? right : to;
      double a = direction(at);
      edges.add(new Arc(centre(), radius(), a, direction(stop) - a));
      at = stop;
    }
    if (at.x() < to.x()) {
      edges.add(new Straight(at, to));
    }
    return edges;
  }

  private double direction(Point p) {
    Vec v = p.minus(centre());
    return v.angle();
  }
}
