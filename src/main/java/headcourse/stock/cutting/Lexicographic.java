package headcourse.stock.cutting;

import headcourse.stock.cutting.CuttingProblem.Bin;
import java.util.ArrayList;
import java.util.List;

/**
 * Makes one component of the cost least after another: parts that are missing, what leads, and what
 * decides among equals.
 */
final class Lexicographic {
  private final CuttingProblem problem;
  private final Sequencer sequencer;
  private final Meter meter;

  Lexicographic(CuttingProblem problem, Sequencer sequencer, Meter meter) {
    this.problem = problem;
    this.sequencer = sequencer;
    this.meter = meter;
  }

  /**
   * The best plan.
   *
   * @param hand a plan to begin with
   * @param known no plan costs less
   */
  CuttingSolver.Result solve(Packing hand, Cost known) {
    Packing best = counted(hand);
    Cost bound = known;
    if (best.cost().missing() > known.missing()) {
      Aim aim = new Aim(Aim.What.MISSING, 0, best.cost().missing());
      BranchSearch search = search(aim, best, known.missing(), 0.8);
      best = search.best();
      if (search.bound() < best.cost().missing()) {
        return result(best, new Cost(search.bound(), 0, 0));
      }
    }
    long missing = best.cost().missing();
    // The bound known is of plans with nothing missing.
    bound = missing > 0 ? new Cost(missing, 0, 0) : known;
    if (best.cost().lead() > bound.lead()) {
      BranchSearch search =
          search(new Aim(Aim.What.LEAD, 0, best.cost().lead()), best, bound.lead(), 0.85);
      best = search.best();
      bound = bound.raised(new Cost(0, search.bound(), search.bound() * each()));
      if (search.bound() < best.cost().lead()) {
        return result(best, bound);
      }
    }
    bound = bound.raised(new Cost(0, best.cost().lead(), 0));
    Aim aim = new Aim(Aim.What.SECOND, best.cost().lead(), best.cost().second());
    int[] none = new int[problem.bins().size() + 1];
    CuttingProblem open = with(missing);
    long least = new Totals(open, aim, none, open.counts()).next(bound.second());
    bound = bound.raised(new Cost(0, 0, Math.min(least, best.cost().second())));
    if (best.cost().second() > bound.second()) {
      BranchSearch search = search(aim, best, bound.second(), 1);
      best = search.best();
      bound = bound.raised(new Cost(0, 0, search.bound()));
    }
    return result(best, bound);
  }

  private BranchSearch search(Aim aim, Packing best, long least, double share) {
    Meter some = meter.share(share);
    BranchSearch search =
        new BranchSearch(with(best.cost().missing()), sequencer, aim, best, least, some);
    search.run();
    meter.add(some.used());
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
    List<Packing.Load> loads = new ArrayList<>(plan.loads());
    int types = problem.demand().length;
    for (int t = 0; t < types; t++) {
      for (int k = 0; k < plan.missing()[t]; k++) {
        int[] one = new int[types];
        one[t] = 1;
        loads.add(new Packing.Load(problem.bins().size(), one));
      }
    }
    return new Packing(loads, new int[types], plan.cost());
  }

  private CuttingSolver.Result result(Packing plan, Cost bound) {
    List<Packing.Load> loads = new ArrayList<>();
    int[] missing = new int[problem.demand().length];
    for (Packing.Load l : plan.loads()) {
      if (l.bin() < problem.bins().size()) {
        loads.add(l);
      } else {
        for (int t = 0; t < missing.length; t++) {
          missing[t] += l.counts()[t];
        }
      }
    }
    Packing out = Packing.of(problem, loads, missing);
    boolean proved = out.cost().compareTo(bound) <= 0;
    return new CuttingSolver.Result(out, proved ? out.cost() : bound, proved, meter.used());
  }

  /** What each blank adds at least to what decides among equals, where they are only counted. */
  private long each() {
    boolean counted = problem.bins().stream().allMatch(b -> b.cost().lead() == 1);
    return counted ? problem.bins().stream().mapToLong(b -> b.cost().second()).min().orElse(0) : 0;
  }
}
