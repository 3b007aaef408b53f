package headcourse.bench;

import headcourse.units.Angle;
import headcourse.units.Length;

/**
 * The slot for the screw that goes up through the edge of a soffit piece into what carries the
 * opening.
 *
 * @param edge which edge
 * @param place its middle from the piece's back, on an end; from its left end, on the back
 * @param mouth how far below the upper side the slot reaches on the edge
 * @param run how far from the edge it reaches on the upper side
 * @param slant of the screw to the upper side
 * @param cover stone left between the slot and the underside
 * @param plunge how deep the blade is lowered, square to the slot's chord, from the corner
 * @param anchor the screw, and what it holds in; its penetration is square to the underside
 */
public record SoffitNotch(
    Edge edge,
    Length place,
    Length mouth,
    Length run,
    Angle slant,
    Length cover,
    Length plunge,
    Anchor anchor) {
  /** Edges of a soffit piece, as seen from outside. */
  public enum Edge {
    /** The left end. */
    LEFT,
    /** The right end. */
    RIGHT,
    /** The edge away from the face; open only until a frame stands there. */
    BACK;

    /** The word in output. */
    public String word() {
      return name().toLowerCase(java.util.Locale.ROOT);
    }
  }
}
