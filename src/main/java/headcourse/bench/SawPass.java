package headcourse.bench;

import headcourse.units.Angle;
import headcourse.units.Length;

/**
 * One pass of the saw.
 *
 * @param edge which edge it cuts
 * @param number from 1 in cutting order
 * @param lay how the piece lies on the table
 * @param part which part of the piece this pass goes through
 * @param mitre fence off square
 * @param tilt blade off plumb
 * @param depth depth of cut it needs
 * @param possible whether the saw can do it
 * @param template whether the edge is curved: sawn clear of its line, then worked to the template
 */
public record SawPass(
    EdgeName edge,
    int number,
    Lay lay,
    Part part,
    Angle mitre,
    Angle tilt,
    Length depth,
    boolean possible,
    boolean template) {
  /** How the piece lies. */
  public enum Lay {
    /** Face on the table, return up. */
    FACE_DOWN,
    /** Return on the table, face against the fence's side. */
    RETURN_DOWN,
    /** Face up, for flats. */
    FACE_UP;

    /** The word in output. */
    public String word() {
      return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
  }

  /** What a pass cuts. */
  public enum Part {
    /** Face leg and return leg in one. */
    BOTH_LEGS,
    /** The face leg. */
    FACE_LEG,
    /** The return leg. */
    RETURN_LEG,
    /** A soffit piece of its own. */
    SOFFIT_PIECE
  }
}
