package headcourse.layout.yard.rows;

import java.util.Arrays;
import java.util.List;

/**
 * What upright sides with so many stones cost at least, whatever the order of these: by a dynamic
 * programme over the pieces, the shortest first, each taken or not.
 *
 * <p>Stones saw off what their pieces have more than the sides need in all. Where the sides are to
 * be alike, the pieces taken are paired one with the next, and what the two of a pair differ by is
 * either sawn off or stands as a difference of the sides: no other pairing differs by less.
 */
final class PairBound {
  /** With more cells it is left. */
  private static final long MOST_CELLS = 40_000_000;

  /** No more sawn off is told apart. */
  private static final long MOST_SAWN = 400;

  private static final int FAR = Integer.MAX_VALUE / 4;

  private final long shortfall;
  private final long most;
  private final long[] usable;
  private final int longest;

  /** By number of pieces and their length in all: the least that pairs of them differ by. */
  private final int[][] apart;

  private final Steps steps;

  /**
   * @param choices for which it is to hold
   * @param shortfall what is wanting of spare in any case, pm
   * @param most more than this may not be sawn off
   * @param limit how many steps it may take
   */
  PairBound(Store store, List<Numbers.Choice> choices, long shortfall, long most, long limit) {
    this.shortfall = shortfall;
    this.most = Math.min(most, MOST_SAWN);
    steps = store.steps;
    // What is shorter than its saw cuts makes no stone.
    usable = store.ordinary().mapToLong(store::usable).filter(u -> u > 0).toArray();
    int stones = 0;
    long length = 0;
    for (Numbers.Choice c : choices) {
      stones = Math.max(stones, stones(c));
      long needs = c.sides().stream().mapToLong(x -> x.copies * x.need(Store.NEVER, false)).sum();
      length = Math.max(length, needs);
    }
    longest = (int) (length + this.most);
    long all = (long) stones * longest * usable.length;
    apart =
        all > Math.min(MOST_CELLS, limit * Steps.CELLS) ? null : new int[stones + 1][longest + 1];
    if (apart != null) {
      fill(stones);
    }
  }

  private static int stones(Numbers.Choice c) {
    return c.sides().stream().mapToInt(x -> x.copies * x.stones).sum();
  }

  private void fill(int most) {
    for (int[] row : apart) {
      Arrays.fill(row, FAR);
    }
    apart[0][0] = 0;
    for (int k = 0; k < usable.length; k++) {
      int gap = k == 0 ? 0 : (int) (usable[k] - usable[k - 1]);
      for (int m = 1; m <= most && gap > 0; m += 2) {
        for (int t = 0; t <= longest; t++) {
          apart[m][t] = Math.min(FAR, apart[m][t] + gap);
        }
      }
      int u = (int) usable[k];
      for (int m = Math.min(k, most - 1); m >= 0; m--) {
        steps.cells(longest);
        for (int t = longest - u; t >= 0; t--) {
          apart[m + 1][t + u] = Math.min(apart[m + 1][t + u], apart[m][t]);
        }
      }
    }
  }

  /** No less is sawn off. */
  long sawn(Numbers.Choice c) {
    Cost least = apart == null ? null : least(c, most, 0);
    return apart == null ? c.root() : least == null ? most + 1 : least.sawn();
  }

  /** Whether no choice that saws off no more than a cap costs less, where that counts as none. */
  boolean beats(Cost known, Numbers.Choice c, long cap) {
    Cost least = apart == null || cap > most ? Cost.NONE : least(c, cap, cap);
    return least == null || least.compare(known, cap) >= 0;
  }

  /** The least that stones may cost of which no more is sawn off, or null for none. */
  private Cost least(Numbers.Choice c, long most, long cap) {
    int stones = stones(c);
    long from = c.sides().stream().mapToLong(x -> x.copies * x.need(Store.NEVER, true)).sum();
    long[] off = bearings(c);
    Cost best = null;
    for (int i = 0; i < off.length; i++) {
      long to = Math.min(longest, from + i + most - c.sawn());
      for (long t = from + i; off[i] < Store.NEVER && t <= to; t++) {
        int gap = apart[stones][(int) t];
        if (gap < FAR) {
          long sawn = t - from - i;
          Cost cost =
              new Cost(0, 0, shortfall, sawn + c.sawn(), c.sweep().unlike(gap - sawn), off[i]);
          best = best == null || cost.compare(best, cap) < 0 ? cost : best;
        }
      }
    }
    return best;
  }

  /** How far bearings are off at least, by what the sides need beyond the least. */
  private long[] bearings(Numbers.Choice c) {
    long[] off = {0};
    for (SweepSide x : c.sides()) {
      long near = x.need(Store.NEVER, true);
      long far = x.need(Store.NEVER, false);
      long[] with = new long[(int) (off.length + x.copies * (far - near))];
      Arrays.fill(with, Store.NEVER);
      for (int i = 0; i < off.length; i++) {
        for (SweepSide.End e : x.ends) {
          int at = (int) (i + x.copies * (e.need() - near));
          with[at] = Math.min(with[at], off[i] + e.off());
        }
      }
      steps.cells((long) off.length * x.ends.size());
      off = with;
    }
    return off;
  }
}
