package headcourse.stock;

import headcourse.stock.CuttingProblem.Bin;

/**
 * What parts take of a blank at least: each an inner width, and all together the difference between
 * the greatest and the least lean among them, at the least of their heights.
 */
final class Widths {
  private final Nesting nesting;
  private final LeanBound lean;
  private final long[] inner;

  Widths(Nesting nesting) {
    this.nesting = nesting;
    this.lean = nesting.leans.isEmpty() ? null : nesting.leans.get(0);
    inner = new long[nesting.types];
    for (int t = 0; t < inner.length; t++) {
      inner[t] =
          lean == null ? nesting.weight[t][nesting.heights() - 1] : Math.max(1, lean.inner(t) - 1);
    }
  }

  long inner(int t) {
    return inner[t];
  }

  /** How far a type leans to the left at most; no more than upright. */
  long low(int t) {
    return lean == null ? 0 : lean.low(t);
  }

  /** How far a type leans to the right at most, no less than upright. */
  long high(int t) {
    return lean == null ? 0 : lean.high(t);
  }

  /** What is left of it for the inner widths of more beside these parts; adding never frees any. */
  long room(Bin bin, int[] counts, long most) {
    return lean == null ? most : Math.min(most, bin.usable() + Nesting.SLACK - lean.least(counts));
  }

  /** Length for inner widths on a blank. */
  long room(Bin bin) {
    return bin.usable() + nesting.kerf + Nesting.SLACK;
  }
}
