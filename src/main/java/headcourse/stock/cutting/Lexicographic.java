package headcourse.stock.cutting;

import headcourse.stock.cutting.CuttingProblem.Bin;
import java.util.ArrayList;
import java.util.List;

/**
 * Makes one component of the cost least after another: parts that are missing, what leads, and what
 * decides among equals.
 */
final class Lexicographic {
  /** Shares of the budget; parts left out, and what leads, weigh more than what comes after. */
  private static final double FOR_MISSING = 0.8;

  private static final double FOR_LEAD = 0.95;

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
   * @param incumbent a plan to begin with
   * @param known no plan costs less
   */
  CuttingSolver.Result solve(Packing incumbent, Cost known) {
    Packing best = counted(incumbent);
    Cost bound = known;
    if (best.cost().missing() > known.missing()) {
      Objective objective = new Objective(Objective.What.MISSING, 0, best.cost().missing());
      BranchAndPrice search = search(objective, best, known.missing(), FOR_MISSING);
      best = search.best();
      if (search.bound() < best.cost().missing()) {
        return result(best, new Cost(search.bound(), 0, 0));
      }
    }
    long missing = best.cost().missing();
    // The bound known is of plans with nothing missing.
    bound = missing > 0 ? new Cost(missing, 0, 0) : known;
    if (best.cost().lead() > bound.lead()) {
      BranchAndPrice search =
          search(
              new Objective(Objective.What.LEAD, 0, best.cost().lead()),
              best,
              bound.lead(),
              FOR_LEAD);
      best = search.best();
      bound = bound.raised(new Cost(0, search.bound(), search.bound() * each()));
      if (search.bound() < best.cost().lead()) {
        return result(best, bound);
      }
    }
    bound = bound.raised(new Cost(0, best.cost().lead(), 0));
    Objective objective =
        new Objective(Objective.What.SECOND, best.cost().lead(), best.cost().second());
    int[] none = new int[problem.bins().size() + 1];
    CuttingProblem open = with(missing);
    long least = new AttainableTotals(open, objective, none, open.counts()).next(bound.second());
    bound = bound.raised(new Cost(0, 0, Math.min(least, best.cost().second())));
    if (best.cost().second() > bound.second()) {
      BranchAndPrice search = search(objective, best, bound.second(), 1);
      best = search.best();
      bound = bound.raised(new Cost(0, 0, search.bound()));
    }
    return result(best, bound);
  }

  private BranchAndPrice search(Objective objective, Packing best, long least, double share) {
    StepBudget some = budget.share(share);
    BranchAndPrice search =
        new BranchAndPrice(with(best.cost().missing()), sequencer, objective, best, least, some);
    search.run();
    return search;
  }

  /** The problem with so many places for parts that none is left for. */
  private CuttingProblem with(long missing) {
    List<Bin> bins = new ArrayList<>(problem.bins());
    bins.add(Bin.missing(problem.demand().length, (int) missing));
    return new CuttingProblem(problem.demand(), problem.nesting(), bins);
  }

  /** The same plan with missing parts in their places. */
  private Packing counted(Packing plan) {
    List<Packing.Pattern> patterns = new ArrayList<>(plan.patterns());
    int types = problem.demand().length;
    for (int t = 0; t < types; t++) {
      for (int k = 0; k < plan.missing()[t]; k++) {
        int[] one = new int[types];
        one[t] = 1;
        patterns.add(new Packing.Pattern(problem.bins().size(), one));
      }
    }
    return new Packing(patterns, new int[types], plan.cost());
  }

  private CuttingSolver.Result result(Packing plan, Cost bound) {
    List<Packing.Pattern> patterns = new ArrayList<>();
    int[] missing = new int[problem.demand().length];
    for (Packing.Pattern p : plan.patterns()) {
      if (p.bin() < problem.bins().size()) {
        patterns.add(p);
      } else {
        for (int t = 0; t < missing.length; t++) {
          missing[t] += p.counts()[t];
        }
      }
    }
    Packing out = Packing.of(problem, patterns, missing);
    boolean proved = out.cost().compareTo(bound) <= 0;
    return new CuttingSolver.Result(
        out, proved ? out.cost() : bound, proved, budget.steps(), sequencer);
  }

  /** What each blank adds at least to what decides among equals, where they are only counted. */
  private long each() {
    boolean counted = problem.bins().stream().allMatch(b -> b.cost().lead() == 1);
    return counted ? problem.bins().stream().mapToLong(b -> b.cost().second()).min().orElse(0) : 0;
  }
}
