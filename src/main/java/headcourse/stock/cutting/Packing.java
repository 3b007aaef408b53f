package headcourse.stock.cutting;

import java.util.Arrays;
import java.util.List;

/**
 * Parts put on blanks.
 *
 * @param patterns one for each blank used
 * @param missing by type: parts that no blank was left for
 * @param cost what it costs
 */
public record Packing(List<Pattern> patterns, int[] missing, Cost cost) {
  /** Copies the list. */
  public Packing {
    patterns = List.copyOf(patterns);
  }

  /**
   * What is cut from one blank.
   *
   * @param bin its kind, as a place in the problem's list
   * @param counts how many parts of each type lie on it
   */
  public record Pattern(int bin, int[] counts) {}

  /** The packing of patterns and what is left over. */
  static Packing of(CuttingProblem problem, List<Pattern> patterns, int[] missing) {
    Cost cost = Cost.NONE;
    for (Pattern p : patterns) {
      cost = cost.plus(problem.bins().get(p.bin).cost());
    }
    cost = cost.plus(new Cost(Arrays.stream(missing).sum(), 0, 0));
    return new Packing(patterns, missing.clone(), cost);
  }
}
