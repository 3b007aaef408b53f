package headcourse.stock;

import headcourse.stock.CuttingProblem.Bin;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Finds the most valuable way to fill one blank with parts that lean.
 *
 * <p>Where the least and the greatest lean on a blank are known, their difference is spent, and of
 * each part only its inner width (see {@link LeanBound#inner}) still counts: a knapsack, for each
 * such pair of leans, the most promising first. What fits is asked of the {@link Sequencer}.
 */
final class LeanPricer {
  private static final int STEPS = 60_000;

  private final CuttingProblem problem;
  private final Sequencer sequencer;
  private final Nesting nesting;
  private final LeanBound lean;
  private Bin bin;
  private long[] values;
  private int[] counts;
  private int[] bestCounts;
  private long best;
  private long bound;
  private long steps;
  private int[] order;

  LeanPricer(CuttingProblem problem, Sequencer sequencer) {
    this.problem = problem;
    this.sequencer = sequencer;
    this.nesting = problem.nesting();
    this.lean = nesting.lean;
  }

  /** Leans from the least to the greatest, and what may at most be won with them. */
  private record Window(long low, long high, long room, int[] order, double most) {}

  /** Steps of the last search. */
  long steps() {
    return steps;
  }

  /** The best filling of a kind of blank, and a bound on it. */
  PatternPricer.Priced price(Bin kind, long[] worth) {
    bin = kind;
    values = worth;
    counts = new int[worth.length];
    bestCounts = new int[worth.length];
    best = 0;
    bound = 0;
    steps = 0;
    int[] all =
        IntStream.range(0, worth.length)
            .filter(t -> worth[t] > 0 && problem.demand()[t] > 0 && problem.holds(kind, t))
            .boxed()
            .sorted(
                Comparator.comparingDouble((Integer t) -> -(double) worth[t] / lean.inner(t))
                    .thenComparing(t -> t))
            .mapToInt(t -> t)
            .toArray();
    for (Window w : windows(all)) {
      if (w.most <= Math.max(best, bound)) {
        break;
      }
      order = w.order;
      long before = steps;
      search(0, 0, w.room);
      if (steps > STEPS && before <= STEPS) {
        bound = Math.max(bound, (long) Math.ceil(w.most));
      }
    }
    return new PatternPricer.Priced(bestCounts, best, Math.max(best, bound));
  }

  private List<Window> windows(int[] all) {
    long[] lows = leans(all, true);
    long[] highs = leans(all, false);
    long room = bin.usable() + nesting.kerf + Nesting.SLACK;
    List<Window> out = new java.util.ArrayList<>();
    for (long low : lows) {
      for (long high : highs) {
        if (high - low < room) {
          int[] in =
              Arrays.stream(all).filter(t -> lean.low(t) >= low && lean.high(t) <= high).toArray();
          long left = room - (high - low);
          out.add(new Window(low, high, left, in, fraction(in, 0, left)));
        }
      }
    }
    out.sort(Comparator.comparingDouble((Window w) -> -w.most).thenComparingLong(Window::low));
    return out;
  }

  private long[] leans(int[] all, boolean low) {
    return Arrays.stream(all)
        .mapToLong(t -> low ? lean.low(t) : lean.high(t))
        .distinct()
        .sorted()
        .toArray();
  }

  /** The knapsack from the {@code i}th on, where parts may be split. */
  private double fraction(int[] of, int i, long room) {
    double sum = 0;
    long left = room;
    for (int k = i; k < of.length; k++) {
      long w = lean.inner(of[k]);
      int n = problem.demand()[of[k]];
      if (n * w > left) {
        return sum + (double) values[of[k]] * left / w;
      }
      sum += n * (double) values[of[k]];
      left -= n * w;
    }
    return sum;
  }

  private void search(int i, long value, long room) {
    if (value > best) {
      if (sequencer.fits(counts, bin.usable())) {
        best = value;
        bestCounts = counts.clone();
      } else {
        bound = Math.max(bound, value);
      }
    }
    if (i == order.length || ++steps > STEPS) {
      return;
    }
    if (value + fraction(order, i, room) <= Math.max(best, bound)) {
      return;
    }
    int t = order[i];
    long w = lean.inner(t);
    int n = 0;
    while (n < problem.demand()[t] && (n + 1) * w <= room) {
      counts[t]++;
      if (!sequencer.mayFit(counts, bin.usable())) {
        counts[t]--;
        break;
      }
      n++;
    }
    for (; n >= 0; n--) {
      search(i + 1, value + n * values[t], room - n * w);
      if (n > 0) {
        counts[t]--;
      }
    }
  }
}
