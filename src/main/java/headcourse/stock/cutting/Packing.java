package headcourse.stock.cutting;

import java.util.List;

/**
 * Parts put on blanks.
 *
 * @param loads blanks used and what is on them
 * @param missing by type: parts that no blank was left for
 * @param cost what it costs
 */
public record Packing(List<Load> loads, int[] missing, Cost cost) {
  /** Copies the list. */
  public Packing {
    loads = List.copyOf(loads);
  }

  /**
   * One blank.
   *
   * @param bin its kind, as a place in the problem's list
   * @param counts how many parts of each type lie on it
   */
  public record Load(int bin, int[] counts) {}

  /** The packing of loads and what is left over. */
  static Packing of(CuttingProblem problem, List<Load> loads, int[] missing) {
    Cost cost = Cost.NONE;
    for (Load l : loads) {
      cost = cost.plus(problem.bins().get(l.bin).cost());
    }
    long m = 0;
    for (int x : missing) {
      m += x;
    }
    return new Packing(loads, missing.clone(), cost.plus(new Cost(m, 0, 0)));
  }
}
