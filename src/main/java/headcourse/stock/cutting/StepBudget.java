package headcourse.stock.cutting;

/**
 * Counts what a solve does, from its first line on, so that it ends at the same place on every
 * machine. Every loop that may grow long reports its elementary operations; shares of a budget
 * count on the same clock and only end sooner.
 */
final class StepBudget {
  /**
   * So many operations, about two nanoseconds each, are a step: two million steps take some 3 s,
   * and less than 5 s on a busy machine.
   */
  private static final long OPERATIONS = 1_000;

  private static final long MOST = Long.MAX_VALUE / (2 * OPERATIONS);

  /** Operations so far; one count for a budget and all its shares. */
  private final long[] clock;

  private final long begin;
  private final long end;

  private StepBudget(long[] clock, long operations) {
    this.clock = clock;
    this.begin = clock[0];
    this.end = begin + operations;
  }

  /** A budget of so many steps. */
  static StepBudget of(long steps) {
    return new StepBudget(new long[1], Math.max(0, Math.min(MOST, steps)) * OPERATIONS);
  }

  /** A budget that never ends. */
  static StepBudget endless() {
    return of(MOST);
  }

  void spend(long operations) {
    clock[0] += operations;
  }

  /** Steps since it began. */
  long steps() {
    return (clock[0] - begin) / OPERATIONS;
  }

  /** What part of it is spent. */
  double spentShare() {
    return (double) (clock[0] - begin) / Math.max(1, end - begin);
  }

  boolean out() {
    return clock[0] > end;
  }

  /** A share of what is left. */
  StepBudget share(double share) {
    return new StepBudget(clock, (long) (Math.max(0, end - clock[0]) * share));
  }
}
