package headcourse.layout.side;

import headcourse.geom.Arc;
import headcourse.geom.Edge;
import headcourse.geom.Point;
import headcourse.geom.Straight;
import headcourse.geom.Vec;
import headcourse.layout.Side;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * The underside: level, or a shallow arc from jamb to jamb that rises {@code camber} midway between
 * them and is level where it bears. R = (H² + c²) / 2c.
 *
 * @param middle where the middle between the jambs lies, right of the centre line, mm
 * @param half half the clear width, mm
 * @param camber rise in the middle, mm; zero for a level one
 */
public record SoffitLine(double middle, double half, double camber) {
  /** That of a head, whose centre line may lie off the middle between the jambs. */
  static SoffitLine of(FlatTerms terms, double camber) {
    double left = new Length(terms.left().jamb()).mm();
    double right = new Length(terms.right().jamb()).mm();
    return new SoffitLine((right - left) / 2, (right + left) / 2, camber);
  }

  /** The same as a side has it whose places are counted outwards from the centre line. */
  public SoffitLine outwards(Side side) {
    return side == Side.LEFT ? new SoffitLine(0 - middle, half, camber) : this;
  }

  /** Whether it has no camber. */
  public boolean level() {
    return camber == 0;
  }

  double radius() {
    return (half * half + camber * camber) / (2 * camber);
  }

  Point centre() {
    return new Point(middle, camber - radius());
  }

  /** Its height at a place. */
  public double y(double x) {
    if (level()) {
      return 0;
    }
    double r = radius();
    double off = x - middle;
    return Math.abs(off) >= half ? 0 : Math.max(0, Math.sqrt(r * r - off * off) - (r - camber));
  }

  /** Where an edge meets it. */
  public Point meets(EdgeLine edge) {
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
    Point left = new Point(middle - half, 0);
    Point right = new Point(middle + half, 0);
    if (at.x() < left.x()) {
      Point stop = to.x() <= left.x() ? to : left;
      edges.add(new Straight(at, stop));
      at = stop;
    }
    if (at.x() < to.x() && at.x() < right.x()) {
      Point stop = to.x() >= right.x() ? right : to;
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
