package headcourse.stock;

import headcourse.stock.CuttingProblem.Bin;

/**
 * What parts take of a blank at least: each an inner width, and all together the difference between
 * the greatest and the least lean among them.
 */
final class Widths {
  private final Nesting nesting;
  private final LeanBound lean;
  private final int height;

  Widths(Nesting nesting) {
    this.nesting = nesting;
    this.lean = nesting.lean;
    this.height = nesting.heights() - 1;
  }

  long inner(int t) {
    return lean == null ? nesting.weight[t][height] : lean.inner(t);
  }

  long low(int t) {
    return lean == null ? 0 : lean.low(t);
  }

  long high(int t) {
    return lean == null ? 0 : lean.high(t);
  }

  /** Length for inner widths on a blank that takes some of these types. */
  long room(Bin bin, int[] types) {
    long ends = 0;
    if (lean == null && types.length > 0) {
      long first = Long.MAX_VALUE;
      long last = Long.MAX_VALUE;
      for (int t : types) {
        first = Math.min(first, nesting.lead[t][height]);
        last = Math.min(last, nesting.tail[t][height]);
      }
      ends = first + last;
    }
    return bin.usable() + nesting.kerf + Nesting.SLACK - ends;
  }
}
