package headcourse.stock.cutting;

import headcourse.stock.cutting.CuttingProblem.Bin;
import java.util.Comparator;
import java.util.TreeSet;

/**
 * Which totals a number of blanks of each kind may come to, so that a bound may be raised to the
 * next of them.
 */
final class AttainableTotals {
  /** Of more different sums than this nothing is said. */
  private static final int MOST = 20_000;

  private final Objective objective;

  /** All totals under the objective's; null where nothing is said. */
  private TreeSet<Long> totals;

  /** What some blanks come to: of the objective, and of what is capped. */
  private record Sum(long total, long capped) {
    private static final Comparator<Sum> ORDER =
        Comparator.comparingLong(Sum::total).thenComparing(Sum::capped);

    Sum plus(Sum each, long n) {
      return new Sum(total + n * each.total, capped + n * each.capped);
    }
  }

  /** Of any blanks of a problem. */
  AttainableTotals(CuttingProblem problem, Objective objective, StepBudget budget) {
    this(problem, objective, new int[problem.bins().size()], problem.counts(), budget);
  }

  /**
   * @param low by kind: so many blanks at least
   * @param high by kind: so many at most
   * @param budget what it counts on
   */
  AttainableTotals(
      CuttingProblem problem, Objective objective, int[] low, int[] high, StepBudget budget) {
    this.objective = objective;
    TreeSet<Sum> sums = new TreeSet<>(Sum.ORDER);
    sums.add(new Sum(0, 0));
    for (int b = 0; b < low.length; b++) {
      Bin bin = problem.bins().get(b);
      Sum each = new Sum(objective.cost(bin), objective.toCap(bin));
      TreeSet<Sum> more = new TreeSet<>(Sum.ORDER);
      for (Sum s : sums) {
        boolean free = each.total == 0 && each.capped == 0;
        for (int n = low[b]; n <= (free ? low[b] : high[b]); n++) {
          Sum sum = s.plus(each, n);
          if (sum.total >= objective.under() || sum.capped > objective.cap()) {
            break;
          }
          more.add(sum);
        }
        if (more.size() > MOST) {
          return;
        }
      }
      budget.spend(20L * more.size());
      sums = more;
    }
    totals = new TreeSet<>();
    for (Sum s : sums) {
      if (s.capped == objective.cap()) {
        totals.add(s.total);
      }
    }
  }

  /**
   * The least total from there on and under the objective's; the objective's where there is none.
   */
  long next(long bound) {
    if (totals == null) {
      return bound;
    }
    Long next = totals.ceiling(bound);
    return next == null ? objective.under() : next;
  }

  /** The greatest total under the objective's; {@link Long#MIN_VALUE} where there is none. */
  long last() {
    if (totals == null) {
      return objective.under() - 1;
    }
    return totals.isEmpty() ? Long.MIN_VALUE : totals.last();
  }
}
