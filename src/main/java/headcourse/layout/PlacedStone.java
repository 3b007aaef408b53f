package headcourse.layout;

import headcourse.geom.Edge;
import headcourse.geom.Path;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * A stone in its place in the head. Model space: origin at centre line × soffit line (springing
 * line for curved heads), x right, y up, millimetres.
 *
 * @param mark its mark in the opening, as in L1
 * @param role what it is
 * @param side which side
 * @param index from 1 outwards; 0 for the key
 * @param face its edges, counter-clockwise from the lower left corner
 * @param feet where its joint edges stand on the soffit line and the top line
 * @param bottom width printed for its lower end: on the grid
 * @param top width printed for its upper end: on the grid
 * @param height printed height, square to the soffit of the stone
 * @param proud how far it stands out
 * @param chordDeviation how far the soffit stands off the straight line between its two corners,
 *     mm; 0 in flat heads; over a V, its depth
 * @param fitted whether the mason measured it, so that it never moves
 */
public record PlacedStone(
    String mark,
    Role role,
    Side side,
    int index,
    List<FaceEdge> face,
    Feet feet,
    Length bottom,
    Length top,
    Length height,
    Length proud,
    double chordDeviation,
    boolean fitted) {
  /** Copies the edges. */
  public PlacedStone {
    face = List.copyOf(face);
  }

  /**
   * Feet of the two joint edges, as distances along x from the centre line, right positive. In flat
   * heads they are ticks (rounded once where a raked edge meets a mortar joint).
   *
   * @param leftSoffit left edge on the soffit line
   * @param rightSoffit right edge on the soffit line
   * @param leftTop left edge on the top line
   * @param rightTop right edge on the top line
   */
  public record Feet(Length leftSoffit, Length rightSoffit, Length leftTop, Length rightTop) {}

  /** The same, measured and found as drawn. */
  public PlacedStone asFitted() {
    return measured(bottom, top, height);
  }

  /** The same with sizes that were measured. */
  public PlacedStone measured(Length lower, Length upper, Length high) {
    return new PlacedStone(
        mark, role, side, index, face, feet, lower, upper, high, proud, chordDeviation, true);
  }

  /**
   * How far straight arrises would stand off the curve, mm: one from corner to corner, over a V one
   * along each flank.
   */
  public double arrisDeviation() {
    return VSoffit.of(this).map(VSoffit::flankDeviation).orElse(chordDeviation);
  }

  /** The face as a closed path. */
  public Path outline() {
    List<Edge> edges = new ArrayList<>(face.size());
    for (FaceEdge e : face) {
      edges.add(e.edge());
    }
    return new Path(edges, true);
  }

  /** The edges on one side, in the outline's order. */
  public List<Edge> edges(FaceEdge.Where where) {
    List<Edge> edges = new ArrayList<>(face.size());
    for (FaceEdge e : face) {
      if (e.where() == where) {
        edges.add(e.edge());
      }
    }
    return List.copyOf(edges);
  }
}
