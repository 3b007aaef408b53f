package headcourse.sheet;

import headcourse.geom.Edge;
import headcourse.geom.Similarity;
import headcourse.geom.Vec;
import headcourse.layout.FaceEdge.Where;
import headcourse.layout.PlacedStone;
import java.util.List;

/** Turns a stone as it lies on the bench: the chord of its soffit level. */
public final class OwnFrame {
  private static final double LEVEL = 1e-9;

  private OwnFrame() {}

  /** The turn from its place in the head; none in flat heads. */
  public static Similarity of(PlacedStone stone) {
    List<Edge> soffit = stone.edges(Where.SOFFIT);
    Vec along = soffit.get(soffit.size() - 1).to().minus(soffit.get(0).from());
    return Math.abs(along.angle()) < LEVEL ? Similarity.IDENTITY : Similarity.turn(-along.angle());
  }
}
