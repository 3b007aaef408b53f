package headcourse.job;

import headcourse.units.Length;
import java.util.List;

/**
 * An opening as built. What was not measured is null.
 *
 * @param widthHead clear width at the head
 * @param widthMiddle clear width half way up
 * @param widthSill clear width at the sill
 * @param soffit level of the rough head at places along it, left to right
 * @param plumbLeft how far the left jamb's top leans out of the opening from its foot; negative
 *     leans in
 * @param plumbRight the same on the right
 * @param centreOff how far the centre mark lies right of the middle between the jambs
 */
public record Measured(
    Length widthHead,
    Length widthMiddle,
    Length widthSill,
    List<Level> soffit,
    Length plumbLeft,
    Length plumbRight,
    Length centreOff) {
  /** Copies the levels. */
  public Measured {
    soffit = List.copyOf(soffit);
  }

  /**
   * A level of the rough head.
   *
   * @param at distance right of the centre; negative to the left
   * @param up height above the nominal line, up positive
   */
  public record Level(Length at, Length up) {}
}
