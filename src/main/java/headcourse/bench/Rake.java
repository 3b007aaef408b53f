package headcourse.bench;

import headcourse.units.Angle;
import headcourse.units.Length;

/**
 * The slant of a cut edge.
 *
 * @param offSquare off square to the stone's soffit, never negative
 * @param offset how far the edge runs off square over {@code over}, rounded to the grid for print
 * @param over the height that the offset is measured over
 * @param longPoint which end of the edge stands out
 */
public record Rake(Angle offSquare, Length offset, Length over, LongPoint longPoint) {
  /** Which end of an edge stands out from the stone. */
  public enum LongPoint {
    /** The edge is square. */
    NEITHER,
    /** The upper end. */
    TOP,
    /** The lower end. */
    BOTTOM;

    /** The word in output. */
    public String word() {
      return name().toLowerCase(java.util.Locale.ROOT);
    }
  }
}
