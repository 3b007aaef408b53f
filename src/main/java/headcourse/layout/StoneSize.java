package headcourse.layout;

import headcourse.geom.Edge;
import headcourse.geom.Point;
import headcourse.geom.Vec;
import headcourse.layout.FaceEdge.Where;
import headcourse.units.Length;
import java.util.List;

/**
 * What a stone's face measures between its corners, exact: where {@link PlacedStone} holds sizes as
 * they are printed, these are the outline's own.
 *
 * @param bottom between its lower corners
 * @param top between its upper corners
 * @param height how far it reaches above its soffit: plumb in flat heads, square to the soffit's
 *     chord in curved ones
 */
public record StoneSize(Length bottom, Length top, Length height) {
  /** The sizes of a stone of a head. */
  public static StoneSize of(HeadLayout head, PlacedStone stone) {
    List<Edge> soffit = stone.edges(Where.SOFFIT);
    Point left = soffit.get(0).from();
    Point right = soffit.get(soffit.size() - 1).to();
    List<Edge> top = stone.edges(Where.TOP);
    Point upperRight = top.get(0).from();
    Point upperLeft = top.get(top.size() - 1).to();
    double height =
        head.curved()
            ? above(top, left, right)
            : Math.max(upperLeft.y(), upperRight.y()) - Math.min(left.y(), right.y());
    return new StoneSize(
        Length.mm(left.distance(right)),
        Length.mm(upperLeft.distance(upperRight)),
        Length.mm(height));
  }

  /** How far edges reach above a chord, square to it, mm. */
  public static double above(List<Edge> edges, Point from, Point to) {
    Vec along = to.minus(from).unit();
    double most = 0;
    for (Edge e : edges) {
      for (Point p : List.of(e.from(), ChordOffsets.farthest(e, along), e.to())) {
        most = Math.max(most, along.cross(p.minus(from)));
      }
    }
    return most;
  }
}
