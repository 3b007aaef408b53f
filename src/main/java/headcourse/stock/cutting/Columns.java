package headcourse.stock.cutting;

import headcourse.solve.LinearProgram;
import headcourse.stock.cutting.CuttingProblem.Bin;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;

/**
 * The patterns of a {@link RestrictedMaster} as columns of its linear programme. Its rows are those
 * of the parts, of what is capped, and the pattern rows.
 */
final class Columns {
  /** What is less is nothing, in the linear programme's rounding. */
  static final double NOTHING = 1e-7;

  /** A reduced cost that is worth taking a column for. */
  private static final double PAYS = 1e-9;

  /** What leaving a part out costs at first, by the dearest blank. */
  private static final double DEAR = 10;

  private final CuttingProblem problem;
  private final Objective objective;
  private final List<PatternRow> patternRows;

  private final int rows;
  private final long unit;
  private final LinearProgram lp;
  private final List<Packing.Pattern> patterns = new ArrayList<>();
  private final List<Integer> numbers = new ArrayList<>();
  private final TreeSet<int[]> known = new TreeSet<>(Arrays::compare);
  private int looked;

  Columns(CuttingProblem problem, Objective objective, List<PatternRow> patternRows) {
    this.problem = problem;
    this.objective = objective;
    this.patternRows = patternRows;
    int types = problem.demand().length;
    rows = types + (objective.capped() ? 1 : 0) + patternRows.size();
    double[] right = new double[rows];
    boolean[] atLeast = new boolean[rows];
    for (int t = 0; t < types; t++) {
      right[t] = problem.demand()[t];
      atLeast[t] = true;
    }
    if (objective.capped()) {
      right[types] = objective.cap() / (double) objective.capUnit();
    }
    for (int i = 0; i < patternRows.size(); i++) {
      right[firstPatternRow() + i] = patternRows.get(i).bound();
      atLeast[firstPatternRow() + i] = patternRows.get(i).atLeast();
    }
    unit = Math.max(1, problem.bins().stream().mapToLong(objective::cost).max().orElse(1));
    lp = new LinearProgram(right, atLeast, DEAR);
  }

  /** The first row of the pattern rows; that of what is capped is before it. */
  int firstPatternRow() {
    return rows - patternRows.size();
  }

  /** The objective is counted in the cost of the dearest blank. */
  long unit() {
    return unit;
  }

  LinearProgram lp() {
    return lp;
  }

  /** Adds a pattern, no more of a type than is asked for; false if it is known or of no use. */
  boolean add(Packing.Pattern pattern) {
    int types = problem.demand().length;
    int[] key = Arrays.copyOf(pattern.counts(), types + 1);
    key[types] = pattern.bin();
    int n = 0;
    for (int t = 0; t < types; t++) {
      key[t] = Math.min(key[t], problem.demand()[t]);
      n += key[t];
    }
    Bin bin = problem.bins().get(pattern.bin());
    if (n == 0 || bin.count() == 0 || !known.add(key)) {
      return false;
    }
    int[] counts = Arrays.copyOf(key, types);
    double[] column = new double[rows];
    for (int t = 0; t < types; t++) {
      column[t] = counts[t];
    }
    if (objective.capped()) {
      column[firstPatternRow() - 1] = objective.toCap(bin) / (double) objective.capUnit();
    }
    for (int i = 0; i < patternRows.size(); i++) {
      PatternRow row = patternRows.get(i);
      if (row.forbids(pattern.bin(), counts)) {
        return false;
      }
      column[firstPatternRow() + i] = row.of(pattern.bin(), counts);
    }
    numbers.add(lp.add(column, objective.cost(bin) / (double) unit));
    patterns.add(new Packing.Pattern(pattern.bin(), counts));
    return true;
  }

  /** What the fractions cost, in units of the objective. */
  double cost() {
    double[] x = lp.answer();
    double sum = 0;
    for (int i = 0; i < patterns.size(); i++) {
      sum += x[numbers.get(i)] * objective.cost(problem.bins().get(patterns.get(i).bin()));
    }
    return sum;
  }

  /** Whether any of the patterns added since it was asked last is worth more than it costs. */
  boolean newOnesPay(double[] y) {
    boolean pays = false;
    for (; looked < patterns.size(); looked++) {
      pays |= lp.reduced(numbers.get(looked), y) < -PAYS;
    }
    return pays;
  }

  /**
   * A part of a pattern.
   *
   * @param pattern the pattern
   * @param amount how much of it
   */
  record Fraction(Packing.Pattern pattern, double amount) {}

  /** Fractions of patterns in the answer, the greatest first. */
  List<Fraction> fractions() {
    double[] x = lp.answer();
    List<Fraction> out = new ArrayList<>();
    for (int i = 0; i < patterns.size(); i++) {
      if (x[numbers.get(i)] > NOTHING) {
        out.add(new Fraction(patterns.get(i), x[numbers.get(i)]));
      }
    }
    out.sort(Comparator.comparingDouble(f -> 0 - f.amount));
    return out;
  }

  /** The patterns of the least reduced cost, so many at most. */
  List<Packing.Pattern> nearest(int most) {
    double[] y = lp.duals();
    List<Fraction> by = new ArrayList<>();
    for (int i = 0; i < patterns.size(); i++) {
      by.add(new Fraction(patterns.get(i), lp.reduced(numbers.get(i), y)));
    }
    by.sort(Comparator.comparingDouble(f -> f.amount));
    return by.stream().limit(most).map(Fraction::pattern).toList();
  }
}
