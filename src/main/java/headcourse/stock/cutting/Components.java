package headcourse.stock.cutting;

import headcourse.stock.cutting.CuttingProblem.Bin;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

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

  /** All that have parts; the largest last, so that it has what others leave of the budget. */
  static List<Component> of(CuttingProblem problem) {
    List<BitSet> groups = new ArrayList<>();
    for (int t : Nesting.present(problem.demand())) {
      groups.add(new BitSet());
      groups.get(groups.size() - 1).set(t);
    }
    for (Bin bin : problem.bins()) {
      BitSet together = new BitSet();
      for (BitSet g : List.copyOf(groups)) {
        if (takesAny(problem, bin, g)) {
          together.or(g);
          groups.remove(g);
        }
      }
      if (!together.isEmpty()) {
        groups.add(together);
      }
    }
    return groups.stream()
        .map(g -> component(problem, g))
        .sorted(Comparator.comparingInt(c -> c.problem.parts()))
        .toList();
  }

  private static Component component(CuttingProblem problem, BitSet group) {
    int[] demand = problem.demand().clone();
    IntStream.range(0, demand.length).filter(t -> !group.get(t)).forEach(t -> demand[t] = 0);
    int[] kinds =
        IntStream.range(0, problem.bins().size())
            .filter(b -> takesAny(problem, problem.bins().get(b), group))
            .toArray();
    List<Bin> bins = IntStream.of(kinds).mapToObj(problem.bins()::get).toList();
    return new Component(new CuttingProblem(demand, problem.nesting(), bins), kinds);
  }

  private static boolean takesAny(CuttingProblem problem, Bin bin, BitSet group) {
    return group.stream().anyMatch(t -> problem.holds(bin, t));
  }
}
