package headcourse.job.yaml;

import headcourse.units.Length;

/**
 * What a length may be.
 *
 * @param min least
 * @param max greatest
 * @param onGrid whether it must be a whole number of grid steps
 */
record Range(Length min, Length max, boolean onGrid) {
  private static final Length MOST = Length.inches(1200);
  private static final Length TINY = new Length(1);

  /** More than nothing. */
  static final Range POSITIVE = new Range(TINY, MOST, false);

  /** Nothing or more. */
  static final Range NOT_NEGATIVE = new Range(Length.ZERO, MOST, false);

  /** Either way from a line. */
  static final Range SIGNED = new Range(MOST.negated(), MOST, false);

  /** Along a wall: more than a wall is long. */
  static final Range ALONG = of(-12_000, 12_000);

  Range cut() {
    return new Range(min, max, true);
  }

  static Range of(double minInches, double maxInches) {
    return new Range(Length.inches(minInches), Length.inches(maxInches), false);
  }
}
