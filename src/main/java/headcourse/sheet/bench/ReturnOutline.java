package headcourse.sheet.bench;

import headcourse.bench.Piece;
import headcourse.geom.Edge;
import headcourse.geom.HalfPlane;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Vec;
import headcourse.layout.FaceEdge.Where;
import java.util.List;
import java.util.Optional;

/**
 * What of a stone's outline its return lies behind: the lowest thickness over its soffit's chord,
 * less what is cut away past the seat.
 */
final class ReturnOutline {
  private ReturnOutline() {}

  /** In model space; empty without a return. */
  static Optional<Path> of(Piece piece) {
    if (!piece.leg().depth().isPositive()) {
      return Optional.empty();
    }
    double t = piece.thickness().mm();
    List<Edge> soffit = piece.stone().edges(Where.SOFFIT);
    Point low = soffit.get(0).from();
    Vec along = soffit.get(soffit.size() - 1).to().minus(low).unit();
    Vec up = along.normal();
    Optional<Path> leg =
        new HalfPlane(low.plus(up.times(t)), up.times(-1)).clip(piece.stone().outline());
    if (!piece.leg().relief().isPositive()) {
      return leg;
    }
    Vec in = new Vec(-piece.stone().side().sign(), 0);
    return leg.flatMap(l -> new HalfPlane(new Point(piece.leg().seatFrom(), 0), in).clip(l));
  }
}
