package headcourse.stock.pile;

import java.util.Arrays;

/** Which sums of usable lengths a side may come to, by its number of stones. */
final class WholeSums {
  private final Pile.Head head;
  private final PileSide side;
  final int fewest;
  final int most;
  private final long[] least;
  private final long[] greatest;
  private final long leastOff;
  private final long best;

  WholeSums(Pile.Head head, PileSide side) {
    this.head = head;
    this.side = side;
    long run = side.lastEnd() - side.start();
    int top = (int) Math.max(0, run / (head.min() + side.joint()));
    most = head.eachSide() > 0 ? Math.min(top, head.eachSide()) : top;
    fewest = head.eachSide() > 0 ? head.eachSide() : 1;
    least = new long[most + 1];
    greatest = new long[most + 1];
    leastOff = PileSearch.leastOff(side);
    long at = side.firstEnd();
    while (at < side.lastEnd() && side.bearingOff(at) != leastOff) {
      at++;
    }
    best = at;
    within(Long.MAX_VALUE);
  }

  /** Narrows to ends whose bearing is off its target by no more than this, pm. */
  void within(long off) {
    long first = Long.MAX_VALUE;
    long last = Long.MIN_VALUE;
    for (long e = side.firstEnd(); e <= side.lastEnd(); e++) {
      long o = side.bearingOff(e);
      if (o >= 0 && o <= off) {
        first = Math.min(first, e);
        last = Math.max(last, e);
      }
    }
    Arrays.fill(least, Long.MAX_VALUE);
    Arrays.fill(greatest, Long.MIN_VALUE);
    if (first > last) {
      return;
    }
    long extras = 0;
    for (int n = 1; n <= most; n++) {
      extras += side.extra(n);
      least[n] = first - side.start() - n * side.joint() + extras;
      greatest[n] = last - side.start() - n * side.joint() + extras;
    }
  }

  /** The end that a sum comes to. */
  long end(int n, long sum) {
    long extras = 0;
    for (int i = 1; i <= n; i++) {
      extras += side.extra(i);
    }
    return side.start() + n * side.joint() + sum - extras;
  }

  /** How far a sum lies from the nearest that ends where the bearing is nearest its target. */
  long miss(int n, long sum) {
    return Math.abs(end(n, sum) - best);
  }

  /** How far off its target the bearing is, pm; negative where it may not end so. */
  long off(int n, long sum) {
    if (n < fewest || n > most) {
      return -1;
    }
    long e = end(n, sum);
    return e < side.firstEnd() || e > side.lastEnd() ? -1 : side.bearingOff(e);
  }

  /**
   * Whether any stone no longer than this may be the last, the joint before it clear of the jamb.
   */
  boolean ends(int n, long sum, long longest) {
    long e = end(n, sum);
    for (long w = Math.min(head.max(), longest - side.extra(n)); n > 1 && w >= head.min(); w--) {
      if (side.jointStands(n - 1, e - w - side.joint())) {
        return true;
      }
    }
    return n == 1;
  }

  /**
   * How many more stones a side with so many of such a sum needs at least; −1 where it can't come
   * out.
   *
   * @param each the least usable length of any stone to come
   * @param top by number: the greatest sum of so many more
   */
  int more(int n, long sum, long each, long[] top) {
    for (int m = Math.max(n, fewest); m <= most && m - n < top.length; m++) {
      if (sum + (m - n) * each <= greatest[m] && sum + top[m - n] >= least[m]) {
        return m - n;
      }
    }
    return -1;
  }

  /** The least that the bearing is off its target, pm. */
  long leastOff() {
    return leastOff;
  }

  Pile.Head head() {
    return head;
  }
}
