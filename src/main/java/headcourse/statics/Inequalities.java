package headcourse.statics;

import headcourse.solve.LinearProgram;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Least {@code c·x} so that {@code A x ≥ b}, for few unknowns and many inequalities. It is solved
 * through its dual, which has a row for each unknown and a column for each inequality.
 */
final class Inequalities {
  private static final int PIVOTS = 2_000;
  private static final double SMALL = 1e-4;

  private final boolean[] free;
  private final List<double[]> rows = new ArrayList<>();
  private final List<Double> least = new ArrayList<>();

  /**
   * @param free which unknowns may be negative
   */
  Inequalities(boolean... free) {
    this.free = free.clone();
  }

  /** Adds {@code a·x ≥ b}. */
  void add(double[] a, double b) {
    rows.add(a.clone());
    least.add(b);
  }

  /**
   * What was found.
   *
   * @param x the unknowns
   * @param weights how much each inequality counts for: the dual answer, not negative
   */
  record Answer(double[] x, double[] weights) {}

  /**
   * The answer, or none where the inequalities contradict each other.
   *
   * @param cost of each unknown: not negative, nought for those that may be negative
   */
  Optional<Answer> least(double[] cost) {
    int n = free.length;
    int[] back = new int[n];
    int m = n;
    for (int j = 0; j < n; j++) {
      back[j] = free[j] ? m++ : -1;
    }
    double[] right = Arrays.copyOf(cost, m);
    LinearProgram dual = new LinearProgram(right, new boolean[m], 0);
    // Scores of stones on a jamb give as many rows that are nearly alike.
    dual.careful(SMALL);
    int first = -1;
    for (int i = 0; i < rows.size(); i++) {
      double[] column = Arrays.copyOf(rows.get(i), m);
      for (int j = 0; j < n; j++) {
        if (back[j] >= 0) {
          column[back[j]] = 0 - column[j];
        }
      }
      int number = dual.add(column, 0 - least.get(i));
      first = first < 0 ? number : first;
    }
    dual.solve(PIVOTS);
    if (dual.unbounded()) {
      return Optional.empty();
    }
    double[] prices = dual.duals();
    double[] x = new double[n];
    for (int j = 0; j < n; j++) {
      x[j] = 0 - prices[j] + (back[j] < 0 ? 0 : prices[back[j]]);
    }
    double[] y = dual.answer();
    return Optional.of(new Answer(x, Arrays.copyOfRange(y, first, first + rows.size())));
  }
}
