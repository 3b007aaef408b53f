package headcourse.units;

/**
 * The step that every cut length of a job is a whole number of.
 *
 * @param tick one step, positive; 1/16 in, 1/32 in, 1 mm, 0.5 mm
 */
public record Grid(Length tick) {
  /** Refuses a step of nothing. */
  public Grid {
    if (!tick.isPositive()) {
      throw new IllegalArgumentException("grid must be positive: " + tick);
    }
  }

  /** So many ticks. */
  public Length ticks(long count) {
    return tick.times(count);
  }

  /** Whether the length is a whole number of ticks. */
  public boolean holds(Length length) {
    return length.picometres() % tick.picometres() == 0;
  }

  /** Whole ticks in the length, towards minus infinity. */
  public long floor(Length length) {
    return Math.floorDiv(length.picometres(), tick.picometres());
  }

  /** Whole ticks that cover the length, towards plus infinity. */
  public long ceil(Length length) {
    return -Math.floorDiv(-length.picometres(), tick.picometres());
  }

  /** The nearest whole number of ticks; halves go away from zero, so mirrored lengths mirror. */
  public long nearest(Length length) {
    long t = tick.picometres();
    long size = Math.floorDiv(2 * Math.abs(length.picometres()) + t, 2 * t);
    return length.picometres() < 0 ? -size : size;
  }

  /** The length rounded to the grid, halves away from zero. */
  public Length snap(Length length) {
    return ticks(nearest(length));
  }

  /** A model distance in millimetres rounded to the grid, halves away from zero. */
  public Length snapMm(double mm) {
    return snap(Length.mm(mm));
  }
}
