package headcourse.bench;

import headcourse.geom.Edge;
import headcourse.geom.Point;
import headcourse.geom.Tolerance;
import headcourse.geom.Vec;
import headcourse.layout.FaceEdge.Where;
import headcourse.layout.PlacedStone;
import java.util.List;

/**
 * What a neighbour covers of a side edge. Distances run along the edge from its lower end, mm.
 *
 * @param neighbour the stone beside it, or null where the wall closes against it
 * @param from where cover begins
 * @param to where it ends
 * @param length of the edge
 * @param proud how far the stone stands out before what covers it, mm; never negative
 */
record Contact(PlacedStone neighbour, double from, double to, double length, double proud) {
  /** Below this cosine a top or soffit runs too steeply off the edge to be carried on past it. */
  private static final double STEEP = 0.05;

  /**
   * Compares a stone's edge with the facing edge of its neighbour. A top or soffit that simply goes
   * on across the joint leaves nothing open, though the corners differ by the joint's width.
   *
   * @param least open strips shorter than this are none, mm
   */
  static Contact of(StoneFrame a, Where side, StoneFrame b, double least) {
    double length = a.chord(side);
    if (b == null) {
      return new Contact(null, 0, length, length, Math.max(0, a.stone().proud().mm()));
    }
    Where facing = side == Where.LEFT ? Where.RIGHT : Where.LEFT;
    Vec w = a.upward(side);
    Vec n = a.outward(side);
    Point top = carriedOn(a.high(side), n, topAway(a, side), b.high(facing));
    Point bottom = carriedOn(a.low(side), n, soffitAway(a, side), b.low(facing));
    double rise = top.minus(b.high(facing)).dot(w);
    double drop = b.low(facing).minus(bottom).dot(w);
    double from = drop > least ? Math.min(drop, length) : 0;
    double to = rise > least ? Math.max(length - rise, from) : length;
    double proud = a.stone().proud().minus(b.stone().proud()).mm();
    return new Contact(b.stone(), from, to, length, Math.max(0, proud));
  }

  /**
   * Where a stone's outline, carried on straight past its corner, comes level with another edge.
   */
  private static Point carriedOn(Point corner, Vec n, Vec away, Point beyond) {
    double gap = beyond.minus(corner).dot(n);
    double pace = away == null ? 0 : away.dot(n);
    return pace < STEEP ? corner : corner.plus(away.times(gap / pace));
  }

  private static Vec topAway(StoneFrame a, Where side) {
    List<Edge> top = a.stone().edges(Where.TOP);
    if (top.isEmpty()) {
      return null;
    }
    return side == Where.RIGHT
        ? top.get(0).tangent(0).times(-1)
        : top.get(top.size() - 1).tangent(1);
  }

  private static Vec soffitAway(StoneFrame a, Where side) {
    List<Edge> soffit = a.stone().edges(Where.SOFFIT);
    return side == Where.RIGHT
        ? soffit.get(soffit.size() - 1).tangent(1)
        : soffit.get(0).tangent(0).times(-1);
  }

  /** Whether it covers the edge at a distance from its lower end. */
  boolean covers(double at) {
    return at >= from - Tolerance.SAME && at <= to + Tolerance.SAME;
  }
}
