package headcourse.stock.cutting;

import headcourse.stock.cutting.CuttingProblem.Bin;
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
public final class CuttingSolver {
  private final long limit;

  /**
   * @param limit how many steps it may take
   */
  public CuttingSolver(long limit) {
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
  public record Result(Packing packing, Cost bound, boolean proved, long steps) {}

  /** Solves; parts that no blank takes are missing. */
  public Result solve(CuttingProblem problem) {
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
    Packing hand = new FirstFit(problem, sequencer).solve();
    Cost bound = new LeastCost(problem).of(problem.demand(), problem.counts());
    bound = bound.missing() > 0 ? new Cost(bound.missing(), 0, 0) : bound;
    if (hand.cost().compareTo(bound) <= 0) {
      return new Result(hand, hand.cost(), true, 0);
    }
    hand = new ChainHand(problem, sequencer).better(hand);
    if (hand.cost().compareTo(bound) <= 0) {
      return new Result(hand, hand.cost(), true, 0);
    }
    return new Lexicographic(problem, sequencer, new Meter(steps)).solve(hand, bound);
  }
}
