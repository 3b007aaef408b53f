package headcourse.stock.cutting;

import java.util.Arrays;
import java.util.List;

/**
 * Plans from fractions of patterns: whole ones are taken, or else the greatest fraction is taken as
 * one, and the rest is solved again; with a limited number of discrepancies, where another than the
 * greatest is taken (limited discrepancy search: Harvey and Ginsberg 1995).
 */
final class DiscrepancyDive {
  /** So many patterns are handed on to the rest. */
  private static final int SEEDS = 300;

  /** Of a large problem fractions above this are taken together. */
  private static final double NEARLY = 0.6;

  /** What rounding leaves of one. */
  private static final double ROUNDED = 1e-6;

  private final CuttingProblem problem;
  private final Sequencer sequencer;
  private final Objective objective;
  private final long bound;
  private final StepBudget budget;
  private Packing best;

  /**
   * @param best the incumbent
   * @param bound no plan has less of the objective
   */
  DiscrepancyDive(
      CuttingProblem problem,
      Sequencer sequencer,
      Objective objective,
      Packing best,
      long bound,
      StepBudget budget) {
    this.problem = problem;
    this.sequencer = sequencer;
    this.objective = objective;
    this.best = best;
    this.bound = bound;
    this.budget = budget;
  }

  /**
   * The best plan.
   *
   * @param counts so many blanks of each kind at most
   * @param master solved for the whole problem
   * @param discrepancies so many at most
   */
  Packing run(int[] counts, RestrictedMaster master, int discrepancies) {
    dive(new PartialPlan(problem, counts), master, discrepancies);
    return best;
  }

  private boolean done() {
    return budget.out() || objective.of(best.cost()) <= bound;
  }

  private void dive(PartialPlan plan, RestrictedMaster master, int discrepancies) {
    List<Columns.Fraction> by = master.columns().fractions();
    List<Packing.Pattern> seeds = master.columns().nearest(SEEDS);
    PartialPlan whole = plan.copy();
    boolean any = false;
    for (Columns.Fraction f : by) {
      for (int k = 0; k < (int) (f.amount() + ROUNDED); k++) {
        any |= whole.take(f.pattern());
      }
    }
    if (any) {
      next(whole, seeds, discrepancies);
      return;
    }
    for (int k = 0; k < by.size() && k <= discrepancies && !done(); k++) {
      PartialPlan with = plan.copy();
      if (with.take(by.get(k).pattern())) {
        if (k == 0 && problem.large()) {
          takeNearlyWhole(by, with);
        }
        next(with, seeds, discrepancies - k);
      }
    }
  }

  private static void takeNearlyWhole(List<Columns.Fraction> by, PartialPlan plan) {
    for (int k = 1; k < by.size() && by.get(k).amount() > NEARLY; k++) {
      if (plan.holdsAll(by.get(k).pattern())) {
        plan.take(by.get(k).pattern());
      }
    }
  }

  private void next(PartialPlan plan, List<Packing.Pattern> seeds, int discrepancies) {
    CuttingProblem open = plan.open();
    if (open.parts() == 0) {
      keep(plan.packing());
      return;
    }
    Objective now = objective.rest(plan.spent(), best.cost());
    boolean hopeless = now.under() <= 0 || now.capped() && now.cap() < 0;
    if (objective.of(best.cost()) <= bound || hopeless) {
      return;
    }
    if (!budget.out()) {
      AttainableTotals totals =
          new AttainableTotals(open, now, new int[open.bins().size()], plan.left());
      RestrictedMaster master =
          new RestrictedMaster(open, sequencer, now, totals, List.of(), seeds, now.under(), budget);
      if (master.solveRoughly(totals.last())) {
        dive(plan, master, discrepancies);
        return;
      }
    }
    if (problem.large()) {
      Packing rest = new FirstFit(open, sequencer).solve();
      if (Arrays.stream(rest.missing()).sum() == 0) {
        keep(plan.with(rest));
      }
    }
  }

  private void keep(Packing plan) {
    if (plan.cost().compareTo(best.cost()) < 0) {
      best = plan;
    }
  }
}
