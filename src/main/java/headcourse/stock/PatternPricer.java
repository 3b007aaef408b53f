package headcourse.stock;

import headcourse.stock.CuttingProblem.Bin;
import java.util.Arrays;

/** Finds the most valuable way to fill one blank, each part having a value. */
final class PatternPricer {
  private static final int STEPS = 10_000;
  private static final int TIRED = 150_000;
  private static final int DIVISIONS = 4_000;

  private final CuttingProblem problem;
  private final Sequencer sequencer;

  private Bin bin;
  private long[] values;
  private int[] order;
  private int height;
  private int[] counts;
  private int[] bestCounts;
  private long best;
  private long unsure;
  private long steps;
  private long allSteps;

  PatternPricer(CuttingProblem problem, Sequencer sequencer) {
    this.problem = problem;
    this.sequencer = sequencer;
  }

  /**
   * A filled blank.
   *
   * @param counts parts of each type
   * @param value what they are worth
   * @param bound no filling is worth more
   */
  record Priced(int[] counts, long value, long bound) {}

  /** The best filling of a kind of blank, by branch and bound with the fractional bound. */
  Priced price(Bin kind, long[] worth) {
    if (problem.nesting().lean != null) {
      LeanPricer leaning = new LeanPricer(problem, sequencer);
      Priced p = leaning.price(kind, worth);
      allSteps += leaning.steps() / 8;
      return p;
    }
    this.bin = kind;
    this.values = worth;
    Nesting nesting = problem.nesting();
    height = nesting.heights() - 1;
    Integer[] sorted =
        java.util.stream.IntStream.range(0, worth.length)
            .filter(t -> worth[t] > 0 && problem.demand()[t] > 0 && problem.holds(kind, t))
            .boxed()
            .toArray(Integer[]::new);
    Arrays.sort(
        sorted,
        (a, b) -> {
          int c =
              Double.compare(
                  (double) worth[b] / nesting.weight[b][height],
                  (double) worth[a] / nesting.weight[a][height]);
          return c != 0 ? c : a - b;
        });
    order = Arrays.stream(sorted).mapToInt(i -> i).toArray();
    counts = new int[worth.length];
    bestCounts = new int[worth.length];
    best = 0;
    unsure = 0;
    steps = 0;
    long capacity = capacity();
    search(0, 0, capacity);
    allSteps += steps;
    long most = Math.max(best, unsure);
    return new Priced(bestCounts, best, steps <= STEPS ? most : Math.max(most, relaxed(capacity)));
  }

  /** Steps in all. */
  long steps() {
    return allSteps;
  }

  /** Whether it has worked so long that the fractions had better stop where they are. */
  boolean tired() {
    return allSteps > TIRED;
  }

  private long capacity() {
    Nesting n = problem.nesting();
    long first = Long.MAX_VALUE;
    long last = Long.MAX_VALUE;
    for (int t : order) {
      first = Math.min(first, n.lead[t][height]);
      last = Math.min(last, n.tail[t][height]);
    }
    long ends = order.length == 0 ? 0 : first + last;
    return bin.usable() + n.kerf + Nesting.SLACK - ends;
  }

  private void search(int i, long value, long room) {
    if (value > best) {
      if (sequencer.fits(counts, bin.usable())) {
        best = value;
        bestCounts = counts.clone();
      } else {
        unsure = Math.max(unsure, value);
      }
    }
    if (i == order.length || ++steps > STEPS) {
      return;
    }
    int t = order[i];
    long w = problem.nesting().weight[t][height];
    if (value + (long) Math.ceil((double) values[t] / w * room) <= best) {
      return;
    }
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

  /** A bound where the search was cut off: the same by lengths alone, on a coarser scale. */
  private long relaxed(long capacity) {
    long unit = Math.max(1, capacity / DIVISIONS);
    int room = (int) (capacity / unit);
    long[] table = new long[room + 1];
    for (int t : order) {
      int w = (int) (problem.nesting().weight[t][height] / unit);
      long most = Math.min(problem.demand()[t], capacity / problem.nesting().weight[t][height]);
      for (int k = 1; most > 0; k *= 2) {
        int take = (int) Math.min(k, most);
        most -= take;
        for (int r = room; r >= take * w; r--) {
          table[r] = Math.max(table[r], table[r - take * w] + take * values[t]);
        }
      }
    }
    return table[room];
  }
}
