package headcourse.stock.cutting;

/** Counts the steps of a search, so that it ends at the same place on every machine. */
final class Meter {
  private final long limit;
  private long used;

  Meter(long limit) {
    this.limit = limit;
  }

  void add(long steps) {
    used += steps;
  }

  long used() {
    return used;
  }

  boolean out() {
    return used > limit;
  }

  /** A share of what is left. */
  Meter share(double share) {
    return new Meter((long) (Math.max(0, limit - used) * share));
  }
}
