package headcourse.bench;

import headcourse.geom.Edge;
import headcourse.geom.Point;
import headcourse.geom.Vec;
import headcourse.layout.FaceEdge.Where;
import headcourse.layout.PlacedStone;
import headcourse.layout.Side;
import java.util.List;

/**
 * A stone's own frame: the chord of its soffit and what is square to it, with the four corners that
 * measures are taken between. In a flat head it lies along the head's axes.
 *
 * @param stone the stone
 * @param lowerLeft where its soffit begins
 * @param lowerRight where its soffit ends
 * @param upperRight where its right side ends
 * @param upperLeft where its left side begins
 * @param along unit direction of the soffit's chord, to the stone's right
 * @param up unit direction square to it, away from the soffit
 */
record StoneFrame(
    PlacedStone stone,
    Point lowerLeft,
    Point lowerRight,
    Point upperRight,
    Point upperLeft,
    Vec along,
    Vec up) {
  static StoneFrame of(PlacedStone stone) {
    List<Edge> soffit = stone.edges(Where.SOFFIT);
    List<Edge> right = stone.edges(Where.RIGHT);
    List<Edge> left = stone.edges(Where.LEFT);
    Point lowerLeft = soffit.get(0).from();
    Point lowerRight = soffit.get(soffit.size() - 1).to();
    Vec along = lowerRight.minus(lowerLeft).unit();
    return new StoneFrame(
        stone,
        lowerLeft,
        lowerRight,
        right.isEmpty() ? lowerRight : right.get(right.size() - 1).to(),
        left.isEmpty() ? lowerLeft : left.get(0).from(),
        along,
        along.normal());
  }

  /** The lower end of a side edge. */
  Point low(Where side) {
    return side == Where.LEFT ? lowerLeft : lowerRight;
  }

  /** The upper end of a side edge. */
  Point high(Where side) {
    return side == Where.LEFT ? upperLeft : upperRight;
  }

  /** Unit direction of a side edge's chord, from its lower end. */
  Vec upward(Where side) {
    return high(side).minus(low(side)).unit();
  }

  /** Unit direction out of the stone, square to a side edge's chord. */
  Vec outward(Where side) {
    Vec n = upward(side).normal();
    return side == Where.LEFT ? n : n.times(-1);
  }

  /** Length of a side edge's chord, mm. */
  double chord(Where side) {
    return high(side).distance(low(side));
  }

  /** Its name for the bench. */
  EdgeName name(Where side) {
    if (stone.side() == Side.CENTRE) {
      return side == Where.LEFT ? EdgeName.LEFT : EdgeName.RIGHT;
    }
    boolean outer = (stone.side() == Side.LEFT) == (side == Where.LEFT);
    return outer ? EdgeName.OUTER : EdgeName.INNER;
  }

  /** The side away from the centre line; the right for the key. */
  Where outer() {
    return stone.side() == Side.LEFT ? Where.LEFT : Where.RIGHT;
  }

  /** The side towards the centre line; the left for the key. */
  Where inner() {
    return stone.side() == Side.LEFT ? Where.RIGHT : Where.LEFT;
  }

  /** A displacement in the stone's own axes. */
  Vec own(Vec v) {
    return new Vec(v.dot(along), v.dot(up));
  }
}
