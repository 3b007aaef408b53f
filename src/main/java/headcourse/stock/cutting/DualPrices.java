package headcourse.stock.cutting;

import java.util.List;

/**
 * Dual values of the rows of a {@link RestrictedMaster}, rounded down to whole numbers.
 *
 * @param worth by type: what a part is worth
 * @param rows by pattern row, not negative where it asks for so many at least, else not positive
 * @param perCap what each of what is capped is charged with
 * @param sum what all parts and pattern rows are worth, less what may be spent of what is capped
 */
record DualPrices(long[] worth, long[] rows, long perCap, long sum) {
  /** One, where duals are divided by a number with so many digits after the point. */
  private static final long ONE = 1 << 16;

  /** Duals that must be divided by more than this say nothing. */
  private static final double GREATEST = 100;

  /** How much of the duals before is kept. */
  private static final double KEEP = 0.7;

  /** Smoothed duals: between those of the fractions and those before, which swing less. */
  static double[] mixed(double[] before, double[] now) {
    if (before == null) {
      return now;
    }
    double[] mixed = new double[now.length];
    for (int i = 0; i < mixed.length; i++) {
      mixed[i] = KEEP * before[i] + (1 - KEEP) * now[i];
    }
    return mixed;
  }

  /**
   * Of fractions.
   *
   * @param y by row
   * @param first the first pattern row; that of what is capped is before it
   * @param grain whole numbers to a unit
   */
  static DualPrices of(
      CuttingProblem problem,
      Objective objective,
      List<PatternRow> patternRows,
      double[] y,
      int first,
      double grain) {
    long[] worth = new long[problem.demand().length];
    long[] rows = new long[patternRows.size()];
    long sum = 0;
    for (int i = 0; i < rows.length; i++) {
      double of =
          patternRows.get(i).atLeast() ? Math.max(0, y[first + i]) : Math.min(0, y[first + i]);
      rows[i] = (long) Math.floor(of * grain);
      sum += rows[i] * patternRows.get(i).bound();
    }
    for (int t = 0; t < worth.length; t++) {
      worth[t] = (long) Math.floor(Math.max(0, y[t]) * grain);
      sum += worth[t] * problem.demand()[t];
    }
    long perCap = 0;
    if (objective.capped()) {
      perCap = (long) Math.floor(Math.max(0, 0 - y[first - 1]) * grain / objective.capUnit());
      sum -= perCap * objective.cap();
    }
    return new DualPrices(worth, rows, perCap, sum);
  }

  /**
   * No plan costs less, whatever the duals. Divided by what a pattern is worth over its cost, they
   * are duals that no pattern is worth more at (Farley 1990); so the bound is the greatest of those
   * at each such part of the duals.
   *
   * @param most by kind of blank: no pattern is worth more; not positive where it has none
   * @param scale what one unit of the objective counts for
   */
  long bound(CuttingProblem problem, Objective objective, long[] most, long scale) {
    long best = at(ONE, problem, objective, most, scale);
    for (int b = 0; b < most.length; b++) {
      CuttingProblem.Bin bin = problem.bins().get(b);
      long cost = objective.cost(bin) * scale;
      double over = cost == 0 ? 0 : (double) (most[b] - perCap * objective.toCap(bin)) / cost;
      if (over > 1 && over < GREATEST) {
        best = Math.max(best, at((long) Math.ceil(over * ONE), problem, objective, most, scale));
      }
    }
    return best;
  }

  /** With the duals divided by a number of {@link #ONE}s; each rounding makes it less. */
  private long at(long by, CuttingProblem problem, Objective objective, long[] most, long scale) {
    long left = sum;
    for (int b = 0; b < most.length; b++) {
      CuttingProblem.Bin bin = problem.bins().get(b);
      long cost = objective.cost(bin) * scale * by / ONE + perCap * objective.toCap(bin);
      left -= Math.max(0, most[b] - cost) * objective.most(problem, b);
    }
    if (by != ONE && left > 0) {
      left = left > Long.MAX_VALUE / (2 * ONE) ? 0 : left * ONE / by;
    }
    return Math.floorDiv(left + scale - 1, scale);
  }
}
