package headcourse.stock.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Random;

/**
 * Large neighbourhood search (Shaw 1998): a few blanks of the incumbent are emptied, and their
 * parts put on blanks anew by a dive; what is better is kept.
 */
final class LargeNeighbourhood {
  /** So many parts are freed at first; more where that was solved soon, fewer where it was not. */
  private static final int FREED = 16;

  private static final int LEAST_FREED = 6;

  /** The share of the budget for one neighbourhood, and what of it is soon. */
  private static final double EACH = 0.08;

  private static final double SOON = 0.5;

  private static final int DISCREPANCIES = 1;

  /** After so many in a row that gave nothing there is little left to find. */
  private static final int FRUITLESS = 60;

  private final CuttingProblem problem;
  private final Sequencer sequencer;
  private final Objective objective;
  private final InnerWidths widths;
  private final PatternPool pool;
  private final StepBudget budget;
  private final Random random = new Random(1);
  private Packing best;
  private long bound;
  private int size = FREED;

  LargeNeighbourhood(
      CuttingProblem problem,
      Sequencer sequencer,
      Objective objective,
      PatternPool pool,
      StepBudget budget) {
    this.problem = problem;
    this.sequencer = sequencer;
    this.objective = objective;
    this.widths = new InnerWidths(problem.nesting());
    this.pool = pool;
    this.budget = budget;
  }

  /**
   * The best plan.
   *
   * @param incumbent a plan with nothing missing
   * @param bound no plan has less of the objective
   */
  Packing better(Packing incumbent, long bound) {
    best = incumbent;
    this.bound = bound;
    for (int n = 0; n < FRUITLESS && size < problem.parts(); n++) {
      if (budget.out() || objective.of(best.cost()) <= bound) {
        break;
      }
      Cost before = best.cost();
      refill();
      n = best.cost().compareTo(before) < 0 ? -1 : n;
    }
    return best;
  }

  private void refill() {
    List<Packing.Pattern> freed = new ArrayList<>();
    PartialPlan kept = new PartialPlan(problem, problem.counts());
    int parts = 0;
    for (Packing.Pattern p : inOrder()) {
      int n = Arrays.stream(p.counts()).sum();
      if (freed.size() < 2 || parts + n <= size) {
        freed.add(p);
        parts += n;
      } else {
        kept.take(p);
      }
    }
    StepBudget some = budget.share(EACH);
    best =
        new DiscrepancyDive(
                problem, sequencer, objective.rest(Cost.NONE, best.cost()), best, bound, pool, some)
            .complete(kept, DISCREPANCIES);
    if (some.out()) {
      size = Math.max(LEAST_FREED, size * 4 / 5);
    } else if (some.spentShare() < SOON) {
      size += Math.max(1, size / 4);
    }
  }

  /** One pattern, then any others, or those first whose parts lean about as its own do. */
  private List<Packing.Pattern> inOrder() {
    List<Packing.Pattern> all = new ArrayList<>(best.patterns());
    java.util.Collections.shuffle(all, random);
    if (random.nextBoolean()) {
      long near = lean(all.get(0));
      all.sort(Comparator.comparingLong(p -> Math.abs(lean(p) - near)));
    }
    return all;
  }

  /** How far the parts of a pattern lean, in the mean. */
  private long lean(Packing.Pattern p) {
    long sum = 0;
    int n = 0;
    for (int t : Nesting.present(p.counts())) {
      n += p.counts()[t];
      sum += p.counts()[t] * (widths.low(t) + widths.high(t));
    }
    return sum / Math.max(1, n);
  }
}
