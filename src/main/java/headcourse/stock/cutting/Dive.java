package headcourse.stock.cutting;

import java.util.Arrays;
import java.util.List;

/**
 * Makes plans of fractions of patterns: whole ones are taken, or else the greatest fraction as one,
 * and the rest is solved again; with a limited number of discrepancies, where another than the
 * greatest is taken (limited discrepancy search: Harvey and Ginsberg 1995).
 */
final class Dive {
  /** So many patterns are handed on to the rest. */
  private static final int SEEDS = 300;

  /** Of a large problem fractions above this are taken together. */
  private static final double NEARLY = 0.6;

  /** What rounding leaves of one. */
  private static final double ROUNDED = 1e-6;

  private final CuttingProblem problem;
  private final Sequencer sequencer;
  private final Incumbent incumbent;
  private final StepBudget budget;

  Dive(CuttingProblem problem, Sequencer sequencer, Incumbent incumbent, StepBudget budget) {
    this.problem = problem;
    this.sequencer = sequencer;
    this.incumbent = incumbent;
    this.budget = budget;
  }

  /**
   * Looks for better plans.
   *
   * @param plan a plan that nothing is taken for yet
   * @param root solved for the whole problem
   * @param discrepancies so many at most
   */
  void run(PartialPlan plan, RestrictedMaster root, int discrepancies) {
    if (!incumbent.proved()) {
      dive(plan, root, discrepancies);
    }
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
      rest(whole, seeds, discrepancies);
      return;
    }
    for (int k = 0; k < by.size() && k <= discrepancies; k++) {
      PartialPlan with = plan.copy();
      if (with.take(by.get(k).pattern())) {
        if (k == 0 && problem.large()) {
          by.stream()
              .skip(1)
              .filter(f -> f.amount() > NEARLY && with.holdsAll(f.pattern()))
              .forEach(f -> with.take(f.pattern()));
        }
        rest(with, seeds, discrepancies - k);
      }
      if (budget.out() || incumbent.proved()) {
        return;
      }
    }
  }

  /** Solves for what is left of a plan, and dives on from there. */
  private void rest(PartialPlan plan, List<Packing.Pattern> seeds, int discrepancies) {
    CuttingProblem open = plan.open();
    if (open.parts() == 0) {
      incumbent.take(plan.packing());
      return;
    }
    Objective now = incumbent.objective().rest(plan.spent());
    if (incumbent.proved() || now.under() <= 0 || now.cap() < 0) {
      return;
    }
    if (!budget.out()) {
      AttainableTotals totals = new AttainableTotals(open, now, budget);
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
        incumbent.take(plan.with(rest));
      }
    }
  }
}
