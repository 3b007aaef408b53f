package headcourse.layout;

import headcourse.job.Measured;
import headcourse.job.Opening;
import headcourse.units.Length;

/**
 * Where the jamb lines meet the soffit line, as distances from the centre line that the head is set
 * out from.
 *
 * @param left distance of the left jamb line
 * @param right distance of the right jamb line
 */
public record Jambs(Length left, Length right) {
  /**
   * Those of an opening as built. The width at the head counts as measured; where it was not, it is
   * the width at the sill, or else half way up, or else as drawn, and as much more as the jambs
   * lean out. The centre line is the centre mark plumbed up: the middle between the jambs' feet,
   * and off it by so much where the job says so; a jamb that leans more than the other therefore
   * stands farther from it at the soffit.
   */
  public static Jambs of(Opening opening) {
    Measured m = opening.measured();
    if (m == null) {
      return new Jambs(opening.width().half(), opening.width().minus(opening.width().half()));
    }
    Length left = orZero(m.plumbLeft());
    Length right = orZero(m.plumbRight());
    Length width = width(opening, m, left.plus(right));
    Length off = orZero(m.centreOff()).plus(left.minus(right).half());
    Length one = width.half().plus(off);
    return new Jambs(one, width.minus(one));
  }

  private static Length width(Opening opening, Measured m, Length lean) {
    if (m.widthHead() != null) {
      return m.widthHead();
    }
    if (m.widthSill() != null) {
      return m.widthSill().plus(lean);
    }
    return m.widthMiddle() != null ? m.widthMiddle().plus(lean.half()) : opening.width().plus(lean);
  }

  private static Length orZero(Length length) {
    return length == null ? Length.ZERO : length;
  }

  /** The clear width at the soffit line. */
  public Length width() {
    return left.plus(right);
  }

  /** The distance on a side; of the nearer one on the centre line. */
  public Length on(Side side) {
    return side == Side.LEFT ? left : side == Side.RIGHT ? right : left.min(right);
  }

  /** Whether the centre line lies in the middle. */
  public boolean even() {
    return left.minus(right).abs().picometres() <= 1;
  }
}
