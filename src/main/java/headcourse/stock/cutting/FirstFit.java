package headcourse.stock.cutting;

import headcourse.stock.cutting.CuttingProblem.Bin;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * First fit and best fit, decreasing: the longest part first, each on the first blank that it fits,
 * or where it fits tightest.
 */
final class FirstFit {
  /** The share of the budget; with it used up, only the first way is looked at. */
  private static final double SHARE = 0.1;

  private final CuttingProblem problem;
  private final Sequencer sequencer;
  private final StepBudget budget;

  /**
   * @param sequencer knows afterwards how the parts of each blank lie
   */
  FirstFit(CuttingProblem problem, Sequencer sequencer) {
    this.problem = problem;
    this.budget = sequencer.budget().share(SHARE);
    this.sequencer = sequencer.quick(budget);
  }

  /** Which kind of blank to begin. */
  private enum Opening {
    CHEAPEST_FOR_ITS_LENGTH,
    LONGEST,
    SHORTEST;

    boolean better(Bin a, Bin b) {
      if (a.single() || b.single()) {
        // What is no blank comes last.
        return b.single() && !a.single();
      }
      return switch (this) {
        case CHEAPEST_FOR_ITS_LENGTH ->
            (double) a.cost().lead() / a.usable() < (double) b.cost().lead() / b.usable();
        case LONGEST -> a.usable() > b.usable();
        case SHORTEST -> a.usable() < b.usable();
      };
    }
  }

  /** The best of first and best fit with every opening; the first of them whatever it takes. */
  Packing solve() {
    Packing best = null;
    for (Opening opening : Opening.values()) {
      for (boolean first : List.of(true, false)) {
        if (best != null && budget.out()) {
          return best;
        }
        Packing p = pack(first, opening);
        best = best == null || p.cost().compareTo(best.cost()) < 0 ? p : best;
      }
    }
    return best;
  }

  private Packing pack(boolean first, Opening opening) {
    int[] left = problem.counts();
    List<Packing.Pattern> patterns = new ArrayList<>();
    int[] missing = new int[problem.demand().length];
    for (int t : longestFirst()) {
      for (int k = 0; k < problem.demand()[t]; k++) {
        Packing.Pattern at = place(t, patterns, first);
        if (at == null) {
          int b = open(t, left, opening);
          if (b < 0) {
            missing[t] += problem.demand()[t] - k;
            break;
          }
          left[b]--;
          at = new Packing.Pattern(b, new int[missing.length]);
          patterns.add(at);
        }
        at.counts()[t]++;
      }
    }
    return Packing.of(problem, patterns, missing);
  }

  /** The blank begun before that one more of a type goes on, or null. */
  private Packing.Pattern place(int type, List<Packing.Pattern> patterns, boolean first) {
    Packing.Pattern at = null;
    long tightest = Long.MAX_VALUE;
    for (Packing.Pattern p : patterns) {
      Bin bin = problem.bins().get(p.bin());
      if (!bin.takes()[type] || bin.single()) {
        continue;
      }
      p.counts()[type]++;
      budget.spend(problem.nesting().work(Nesting.present(p.counts()).length));
      long room = bin.usable() - problem.nesting().leastLength(p.counts());
      if (room >= 0 && room < tightest && sequencer.fits(p.counts(), bin.usable())) {
        at = p;
        tightest = first ? -1 : room;
      }
      p.counts()[type]--;
      if (tightest < 0) {
        return at;
      }
    }
    return at;
  }

  private int open(int type, int[] left, Opening opening) {
    int best = -1;
    budget.spend((long) left.length * problem.nesting().typeOf.length);
    for (int b = 0; b < left.length; b++) {
      Bin bin = problem.bins().get(b);
      if (left[b] > 0 && problem.holds(bin, type)) {
        if (best < 0 || opening.better(bin, problem.bins().get(best))) {
          best = b;
        }
      }
    }
    return best;
  }

  /** Types in the order of their length, longest first. */
  private int[] longestFirst() {
    Nesting n = problem.nesting();
    long[] size = new long[n.types];
    Arrays.setAll(size, t -> Arrays.stream(n.slices.width()[t]).max().orElse(0));
    Integer[] order = new Integer[n.types];
    Arrays.setAll(order, i -> i);
    Arrays.sort(order, (a, b) -> size[a] != size[b] ? Long.compare(size[b], size[a]) : a - b);
    return Arrays.stream(order).mapToInt(i -> i).toArray();
  }
}
