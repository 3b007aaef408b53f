package headcourse.bench;

import headcourse.geom.Edge;
import headcourse.geom.Point;
import headcourse.layout.FaceEdge.Where;
import headcourse.layout.PlacedStone;
import headcourse.layout.Side;
import headcourse.units.Angle;
import java.util.List;

/**
 * The rakes of a stone in place: off plumb, positive where the edge's top leans away from the
 * centre line; for the key, away from its own middle.
 *
 * @param inner of the edge towards the centre line; the key's left
 * @param outer of the other edge
 */
public record PlumbRake(Angle inner, Angle outer) {
  /** The rakes of a stone. */
  public static PlumbRake of(PlacedStone stone) {
    boolean left = stone.side() == Side.LEFT;
    return new PlumbRake(lean(stone, !left), lean(stone, left));
  }

  private static Angle lean(PlacedStone stone, boolean leftEdge) {
    List<Edge> edges = stone.edges(leftEdge ? Where.LEFT : Where.RIGHT);
    if (edges.isEmpty()) {
      return Angle.ZERO;
    }
    Point first = edges.get(0).from();
    Point last = edges.get(edges.size() - 1).to();
    // From the soffit up, which a bed at the springing tells by the order of edges alone: it is
    // level, and so leans 90° outwards.
    Point foot = leftEdge ? last : first;
    Point head = leftEdge ? first : last;
    double lean = head.x() - foot.x();
    boolean leftwards = stone.side() == Side.LEFT || stone.side() == Side.CENTRE && leftEdge;
    return Angle.ofRate(leftwards ? -lean : lean, head.y() - foot.y());
  }
}
