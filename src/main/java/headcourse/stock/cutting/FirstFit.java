package headcourse.stock.cutting;

import headcourse.stock.cutting.CuttingProblem.Bin;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * First fit and best fit, decreasing: the longest part first, each on the first blank that it fits,
 * or where it fits tightest.
 */
final class FirstFit {
  /** The share of the budget; with it used up, only the first way is looked at. */
  private static final double SHARE = 0.1;

  /** Which kind of blank to begin: the cheapest for its length, the longest, or the shortest. */
  private static final List<Comparator<Bin>> OPENINGS =
      List.of(
          Comparator.comparingDouble(b -> (double) b.cost().lead() / b.usable()),
          Comparator.comparingLong(Bin::usable).reversed(),
          Comparator.comparingLong(Bin::usable));

  private final CuttingProblem problem;
  private final Nesting nesting;
  private final Sequencer sequencer;
  private final StepBudget budget;

  /**
   * @param sequencer knows afterwards how the parts of each blank lie
   */
  FirstFit(CuttingProblem problem, Sequencer sequencer) {
    this.problem = problem;
    this.nesting = problem.nesting();
    this.budget = sequencer.budget().share(SHARE);
    this.sequencer = sequencer.quick(budget);
  }

  /** The best of first and best fit with every opening; the first of them whatever it takes. */
  Packing solve() {
    Packing best = null;
    for (Comparator<Bin> opening : OPENINGS) {
      for (boolean first : List.of(true, false)) {
        if (best != null && budget.out()) {
          return best;
        }
        // What is no blank comes last.
        Packing p = pack(first, Comparator.comparing(Bin::single).thenComparing(opening));
        best = best == null || p.cost().compareTo(best.cost()) < 0 ? p : best;
      }
    }
    return best;
  }

  private Packing pack(boolean first, Comparator<Bin> opening) {
    int[] left = problem.counts();
    List<Packing.Pattern> patterns = new ArrayList<>();
    int[] missing = problem.demand().clone();
    for (int t : longestFirst()) {
      while (missing[t] > 0) {
        Packing.Pattern at = place(t, patterns, first);
        if (at == null) {
          budget.spend((long) left.length * nesting.typeOf.length);
          int b =
              IntStream.range(0, left.length)
                  .filter(k -> left[k] > 0 && problem.holds(problem.bins().get(k), t))
                  .boxed()
                  .min(Comparator.comparing(problem.bins()::get, opening))
                  .orElse(-1);
          if (b < 0) {
            break;
          }
          left[b]--;
          at = new Packing.Pattern(b, new int[missing.length]);
          patterns.add(at);
        }
        at.counts()[t]++;
        missing[t]--;
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
      budget.spend(nesting.work(Nesting.present(p.counts()).length));
      long room = bin.usable() - nesting.leastLength(p.counts());
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

  /** Types in the order of their length, longest first. */
  private int[] longestFirst() {
    return IntStream.range(0, nesting.types)
        .boxed()
        .sorted(Comparator.comparingLong(t -> 0 - nesting.extent[nesting.firstNode[t]]))
        .mapToInt(t -> t)
        .toArray();
  }
}
