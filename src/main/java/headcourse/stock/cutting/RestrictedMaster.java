package headcourse.stock.cutting;

import headcourse.solve.LinearProgram;
import headcourse.stock.cutting.CuttingProblem.Bin;
import java.util.Arrays;
import java.util.List;

/**
 * The least cost of fractions of patterns that give all parts and keep some pattern rows, by column
 * generation (Gilmore and Gomory 1961), with a lower bound that holds to the last digit.
 *
 * <p>The dual values are rounded to whole numbers. Whatever they are, all parts are worth no more
 * than the blanks of a plan cost and what the patterns on so many blanks are worth over their cost;
 * so the bound needs nothing but the most that each kind of blank can hold.
 */
final class RestrictedMaster {
  /** Rounds and pivots without end mean that rounding leads in a circle. */
  private static final int ROUNDS = 1_000;

  private static final int PIVOTS = 5_000;

  /** So many products of the linear programme, one after another, are one operation. */
  private static final int PRODUCTS = 5;

  /** Rounds before fractions that are cheap enough are enough. */
  private static final int FEW = 4;

  /** Dual values are whole numbers of this part of the dearest blank. */
  private static final double WHOLE = 1e10;

  /** Parts left out become so much dearer while the answer leaves any, so many times. */
  private static final double DEARER = 30;

  private static final int RAISES = 3;

  /** After so many kinds of blank with new patterns the linear programme is solved again. */
  private static final int AT_ONCE = 4;

  /** What the rounding of the duals leaves is not worth a pattern. */
  private static final double ROUNDED = 1e-8;

  private static final long UNKNOWN = Long.MAX_VALUE;

  private final CuttingProblem problem;
  private final Objective objective;
  private final List<PatternRow> patternRows;
  private final long goal;
  private final Sequencer sequencer;
  private final Pricing pricing;
  private final Columns columns;
  private final LinearProgram lp;
  private final AttainableTotals totals;
  private final long scale;
  private StepBudget budget;
  private long bound = Long.MIN_VALUE;
  private boolean met;
  private double cheapEnough = Double.NEGATIVE_INFINITY;
  private double[] smooth;
  private int turn;

  /**
   * @param objective what is to be least
   * @param totals what it may come to
   * @param patternRows rows beside those of the parts and the blanks
   * @param before patterns to begin with
   * @param goal where the bound reaches it, no more need be known
   */
  RestrictedMaster(
      CuttingProblem problem,
      Sequencer sequencer,
      Objective objective,
      AttainableTotals totals,
      List<PatternRow> patternRows,
      List<Packing.Pattern> before,
      long goal,
      StepBudget budget) {
    this.problem = problem;
    this.objective = objective;
    this.totals = totals;
    this.patternRows = PatternRow.limits(problem);
    this.patternRows.addAll(patternRows);
    this.goal = goal;
    this.budget = budget;
    this.sequencer = sequencer;
    this.pricing = new Pricing(problem, sequencer, this.patternRows);
    this.columns = new Columns(problem, objective, this.patternRows);
    this.lp = columns.lp();
    this.scale = (long) Math.max(1, WHOLE / columns.unit());
    before.forEach(columns::add);
  }

  /**
   * Solves until the fractions may cost no more than so much, without much care for a bound;
   * whether they cost no more than so much.
   */
  boolean solveRoughly(long most) {
    cheapEnough = most + Columns.NOTHING * columns.unit();
    return solve() && bound < goal && met && cheapEnough();
  }

  /** Goes on with another budget. */
  boolean solve(StepBudget more) {
    budget = more;
    return solve();
  }

  /** Solves; where it returns false, the budget was out before the least was found. */
  boolean solve() {
    int raises = 0;
    for (int round = 0; round < ROUNDS; round++) {
      budget.spend((lp.solve(PIVOTS) + 1) * lp.work() / PRODUCTS);
      double[] y = lp.duals();
      if (reached() || round >= FEW + problem.bins().size() / 2 && cheapEnough()) {
        met = true;
        return true;
      }
      smooth = DualPrices.mixed(smooth, y);
      boolean more = price(smooth, true) && columns.newOnesPay(y);
      for (int k = 0; !more && bound < goal && k < (cheapEnough() ? 1 : 2); k++) {
        // What the mixed duals mislead to is looked for again with those of the fractions.
        smooth = y;
        more = price(y, k == 0) && columns.newOnesPay(y);
      }
      if (bound >= goal) {
        return true;
      }
      if (budget.out()) {
        return false;
      }
      if (!more) {
        met = cost() < Double.POSITIVE_INFINITY;
        if (met || raises++ == RAISES) {
          return true;
        }
        lp.dearer(DEARER);
      }
    }
    return false;
  }

  /** Where the budget ran out: a closer look at what the duals so far are good for. */
  void closeBound() {
    if (smooth != null && bound < goal) {
      price(smooth, false);
    }
  }

  /** Whether the fractions cost no more than any plan must. */
  private boolean reached() {
    return cost() <= totals.next(bound) + Columns.NOTHING * columns.unit();
  }

  private boolean cheapEnough() {
    return cost() <= cheapEnough;
  }

  /** What the fractions cost; endless where they don't give all parts. */
  private double cost() {
    return lp.unmet() < Columns.NOTHING ? columns.cost() : Double.POSITIVE_INFINITY;
  }

  private boolean price(double[] y, boolean hasty) {
    double grain = (double) scale * columns.unit();
    DualPrices duals =
        DualPrices.of(problem, objective, patternRows, y, columns.firstPatternRow(), grain);
    int kinds = problem.bins().size();
    long[] most = new long[kinds];
    Arrays.fill(most, UNKNOWN);
    boolean more = false;
    int some = 0;
    int next = turn;
    for (int k = 0; k < kinds; k++) {
      int b = (turn + k) % kinds;
      Bin bin = problem.bins().get(b);
      if (bin.count() == 0 || shut(b)) {
        most[b] = 0;
        continue;
      }
      if (hasty && some == AT_ONCE) {
        continue;
      }
      long threshold = charge(b, duals) + (long) (grain * ROUNDED);
      Pricing.Priced p = pricing.price(b, duals.worth(), duals.rows(), threshold, hasty, budget);
      if (!p.found().isEmpty() && ++some == AT_ONCE) {
        // The others have their turn next time.
        next = (b + 1) % kinds;
      }
      for (int[] counts : p.found()) {
        more |= columns.add(new Packing.Pattern(b, counts));
        int other = cheapest(counts, b, duals);
        if (other != b) {
          more |= columns.add(new Packing.Pattern(other, counts));
        }
      }
      most[b] = p.whole() ? p.bound() : UNKNOWN;
    }
    turn = next;
    if (Arrays.stream(most).allMatch(v -> v < UNKNOWN)) {
      bound = Math.max(bound, duals.bound(problem, objective, most, scale));
    }
    return more;
  }

  /** What a blank of a kind costs, with what it is charged for what is capped. */
  private long charge(int b, DualPrices duals) {
    Bin bin = problem.bins().get(b);
    return objective.cost(bin) * scale + duals.perCap() * objective.toCap(bin);
  }

  /** The kind of blank that a pattern found for another is cheapest on. */
  private int cheapest(int[] counts, int on, DualPrices duals) {
    int best = on;
    int[] present = Nesting.present(counts);
    budget.spend(4L * problem.bins().size());
    for (int b = 0; b < problem.bins().size(); b++) {
      Bin bin = problem.bins().get(b);
      if (bin.count() > 0
          && !bin.single()
          && charge(b, duals) < charge(best, duals)
          && Arrays.stream(present).allMatch(t -> bin.takes()[t])
          && sequencer.fits(counts, bin.usable())) {
        best = b;
      }
    }
    return best;
  }

  private boolean shut(int b) {
    int[] none = new int[problem.demand().length];
    return patternRows.stream().anyMatch(r -> r.forbids(b, none));
  }

  /** No plan that keeps the pattern rows costs less. */
  long bound() {
    return bound;
  }

  /** Whether the fractions give all parts. */
  boolean met() {
    return met;
  }

  /** The patterns and what the answer takes of them. */
  Columns columns() {
    return columns;
  }
}
