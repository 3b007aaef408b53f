package headcourse.layout.curved;

import headcourse.geom.Arc;
import headcourse.geom.Edge;
import headcourse.geom.Point;
import headcourse.geom.Straight;
import headcourse.geom.Vec;

/**
 * The circular arc through three places, or the straight line where they lie on one.
 *
 * @param from its start
 * @param over a place on the way
 * @param to its end
 */
record ThreePoints(Point from, Point over, Point to) {
  /** Less than this (mm) of bulge is straight: far below what any edge is cut to. */
  private static final double FLAT = 1e-9;

  private Point centre() {
    Vec u = over.minus(from);
    Vec v = to.minus(from);
    double cross = u.cross(v);
    if (Math.abs(cross) < FLAT * v.length()) {
      return null;
    }
    double uu = u.dot(u);
    double vv = v.dot(v);
    return from.plus(
        new Vec((v.y() * uu - u.y() * vv) / (2 * cross), (u.x() * vv - v.x() * uu) / (2 * cross)));
  }

  /** How far a place lies from the circle, or from the line. */
  double distance(Point p) {
    Point c = centre();
    return c == null
        ? Math.abs(to.minus(from).unit().cross(p.minus(from)))
        : Math.abs(p.distance(c) - from.distance(c));
  }

  /** The edge. */
  Edge edge() {
    Point c = centre();
    if (c == null) {
      return new Straight(from, to);
    }
    Vec a = from.minus(c);
    Vec b = to.minus(c);
    // Short arcs only: under half a turn, so the lesser angle is the right one.
    return new Arc(c, a.length(), a.angle(), Math.atan2(a.cross(b), a.dot(b)));
  }
}
