package headcourse.stock;

import headcourse.stock.CuttingProblem.Bin;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;

/**
 * The bound of Gilmore and Gomory: the least cost of fractions of filled blanks that give all
 * parts.
 *
 * <p>The values of the parts that come with it bound every rest too: they are rounded to whole
 * numbers, and shrunk (Farley's way) until no filling of a blank that there are enough of is worth
 * more than the blank costs; what one of the others is worth over its cost is won at most once on
 * each.
 */
final class PatternBound implements RestBound {
  private static final int ROUNDS = 2_000;
  private static final int POOL = 3_000;
  private static final double WHOLE = 1e12;

  private final CuttingProblem problem;
  private final PatternPricer pricer;
  private final boolean second;
  private final long target;
  private final long[] cost;
  private final long leastSecond;
  private final List<Packing.Load> pool;
  private long work;
  private final List<Packing.Load> patterns = new ArrayList<>();
  private final List<Double> amounts = new ArrayList<>();
  private long scale;
  private long[] worth;
  private long[] over;
  private long perLead;

  private PatternBound(
      CuttingProblem problem,
      Sequencer sequencer,
      boolean second,
      long target,
      List<Packing.Load> pool) {
    this.pool = pool;
    this.problem = problem;
    this.pricer = new PatternPricer(problem, sequencer);
    this.second = second;
    this.target = target;
    this.cost =
        problem.bins().stream()
            .mapToLong(b -> second ? b.cost().second() : b.cost().lead())
            .toArray();
    boolean counted = problem.bins().stream().allMatch(b -> b.cost().lead() == 1);
    this.leastSecond =
        counted ? problem.bins().stream().mapToLong(b -> b.cost().second()).min().orElse(0) : 0;
    run();
  }

  /** Bounds what leads. */
  static PatternBound ofLead(CuttingProblem problem, Sequencer sequencer) {
    return ofLead(problem, sequencer, new ArrayList<>());
  }

  /** The same from fillings found before, some of the parts of which may be gone. */
  static PatternBound ofLead(CuttingProblem problem, Sequencer sequencer, List<Packing.Load> pool) {
    return new PatternBound(problem, sequencer, false, 0, pool);
  }

  /** Bounds what decides among packings whose lead is no more than the target. */
  static PatternBound ofSecond(CuttingProblem problem, Sequencer sequencer, long target) {
    return ofSecond(problem, sequencer, target, new ArrayList<>());
  }

  /** The same from fillings found before, some of the parts of which may be gone. */
  static PatternBound ofSecond(
      CuttingProblem problem, Sequencer sequencer, long target, List<Packing.Load> pool) {
    return new PatternBound(problem, sequencer, true, target, pool);
  }

  /** Work it took, in steps of a search. */
  long work() {
    return work;
  }

  /** What each part is worth. */
  long[] worth() {
    return worth;
  }

  /**
   * What a filling of one blank of a kind must be worth, so that the rest of its problem may cost
   * no more than allowed.
   */
  long excess(CuttingProblem whole, Bin bin, long allowed) {
    long sum = 0;
    for (int t = 0; t < worth.length; t++) {
      sum += worth[t] * whole.demand()[t];
    }
    for (int b = 0; b < over.length; b++) {
      sum -= over[b] * Math.min(whole.bins().get(b).count(), whole.parts());
    }
    return sum - perLead * (target - bin.cost().lead()) - allowed * scale;
  }

  /** The patterns that the fractions take. */
  List<Packing.Load> patterns() {
    return patterns;
  }

  /** How much of each pattern. */
  List<Double> amounts() {
    return amounts;
  }

  @Override
  public Cost of(int[] rest, int[] left, Cost spent) {
    long sum = 0;
    int parts = 0;
    for (int t = 0; t < rest.length; t++) {
      sum += worth[t] * rest[t];
      parts += rest[t];
    }
    for (int b = 0; b < left.length; b++) {
      sum -= over[b] * Math.min(left[b], parts);
    }
    sum -= perLead * (target - spent.lead());
    long least = sum <= 0 ? 0 : (sum + scale - 1) / scale;
    // Where blanks are counted, so many of the least one is a bound on what decides among equals.
    return second ? new Cost(0, 0, least) : new Cost(0, least, least * leastSecond);
  }

  private void run() {
    int m = problem.demand().length;
    int parts = problem.parts();
    List<Integer> limited = new ArrayList<>();
    for (int b = 0; b < cost.length; b++) {
      if (problem.bins().get(b).count() < parts) {
        limited.add(b);
      }
    }
    int rows = m + limited.size() + (second ? 1 : 0);
    double[] right = new double[rows];
    boolean[] atLeast = new boolean[rows];
    for (int t = 0; t < m; t++) {
      right[t] = problem.demand()[t];
      atLeast[t] = true;
    }
    for (int i = 0; i < limited.size(); i++) {
      right[m + i] = problem.bins().get(limited.get(i)).count();
    }
    if (second) {
      right[rows - 1] = target;
    }
    long dear = 10 * Arrays.stream(cost).max().orElse(1) + 10;
    scale = (long) Math.max(1, WHOLE / dear);
    worth = new long[m];
    over = new long[cost.length];
    LinearProgram lp = new LinearProgram(right, atLeast, dear);
    List<Packing.Load> loads = new ArrayList<>();
    List<Integer> numbers = new ArrayList<>();
    TreeSet<int[]> known = new TreeSet<>(Arrays::compare);
    for (Packing.Load l : pool) {
      int[] counts = l.counts().clone();
      int n = 0;
      for (int t = 0; t < m; t++) {
        counts[t] = Math.min(counts[t], problem.demand()[t]);
        n += counts[t];
      }
      int[] key = Arrays.copyOf(counts, m + 1);
      key[m] = l.bin();
      if (n > 0 && problem.bins().get(l.bin()).count() > 0 && known.add(key)) {
        int row = limited.indexOf(l.bin());
        numbers.add(lp.add(column(counts, l.bin(), row, rows), cost[l.bin()]));
        loads.add(new Packing.Load(l.bin(), counts));
      }
    }
    for (int round = 0; round < ROUNDS; round++) {
      long pivots = lp.solve(20_000);
      work += 5 + (pivots + 1) * loads.size() * rows / 2_000;
      double[] y = lp.duals();
      long[] value = new long[m];
      for (int t = 0; t < m; t++) {
        value[t] = (long) Math.floor(Math.max(0, y[t]) * scale);
      }
      long lead = second ? (long) Math.floor(Math.max(0, -y[rows - 1]) * scale) : 0;
      long[] most = new long[cost.length];
      boolean better = false;
      for (int b = 0; b < cost.length; b++) {
        Bin bin = problem.bins().get(b);
        PatternPricer.Priced p = pricer.price(bin, value);
        most[b] = p.bound();
        int row = limited.indexOf(b);
        double here = price(b, lead) - (row < 0 ? 0 : y[m + row] * scale);
        if (p.value() > here + 1e-7 * dear * scale) {
          numbers.add(lp.add(column(p.counts(), b, row, rows), cost[b]));
          loads.add(new Packing.Load(b, p.counts()));
          if (pool.size() < POOL) {
            pool.add(new Packing.Load(b, p.counts()));
          }
          better = true;
        }
      }
      keep(value, most, lead);
      if (!better || pricer.tired()) {
        break;
      }
    }
    work += pricer.steps() / 4;
    double[] x = lp.answer();
    for (int i = 0; i < loads.size(); i++) {
      if (x[numbers.get(i)] > 1e-7) {
        patterns.add(loads.get(i));
        amounts.add(x[numbers.get(i)]);
      }
    }
  }

  private long price(int b, long lead) {
    return cost[b] * scale + lead * problem.bins().get(b).cost().lead();
  }

  private double[] column(int[] counts, int b, int row, int rows) {
    double[] col = new double[rows];
    for (int t = 0; t < counts.length; t++) {
      col[t] = counts[t];
    }
    if (row >= 0) {
      col[counts.length + row] = 1;
    }
    if (second) {
      col[rows - 1] = problem.bins().get(b).cost().lead();
    }
    return col;
  }

  /** Keeps these values of parts where they bound the whole better than those kept before. */
  private void keep(long[] value, long[] most, long lead) {
    double shrink = 1;
    for (int b = 0; b < cost.length; b++) {
      if (problem.bins().get(b).count() >= problem.parts() && most[b] > price(b, lead)) {
        shrink = Math.min(shrink, (double) price(b, lead) / most[b]);
      }
    }
    // A little more, so that the rounding of the quotient is on the safe side.
    shrink = shrink == 1 ? 1 : shrink * (1 - 1e-12);
    long[] oldWorth = worth;
    long[] oldOver = over;
    long oldLead = perLead;
    Cost before = of(problem.demand(), problem.counts(), Cost.NONE);
    worth = new long[value.length];
    over = new long[most.length];
    perLead = lead;
    for (int t = 0; t < value.length; t++) {
      worth[t] = (long) Math.floor(value[t] * shrink);
    }
    for (int b = 0; b < most.length; b++) {
      over[b] = Math.max(0, (long) Math.ceil(most[b] * shrink) - price(b, lead));
    }
    Cost now = of(problem.demand(), problem.counts(), Cost.NONE);
    if (now.compareTo(before) < 0) {
      worth = oldWorth;
      over = oldOver;
      perLead = oldLead;
    }
  }
}
