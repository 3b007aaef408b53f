package headcourse.units;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Which way a figure is rounded in print so that whoever keeps what is printed keeps what is meant.
 *
 * <p>Of a value that is not a limit but the worst that can happen, the one that is dangerous when
 * small (what is left of a bearing) is written like {@link #MOST}, the one that is dangerous when
 * large (a drift, a weight) like {@link #LEAST}.
 */
public enum Limit {
  /** What must not be passed: what is printed is never more. */
  MOST(RoundingMode.FLOOR),
  /** What must be reached: what is printed is never less. */
  LEAST(RoundingMode.CEILING);

  /** No tape shows less than 1/64 in. */
  private static final Length FINEST = new Length(Length.PM_PER_INCH / 64);

  /** Decimals that are kept before rounding: the noise of binary fractions is no reason to. */
  private static final int EXACT = 9;

  private final RoundingMode mode;

  Limit(RoundingMode mode) {
    this.mode = mode;
  }

  /**
   * The length as it is printed.
   *
   * @param grid the step that is printed; where it would make nothing of a positive {@link #MOST},
   *     its half or quarter, no finer than a tape shows
   */
  public Length on(Grid grid, Length length) {
    Grid step = step(grid, length);
    return step.ticks(this == MOST ? step.floor(length) : step.ceil(length));
  }

  private Grid step(Grid grid, Length length) {
    Grid step = grid;
    while (this == MOST
        && length.isPositive()
        && step.floor(length) == 0
        && step.tick().half().compareTo(FINEST) >= 0) {
      step = new Grid(step.tick().half());
    }
    return step;
  }

  /** The format that shows this limit of a length: the given one, or a finer one. */
  private LengthFormat format(LengthFormat format, Length length) {
    return new LengthFormat(format.units(), step(format.grid(), length));
  }

  /** As {@link LengthFormat#withUnit}. */
  public String withUnit(LengthFormat format, Length length) {
    return format(format, length).withUnit(on(format.grid(), length));
  }

  /** As {@link LengthFormat#plainWithUnit}. */
  public String plainWithUnit(LengthFormat format, Length length) {
    return format(format, length).plainWithUnit(on(format.grid(), length));
  }

  /**
   * A number rounded to so many decimals.
   *
   * @param value finite
   * @param places decimals, not negative
   */
  public BigDecimal decimal(double value, int places) {
    return BigDecimal.valueOf(value).setScale(EXACT, RoundingMode.HALF_UP).setScale(places, mode);
  }
}
