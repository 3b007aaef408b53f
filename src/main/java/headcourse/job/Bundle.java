package headcourse.job;

import java.util.Locale;

/** A set of sheets for one reader. */
public enum Bundle {
  /** For the cutting bench. */
  BENCH,
  /** Taped beside the opening. */
  WALL,
  /** For the general contractor. */
  CONTRACTOR,
  /** Traced onto stone. */
  FULL_SIZE,
  /** For the supplier. */
  ORDER;

  /** The word in the job file and on the command line. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
