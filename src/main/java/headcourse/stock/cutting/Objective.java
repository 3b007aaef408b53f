package headcourse.stock.cutting;

import headcourse.stock.cutting.CuttingProblem.Bin;

/**
 * Which component of the cost is to be least, and what the one before it may be at most.
 *
 * @param what the component
 * @param cap no more of the one before: of the lead, where the second is to be least
 * @param under plans of interest have less of it than this
 */
record Objective(What what, long cap, long under) {
  /** A component. */
  enum What {
    MISSING,
    LEAD,
    SECOND
  }

  /** What a blank adds to it. */
  long cost(Bin bin) {
    return of(bin.cost());
  }

  /** That component of a cost. */
  long of(Cost cost) {
    return switch (what) {
      case MISSING -> cost.missing();
      case LEAD -> cost.lead();
      case SECOND -> cost.second();
    };
  }

  /** Whether the one before it is bounded by more than the number of blanks. */
  boolean capped() {
    return what == What.SECOND;
  }

  /** What a blank adds to what is capped. */
  long toCap(Bin bin) {
    return bin.cost().lead();
  }

  /** A scale for what is capped. */
  long capUnit() {
    return Math.max(1, cap);
  }

  /** What is left of it where so much is spent, for plans better than the best. */
  Objective rest(Cost spent, Cost best) {
    return new Objective(what, cap - spent.lead(), of(best) - of(spent));
  }

  /** No plan of interest takes more of a kind of blank. */
  long most(CuttingProblem problem, int b) {
    Bin bin = problem.bins().get(b);
    long most = Math.min(bin.count(), problem.parts());
    if (cost(bin) > 0) {
      most = Math.min(most, Math.max(0, (under - 1) / cost(bin)));
    }
    if (capped() && toCap(bin) > 0) {
      most = Math.min(most, Math.max(0, cap / toCap(bin)));
    }
    return most;
  }
}
