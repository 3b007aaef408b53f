package headcourse.bench;

import headcourse.geom.Point;
import headcourse.units.Angle;
import headcourse.units.Length;

/**
 * The slot for a screw in one edge.
 *
 * @param edge which edge
 * @param at where it crosses the edge, model space
 * @param height along the edge from its lower end
 * @param mouth how far from the back the slot reaches on the edge
 * @param run how far from the edge it reaches on the back
 * @param slant of the screw to the wall plane
 * @param cover stone left between the slot and the face, mm, to the last decimal
 * @param plunge how deep the blade is lowered, square to the slot's chord, from the corner
 * @param anchor the screw, and what it holds in
 * @param reachable whether the edge is open when the stone goes up
 * @param hiddenBy mark of the stone whose edge covers it, {@code joint}, or {@code wall}
 */
public record Notch(
    EdgeName edge,
    Point at,
    Length height,
    Length mouth,
    Length run,
    Angle slant,
    Length cover,
    Length plunge,
    Anchor anchor,
    boolean reachable,
    String hiddenBy) {
  /** Length of the screw, or null where none at hand holds. */
  public Length screw() {
    return anchor.screw();
  }

  /** How deep its tip stands in what holds, square to the wall; zero without a screw. */
  public Length penetration() {
    return anchor.penetration();
  }
}
