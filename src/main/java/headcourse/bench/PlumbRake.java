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
    Point a = edges.get(0).from();
    Point b = edges.get(edges.size() - 1).to();
    Point low = a.y() <= b.y() ? a : b;
    Point high = low == a ? b : a;
    double lean = high.x() - low.x();
    boolean leftwards = stone.side() == Side.LEFT || stone.side() == Side.CENTRE && leftEdge;
    return Angle.ofRate(leftwards ? -lean : lean, high.y() - low.y());
  }
}
