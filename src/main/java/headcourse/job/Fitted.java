package headcourse.job;

import headcourse.units.Length;

/**
 * A stone already cut and dry-fitted.
 *
 * @param path where it stands in the job
 * @param opening the opening's mark
 * @param stone the stone's mark in the opening, as in L1
 * @param bottom measured width at the bottom
 * @param top measured width at the top, or null where the outer edge leans as drawn
 * @param height measured height, or null
 * @param piece mark and number of the piece it was cut from, as in C2#3; empty where it is not
 *     said, {@link #NO_PIECE} where it came from none that the job lists
 */
public record Fitted(
    String path,
    String opening,
    String stone,
    Length bottom,
    Length top,
    Length height,
    String piece) {
  /** What a job writes for a stone that was cut from none of its pieces. */
  public static final String NO_PIECE = "none";

  /** Its full mark, as in D1-L1. */
  public String mark() {
    return opening + "-" + stone;
  }

  /** A stone of which it is not said what it was cut from. */
  public Fitted(
      String path, String opening, String stone, Length bottom, Length top, Length height) {
    this(path, opening, stone, bottom, top, height, "");
  }
}
