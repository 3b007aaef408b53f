package headcourse.stock;

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
}
