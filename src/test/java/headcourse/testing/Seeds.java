package headcourse.testing;

/**
 * How many random cases a test tries: its usual number, times {@code -Dheadcourse.seeds=} for a
 * campaign.
 */
public final class Seeds {
  private static final int TIMES = Math.max(1, Integer.getInteger("headcourse.seeds", 1));

  private Seeds() {}

  /** The number to try where the usual number is {@code usual}. */
  public static int of(int usual) {
    return usual * TIMES;
  }
}
