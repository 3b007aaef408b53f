package headcourse.stock.cutting;

import java.util.List;

/**
 * Prices of the rows of a {@link Master}, rounded down to whole numbers.
 *
 * @param worth by type: what a part is worth
 * @param duals by rule, not negative where it asks for so many at least, else not positive
 * @param perCap what each of what is capped is charged with
 * @param sum what all parts and rules are worth, less what may be spent of what is capped
 */
record Prices(long[] worth, long[] duals, long perCap, long sum) {
  private static final long ONE = 1 << 16;
  private static final double GREATEST = 100;

  /** How much of the prices before is kept. */
  private static final double KEEP = 0.7;

  /** Prices between those of the fractions and those before, which swing less. */
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
   * @param first the row of the first rule; that of what is capped is before it
   * @param grain whole numbers to a unit
   */
  static Prices of(
      CuttingProblem problem, Aim aim, List<Rule> rules, double[] y, int first, double grain) {
    long[] worth = new long[problem.demand().length];
    long[] duals = new long[rules.size()];
    long sum = 0;
    for (int i = 0; i < duals.length; i++) {
      double of = rules.get(i).atLeast() ? Math.max(0, y[first + i]) : Math.min(0, y[first + i]);
      duals[i] = (long) Math.floor(of * grain);
      sum += duals[i] * rules.get(i).bound();
    }
    for (int t = 0; t < worth.length; t++) {
      worth[t] = (long) Math.floor(Math.max(0, y[t]) * grain);
      sum += worth[t] * problem.demand()[t];
    }
    long perCap = 0;
    if (aim.capped()) {
      perCap = (long) Math.floor(Math.max(0, 0 - y[first - 1]) * grain / aim.capUnit());
      sum -= perCap * aim.cap();
    }
    return new Prices(worth, duals, perCap, sum);
  }

  /**
   * No plan costs less, whatever the prices. Divided by what a filling is worth over its cost, they
   * are prices that no filling is worth more at (Farley 1990); so the bound is the greatest of
   * those at each such part of the prices.
   *
   * @param most by kind of blank: no filling is worth more; not positive where it has none
   * @param scale what one unit of the aim counts for
   */
  long bound(CuttingProblem problem, Aim aim, long[] most, long scale) {
    long best = at(ONE, problem, aim, most, scale);
    for (int b = 0; b < most.length; b++) {
      CuttingProblem.Bin bin = problem.bins().get(b);
      long cost = aim.cost(bin) * scale;
      double over = cost == 0 ? 0 : (double) (most[b] - perCap * aim.toCap(bin)) / cost;
      if (over > 1 && over < GREATEST) {
        best = Math.max(best, at((long) Math.ceil(over * ONE), problem, aim, most, scale));
      }
    }
    return best;
  }

  /** With the prices divided by a number of {@link #ONE}s; each rounding makes it less. */
  private long at(long by, CuttingProblem problem, Aim aim, long[] most, long scale) {
    long left = sum;
    for (int b = 0; b < most.length; b++) {
      CuttingProblem.Bin bin = problem.bins().get(b);
      long cost = aim.cost(bin) * scale * by / ONE + perCap * aim.toCap(bin);
      left -= Math.max(0, most[b] - cost) * aim.most(problem, b);
    }
    if (by != ONE && left > 0) {
      left = left > Long.MAX_VALUE / (2 * ONE) ? 0 : left * ONE / by;
    }
    return Math.floorDiv(left + scale - 1, scale);
  }
}
