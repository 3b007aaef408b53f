package headcourse.stock;

import headcourse.stock.CuttingProblem.Bin;
import java.util.List;
import java.util.function.ToLongFunction;

/**
 * What parts take of a blank at least: each an inner width, and all together the difference between
 * the greatest and the least lean among them; the mean of what is known at some heights.
 */
final class Widths {
  private final Nesting nesting;
  private final List<LeanBound> leans;

  Widths(Nesting nesting) {
    this.nesting = nesting;
    this.leans = nesting.leans.subList(0, Math.min(1, nesting.leans.size()));
  }

  private long mean(ToLongFunction<LeanBound> of) {
    return leans.isEmpty()
        ? 0
        : Math.floorDiv(leans.stream().mapToLong(of).sum(), (long) leans.size());
  }

  long inner(int t) {
    return leans.isEmpty()
        ? nesting.weight[t][nesting.heights() - 1]
        : Math.max(1, mean(l -> l.inner(t)) - 1);
  }

  /** Rounded up, so that differences are never too great. */
  long low(int t) {
    return 0 - mean(l -> 0 - l.low(t));
  }

  long high(int t) {
    return mean(l -> l.high(t));
  }

  /** What is left of it for the inner widths of more beside these parts; adding never frees any. */
  long room(Bin bin, int[] counts, long most) {
    return leans.isEmpty()
        ? most
        : Math.min(most, bin.usable() + Nesting.SLACK - leans.get(0).least(counts));
  }

  /** Length for inner widths on a blank. */
  long room(Bin bin) {
    return bin.usable() + nesting.kerf + Nesting.SLACK;
  }
}
