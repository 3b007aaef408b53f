package headcourse.stock.cutting;

import headcourse.stock.cutting.CuttingProblem.Bin;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** Parts that share no kind of blank, directly or through others, as problems of their own. */
final class Components {
  private Components() {}

  /**
   * One of them.
   *
   * @param problem the parts and the kinds of blank that take any of them
   * @param kinds by kind of blank there: its place in the whole problem
   */
  record Component(CuttingProblem problem, int[] kinds) {}

  /** All that have parts. */
  static List<Component> of(CuttingProblem problem) {
    int[] group = groups(problem);
    List<Component> out = new ArrayList<>();
    for (int g = 0; g < group.length; g++) {
      int[] demand = problem.demand().clone();
      for (int t = 0; t < demand.length; t++) {
        demand[t] = group[t] == g ? demand[t] : 0;
      }
      if (Arrays.stream(demand).allMatch(d -> d == 0)) {
        continue;
      }
      List<Bin> bins = new ArrayList<>();
      List<Integer> kinds = new ArrayList<>();
      for (int b = 0; b < problem.bins().size(); b++) {
        if (takesAny(problem, problem.bins().get(b), group, g)) {
          bins.add(problem.bins().get(b));
          kinds.add(b);
        }
      }
      out.add(
          new Component(
              new CuttingProblem(demand, problem.nesting(), bins),
              kinds.stream().mapToInt(b -> b).toArray()));
    }
    // The largest last: it has what others leave of the budget.
    out.sort(Comparator.comparingInt(c -> c.problem.parts()));
    return out;
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
}
