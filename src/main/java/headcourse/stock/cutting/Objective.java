package headcourse.stock.cutting;

import headcourse.stock.cutting.CuttingProblem.Bin;

/**
 * Which component of the cost is to be least, and what the one before it may be at most.
 *
 * @param what the component
 * @param cap no more of the lead, where the second is to be least; else 0
 * @param under plans of interest have less of it than this
 */
record Objective(Cost.Component what, long cap, long under) {
  /** The component of plans better than one, which is best in the components before. */
  static Objective below(Cost.Component what, Cost best) {
    return new Objective(what, what == Cost.Component.SECOND ? best.lead() : 0, best.of(what));
  }

  /** What a blank adds to it. */
  long cost(Bin bin) {
    return bin.cost().of(what);
  }

  /** Whether the one before it is bounded by more than the number of blanks. */
  boolean capped() {
    return what == Cost.Component.SECOND;
  }

  /** What a blank adds to what is capped. */
  long toCap(Bin bin) {
    return toCap(bin.cost());
  }

  private long toCap(Cost cost) {
    return capped() ? cost.lead() : 0;
  }

  /** A scale for what is capped. */
  long capUnit() {
    return Math.max(1, cap);
  }

  /** What is left of it where so much is spent. */
  Objective rest(Cost spent) {
    return new Objective(what, cap - toCap(spent), under - spent.of(what));
  }

  /** No plan of interest takes more of a kind of blank. */
  long most(CuttingProblem problem, int b) {
    Bin bin = problem.bins().get(b);
    long most = Math.min(bin.count(), problem.parts());
    if (cost(bin) > 0) {
      most = Math.min(most, Math.max(0, (under - 1) / cost(bin)));
    }
    if (toCap(bin) > 0) {
      most = Math.min(most, Math.max(0, cap / toCap(bin)));
    }
    return most;
  }
}
