package headcourse.layout;

import headcourse.geom.Point;
import headcourse.geom.Vec;
import headcourse.layout.FaceEdge.Where;
import headcourse.units.Length;
import java.util.List;
import java.util.Optional;

/**
 * The V under the key of a pointed or four-centred head: its soffit runs up one arc to the apex and
 * down the other. Model space, millimetres.
 *
 * @param left lower left corner
 * @param apex where the two arcs meet
 * @param right lower right corner
 * @param flanks the two arcs off their chords, left one first
 */
public record VSoffit(Point left, Point apex, Point right, List<ChordOffsets> flanks) {
  /** Copies the list. */
  public VSoffit {
    flanks = List.copyOf(flanks);
  }

  /** That of a stone: none where its soffit is smooth, or has a corner that points down. */
  public static Optional<VSoffit> of(PlacedStone stone) {
    // Most stones have one edge below; those are done with at once.
    if (stone.role() != Role.KEY || stone.edges(Where.SOFFIT).size() < 2) {
      return Optional.empty();
    }
    List<ChordOffsets> parts = ChordOffsets.of(stone);
    if (parts.size() != 2) {
      return Optional.empty();
    }
    VSoffit v =
        new VSoffit(parts.get(0).from(), parts.get(0).to(), parts.get(1).to(), List.copyOf(parts));
    return v.height() > 0 ? Optional.of(v) : Optional.empty();
  }

  private double height() {
    Vec along = right.minus(left).unit();
    return along.cross(apex.minus(left));
  }

  /** How far the apex stands above the line between the two corners; exact. */
  public Length depth() {
    return Length.mm(height());
  }

  /** How far the flanks stand off their own chords, mm. */
  public double flankDeviation() {
    return flanks.stream().mapToDouble(ChordOffsets::greatest).max().orElse(0);
  }
}
