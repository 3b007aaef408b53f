package headcourse.stock;

import headcourse.stock.CuttingProblem.Bin;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * All ways to fill a blank with leaning parts that are worth so much and leave no room for more.
 */
final class LeanFillings {
  private static final int STEPS = 40_000;
  private static final int MOST = 2_000;

  private final CuttingProblem problem;
  private final Sequencer sequencer;
  private final Bin bin;
  private final long[] worth;
  private final LeanBound lean;
  private final int[] order;
  private final int[] counts;
  private final List<int[]> found = new ArrayList<>();
  private long enough;
  private long steps;

  LeanFillings(CuttingProblem problem, Sequencer sequencer, Bin bin, long[] worth) {
    this.problem = problem;
    this.sequencer = sequencer;
    this.bin = bin;
    this.worth = worth;
    this.lean = problem.nesting().lean;
    this.counts = new int[worth.length];
    this.order =
        IntStream.range(0, worth.length)
            .filter(t -> problem.demand()[t] > 0 && problem.holds(bin, t))
            .boxed()
            .sorted(
                Comparator.comparingDouble((Integer t) -> -(double) worth[t] / lean.inner(t))
                    .thenComparing(t -> t))
            .mapToInt(t -> t)
            .toArray();
  }

  /** Those with a part of a type, worth no less than this. */
  List<int[]> around(int type, long least) {
    enough = least;
    counts[type] = 1;
    long room = bin.usable() + problem.nesting().kerf + Nesting.SLACK - lean.inner(type);
    search(type, 0, worth[type], room, lean.low(type), lean.high(type));
    return found;
  }

  long steps() {
    return steps / 4;
  }

  /** Whether there may be more. */
  boolean cutOff() {
    return steps > STEPS || found.size() >= MOST;
  }

  static long value(int[] counts, long[] worth) {
    long sum = 0;
    for (int t = 0; t < counts.length; t++) {
      sum += counts[t] * worth[t];
    }
    return sum;
  }

  private void search(int type, int i, long value, long room, long low, long high) {
    steps++;
    if (cutOff() || value + fraction(i, room - (high - low)) < enough) {
      return;
    }
    if (i == order.length) {
      if (full()) {
        found.add(counts.clone());
      }
      return;
    }
    int t = order[i];
    int before = counts[t];
    long w = lean.inner(t);
    int n = 0;
    long lowThen = Math.min(low, lean.low(t));
    long highThen = Math.max(high, lean.high(t));
    while (before + n < problem.demand()[t]
        && (n + 1) * w <= room - (highThen - lowThen)
        && more(t)) {
      n++;
    }
    for (; n > 0; n--) {
      search(type, i + 1, value + n * worth[t], room - n * w, lowThen, highThen);
      counts[t]--;
    }
    search(type, i + 1, value, room, low, high);
  }

  private boolean more(int t) {
    counts[t]++;
    if (sequencer.fits(counts, bin.usable())) {
      return true;
    }
    counts[t]--;
    return false;
  }

  private double fraction(int from, long room) {
    double sum = 0;
    long left = room;
    for (int k = from; k < order.length; k++) {
      long w = lean.inner(order[k]);
      int n = problem.demand()[order[k]];
      if (n * w > left) {
        return sum + Math.max(0, (double) worth[order[k]] * left / w);
      }
      sum += n * (double) worth[order[k]];
      left -= n * w;
    }
    return sum;
  }

  private boolean full() {
    for (int t : order) {
      if (counts[t] < problem.demand()[t] && more(t)) {
        counts[t]--;
        return false;
      }
    }
    return true;
  }
}
