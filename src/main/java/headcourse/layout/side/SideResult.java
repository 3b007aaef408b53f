package headcourse.layout.side;

/**
 * What one side came to.
 *
 * @param choice the best, or null where there is none
 * @param shortfall what it wants of spare to land at the worst, pm
 * @param unfit how many stones fit no blank, over all openings of its kind
 * @param cost what its rhythm minimises, mm
 * @param steps how many candidates were looked at
 */
public record SideResult(Choice choice, long shortfall, long unfit, double cost, long steps) {
  /** There is none. */
  static SideResult none(long steps) {
    return new SideResult(null, 0, 0, 0, steps);
  }

  /** Whether nothing better can be had for the soundness of a side. */
  public boolean sound() {
    return shortfall == 0 && unfit == 0;
  }
}
