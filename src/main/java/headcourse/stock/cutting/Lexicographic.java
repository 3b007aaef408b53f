package headcourse.stock.cutting;

import static headcourse.stock.cutting.Cost.Component.MISSING;

/**
 * Makes one component of the cost least after another: parts that are missing, what leads, and what
 * decides among equals.
 */
final class Lexicographic {
  /** Shares of the budget; parts left out, and what leads, weigh more than what comes after. */
  private static final double[] SHARES = {0.8, 0.95, 1};

  private final CuttingProblem problem;
  private final Sequencer sequencer;
  private final StepBudget budget;

  Lexicographic(CuttingProblem problem, Sequencer sequencer, StepBudget budget) {
    this.problem = problem;
    this.sequencer = sequencer;
    this.budget = budget;
  }

  /**
   * The best plan.
   *
   * @param start a plan to begin with
   * @param known no plan costs less
   */
  CuttingSolver.Result solve(Packing start, Cost known) {
    Packing best = start;
    Cost bound = known;
    for (Cost.Component what : Cost.Component.values()) {
      CuttingProblem open = problem.withPlaces((int) best.cost().missing());
      Objective objective = Objective.below(what, best.cost());
      long least = new AttainableTotals(open, objective, budget).next(bound.of(what));
      if (least < objective.under()) {
        Incumbent incumbent = new Incumbent(what, best, least);
        StepBudget some = budget.share(SHARES[what.ordinal()]);
        new BranchAndPrice(open, sequencer, incumbent, some).run();
        best = incumbent.best();
        least = incumbent.bound();
      }
      // The bounds known are of plans with nothing missing.
      bound = best.cost().missing() > 0 && what == MISSING ? Cost.NONE : bound;
      bound = bound.raised(what, least);
      if (bound.of(what) < best.cost().of(what)) {
        break;
      }
    }
    boolean proved = best.cost().compareTo(bound) <= 0;
    return new CuttingSolver.Result(
        best, proved ? best.cost() : bound, proved, budget.steps(), sequencer);
  }
}
