package headcourse.stock.pile;

/** How wide the stones of a side may be one after the other, from the shortest piece on. */
final class RowSteps {
  private final SweepSide side;
  private final RowShape row;
  private final boolean bound;
  private final long jump;
  private final long endMost;
  private final long endLeast;
  private final long min;

  /** What the end stone covers without any end being ruled out. */
  private final long free;

  /** What it and its neighbour come to at least for the greatest end. */
  private final long two;

  /** For the ends that the side has now. */
  RowSteps(SweepSide side) {
    this.side = side;
    row = side.row;
    bound = side.jump() >= 0;
    jump = bound ? side.jump() : 0;
    endMost = side.endMost();
    endLeast = side.endLeast();
    min = side.pair.head().min();
    free = row.most(row.firstEnd()) + side.extra();
    two = row.two(row.lastEnd());
  }

  /**
   * How wide the next of the body may be.
   *
   * @param covers what its piece covers at most
   * @param stones of the body so far
   * @param widest the widest of them
   * @param last what the end stone covers, or 0 where it is not known
   */
  long cap(long covers, int stones, long widest, long last) {
    long c = covers;
    if (bound && stones > 0) {
      c = Math.min(c, widest + jump);
    }
    if (bound && (last > 0 || row.past > 0)) {
      c = Math.min(c, (last > 0 ? last : endMost) + (stones + 1) * jump);
    }
    return c;
  }

  /** Whether a stone so wide can be the next of the body after so many. */
  boolean wide(long c, int stones) {
    int ahead = row.stones - stones - 1 - Math.min(1, row.past);
    return c >= min && (!bound || c >= endLeast - ahead * jump);
  }

  /** What so many more of the body come to at most, none wider than this. */
  long reach(int more, int stones, long widest, long last, long most) {
    long all = 0;
    for (int k = 1; k <= more; k++) {
      long c = most;
      if (bound && stones > 0) {
        c = Math.min(c, widest + k * jump);
      }
      if (bound && (last > 0 || row.past > 0)) {
        c = Math.min(c, (last > 0 ? last : endMost) + (stones + k) * jump);
      }
      all += c;
    }
    return all;
  }

  /** The widest of the body as far as it has a bearing on what is still to come. */
  long widestThatMatters(int stones, long widest, long most) {
    if (stones == 0) {
      return 0;
    }
    if (stones < side.bodyStones()) {
      return bound ? Math.min(widest, Math.max(0, most - jump)) : 0;
    }
    return Math.min(widest, Math.max(0, Math.max(two - min, bound ? endMost - jump : 0)));
  }

  /** What its end stone covers, or more where that comes to the same. */
  long lastThatMatters(int stones, long last, long widest, long most) {
    boolean matters =
        last == 0
            || last >= free
            || two > 0
            || bound
                && (stones == 0
                    || widest + jump < free
                    || stones < side.bodyStones() && last + (stones + 1) * jump < most);
    return matters ? last : free;
  }
}
