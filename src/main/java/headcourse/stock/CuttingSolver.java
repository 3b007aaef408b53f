package headcourse.stock;

import headcourse.stock.CuttingProblem.Bin;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Puts parts on blanks: as few missing as can be, then least price, fewest blanks, least length.
 *
 * <p>Parts that share no kind of blank, directly or through others, are solved apart. Each such
 * group starts from what a careful hand would do, and is done where that meets a bound; otherwise
 * an exact search goes on from there until it is proved or the steps are used up.
 */
final class CuttingSolver {
  private static final long ROUNDING_STEPS = 100_000;
  private static final long FEW_STEPS = 60_000;

  private final long limit;

  CuttingSolver(long limit) {
    this.limit = limit;
  }

  /**
   * A packing and how good it is known to be.
   *
   * @param packing the packing
   * @param bound no packing costs less
   * @param proved whether none is better
   * @param steps how many steps it took
   */
  record Result(Packing packing, Cost bound, boolean proved, long steps) {}

  /** Solves; parts that no blank takes are missing. */
  Result solve(CuttingProblem problem) {
    int[] group = groups(problem);
    List<Packing.Load> loads = new ArrayList<>();
    int[] missing = new int[problem.demand().length];
    Cost bound = Cost.NONE;
    boolean proved = true;
    long steps = 0;
    for (int g = 0; g < group.length; g++) {
      int[] demand = problem.demand().clone();
      for (int t = 0; t < demand.length; t++) {
        demand[t] = group[t] == g ? demand[t] : 0;
      }
      if (Arrays.stream(demand).allMatch(d -> d == 0)) {
        continue;
      }
      List<Bin> bins = new ArrayList<>();
      List<Integer> places = new ArrayList<>();
      for (int b = 0; b < problem.bins().size(); b++) {
        if (takesAny(problem, problem.bins().get(b), group, g)) {
          bins.add(problem.bins().get(b));
          places.add(b);
        }
      }
      Result r = solveGroup(new CuttingProblem(demand, problem.nesting(), bins), limit - steps);
      for (Packing.Load l : r.packing.loads()) {
        loads.add(new Packing.Load(places.get(l.bin()), l.counts()));
      }
      for (int t = 0; t < missing.length; t++) {
        missing[t] += r.packing.missing()[t];
      }
      bound = bound.plus(r.bound);
      proved &= r.proved;
      steps += r.steps;
    }
    return new Result(Packing.of(problem, loads, missing), bound, proved, steps);
  }

  private static boolean takesAny(CuttingProblem problem, Bin bin, int[] group, int g) {
    for (int t = 0; t < group.length; t++) {
      if (group[t] == g && problem.holds(bin, t)) {
        return true;
      }
    }
    return false;
  }

  /** By type: the least type that it is tied to by a blank that takes both. */
  private static int[] groups(CuttingProblem problem) {
    int[] group = new int[problem.demand().length];
    Arrays.setAll(group, t -> t);
    for (Bin bin : problem.bins()) {
      int first = -1;
      for (int t = 0; t < group.length; t++) {
        if (!problem.holds(bin, t)) {
          continue;
        }
        if (first < 0) {
          first = t;
        } else if (group[t] != group[first]) {
          int low = Math.min(group[t], group[first]);
          int high = Math.max(group[t], group[first]);
          for (int u = 0; u < group.length; u++) {
            group[u] = group[u] == high ? low : group[u];
          }
        }
      }
    }
    return group;
  }

  private Result solveGroup(CuttingProblem problem, long steps) {
    Sequencer sequencer = new Sequencer(problem.nesting());
    List<RestBound> bounds = new ArrayList<>();
    bounds.add(new LeastCost(problem));
    Cost bound = bound(problem, bounds);
    Packing best = new FirstFit(problem, sequencer).solve();
    if (best.cost().compareTo(bound) <= 0) {
      return new Result(best, best.cost(), true, 0);
    }
    PatternBound lead = PatternBound.ofLead(problem, sequencer);
    bounds.add(lead);
    bound = bound(problem, bounds);
    best =
        new PatternRounding(problem, sequencer, best)
            .solve(lead, bound, Math.min(steps, ROUNDING_STEPS));
    if (best.cost().compareTo(bound) > 0) {
      bounds.add(PatternBound.ofSecond(problem, sequencer, best.cost().lead()));
      bound = bound(problem, bounds);
    }
    if (best.cost().compareTo(bound) <= 0) {
      return new Result(best, best.cost(), true, 0);
    }
    // Beyond what is promised to be proved, the bound is near and a long search seldom closes it.
    long search = problem.parts() > 40 ? Math.min(steps, FEW_STEPS) : steps;
    long counted = 0;
    if (problem.nesting().lean != null && best.cost().missing() == 0) {
      return leaning(problem, sequencer, best, bound, search);
    }
    if (best.cost().missing() == 0 && problem.bins().size() > 1) {
      CountSearch counts = new CountSearch(problem, sequencer, bound, best, search / 2);
      boolean sure = counts.run();
      best = counts.best();
      counted = counts.steps();
      if (sure) {
        return new Result(best, best.cost(), true, counted);
      }
    }
    PackSearch packs = new PackSearch(problem, sequencer, bounds, best, bound, search - counted);
    boolean proved = packs.run();
    best = packs.best();
    boolean met = proved || best.cost().compareTo(bound) <= 0;
    return new Result(best, met ? best.cost() : bound, met, counted + packs.steps());
  }

  private static Result leaning(
      CuttingProblem problem, Sequencer sequencer, Packing first, Cost known, long steps) {
    Packing best = first;
    Cost bound = known;
    List<Packing.Load> pool = new ArrayList<>();
    int kinds = problem.bins().size();
    PatternSearch lead =
        new PatternSearch(
            problem, sequencer, best, false, kinds > 1 ? steps / 4 : steps * 3 / 4, pool);
    if (lead.run() && !sequencer.undecided()) {
      long least = lead.best().cost().lead();
      bound = bound.raised(new Cost(0, least, least * each(problem)));
    }
    best = lead.best();
    long taken = lead.steps();
    if (kinds > 1 && best.cost().compareTo(bound) > 0) {
      CountSearch counts =
          new CountSearch(problem, sequencer, bound, best, (steps - taken) * 3 / 4);
      boolean sure = counts.run() && !sequencer.undecided();
      best = counts.best();
      taken += counts.steps();
      Cost r = counts.reached();
      boolean same = r.lead() == best.cost().lead();
      bound = sure ? best.cost() : bound.raised(new Cost(0, r.lead(), same ? r.second() : 0));
    }
    if (best.cost().compareTo(bound) > 0 && best.cost().lead() == bound.lead()) {
      PatternSearch second = new PatternSearch(problem, sequencer, best, true, steps - taken, pool);
      boolean sure = second.run() && !sequencer.undecided();
      best = second.best();
      taken += second.steps();
      bound = sure ? best.cost() : bound;
    }
    boolean met = best.cost().compareTo(bound) <= 0;
    return new Result(best, met ? best.cost() : bound, met, taken);
  }

  /** What each blank adds at least to what decides among equals, where they are only counted. */
  private static long each(CuttingProblem problem) {
    boolean counted = problem.bins().stream().allMatch(b -> b.cost().lead() == 1);
    return counted ? problem.bins().stream().mapToLong(b -> b.cost().second()).min().orElse(0) : 0;
  }

  private static Cost bound(CuttingProblem problem, List<RestBound> bounds) {
    Cost all = Cost.NONE;
    for (RestBound b : bounds) {
      all = all.raised(b.of(problem.demand(), problem.counts(), Cost.NONE));
    }
    return all.missing() > 0 ? new Cost(all.missing(), 0, 0) : all;
  }
}
