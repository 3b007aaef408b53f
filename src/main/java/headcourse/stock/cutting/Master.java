package headcourse.stock.cutting;

import headcourse.solve.LinearProgram;
import headcourse.stock.cutting.CuttingProblem.Bin;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;

/**
 * The least cost of fractions of filled blanks that give all parts and keep some rules (Gilmore and
 * Gomory 1961), with a bound that holds to the last digit.
 *
 * <p>The values of parts and rules are rounded to whole numbers. Whatever they are, all parts are
 * worth no more than the blanks of a plan cost and what the fillings of so many blanks are worth
 * over their cost; so the bound needs nothing but the most that each kind of blank can hold.
 */
final class Master {
  private static final int ROUNDS = 1_000;
  private static final int PIVOTS = 5_000;
  private static final int FEW = 4;
  private static final double WHOLE = 1e10;
  private static final double DEAR = 10;
  private static final double DEARER = 30;
  private static final int RAISES = 3;

  /**
   * From so many kinds of blank on a quick bound of all of them pays; it does in large problems.
   */
  private static final int MANY_KINDS = 8;

  private static final long UNKNOWN = Long.MAX_VALUE;
  private static final int AT_ONCE = 4;
  private static final double NONE = 1e-7;
  private static final double PAYS = 1e-9;

  /** How much of each sort of work counts for a step, some microseconds. */
  private static final int LP_STEP = 5_000;

  private static final int PRICE_STEP = 10;
  private static final int ORDER_STEP = 20;

  private final CuttingProblem problem;
  private final Aim aim;
  private final List<Rule> rules;
  private final long goal;
  private Meter meter;
  private final Pricer pricer;
  private final Sequencer sequencer;
  private final int[] countRow;
  private final int rows;
  private final long unit;
  private final long scale;
  private final LinearProgram lp;
  private final Totals totals;
  private final List<Packing.Load> loads = new ArrayList<>();
  private final List<Integer> numbers = new ArrayList<>();
  private final TreeSet<int[]> known = new TreeSet<>(Arrays::compare);
  private long bound = Long.MIN_VALUE;
  private long raised = Long.MIN_VALUE;
  private boolean met;
  private double rough = Double.NEGATIVE_INFINITY;
  private double[] smooth;
  private int turn;
  private int paid;

  /**
   * @param aim what is to be least
   * @param totals what it may come to
   * @param rules rows beside those of the parts and the blanks
   * @param goal where the bound reaches it, no more need be known
   */
  Master(
      CuttingProblem problem,
      Sequencer sequencer,
      Aim aim,
      Totals totals,
      List<Rule> rules,
      List<Packing.Load> before,
      long goal,
      Meter meter) {
    this.problem = problem;
    this.sequencer = sequencer;
    this.aim = aim;
    this.totals = totals;
    this.rules = rules;
    this.goal = goal;
    this.meter = meter;
    this.pricer = new Pricer(problem, sequencer, rules);
    int m = problem.demand().length;
    int kinds = problem.bins().size();
    countRow = new int[kinds];
    int row = m;
    for (int b = 0; b < kinds; b++) {
      countRow[b] = problem.bins().get(b).count() < problem.parts() ? row++ : -1;
    }
    int budget = aim.capped() ? 1 : 0;
    rows = row + budget + rules.size();
    double[] right = new double[rows];
    boolean[] atLeast = new boolean[rows];
    for (int t = 0; t < m; t++) {
      right[t] = problem.demand()[t];
      atLeast[t] = true;
    }
    for (int b = 0; b < kinds; b++) {
      if (countRow[b] >= 0) {
        right[countRow[b]] = problem.bins().get(b).count();
      }
    }
    if (budget > 0) {
      right[row] = aim.cap() / (double) aim.capUnit();
    }
    for (int i = 0; i < rules.size(); i++) {
      right[row + budget + i] = rules.get(i).bound();
      atLeast[row + budget + i] = rules.get(i).atLeast();
    }
    long dearest = 1;
    for (Bin b : problem.bins()) {
      dearest = Math.max(dearest, aim.cost(b));
    }
    unit = dearest;
    scale = (long) Math.max(1, WHOLE / unit);
    lp = new LinearProgram(right, atLeast, DEAR);
    before.forEach(this::add);
  }

  private boolean add(Packing.Load load) {
    int m = problem.demand().length;
    int[] key = Arrays.copyOf(load.counts(), m + 1);
    key[m] = load.bin();
    int n = 0;
    for (int t = 0; t < m; t++) {
      key[t] = Math.min(key[t], problem.demand()[t]);
      n += key[t];
    }
    Bin bin = problem.bins().get(load.bin());
    if (n == 0 || bin.count() == 0 || !known.add(key)) {
      return false;
    }
    int[] counts = Arrays.copyOf(key, m);
    double[] column = new double[rows];
    for (int t = 0; t < m; t++) {
      column[t] = counts[t];
    }
    if (countRow[load.bin()] >= 0) {
      column[countRow[load.bin()]] = 1;
    }
    int first = rows - rules.size();
    if (aim.capped()) {
      column[first - 1] = aim.toCap(bin) / (double) aim.capUnit();
    }
    for (int i = 0; i < rules.size(); i++) {
      Rule rule = rules.get(i);
      if (rule.splits(counts) || rule.forbids(load.bin(), counts)) {
        return false;
      }
      column[first + i] = rule.of(load.bin(), counts);
    }
    numbers.add(lp.add(column, aim.cost(bin) / (double) unit));
    loads.add(new Packing.Load(load.bin(), counts));
    return true;
  }

  /**
   * Solves until they may cost no more than so much, without much care for a bound; whether the
   * fractions cost no more than so much.
   */
  boolean solveRoughly(long most) {
    rough = most + NONE * unit;
    return solve() && bound < goal && met && cost() <= rough;
  }

  /** Goes on with more steps. */
  boolean solve(Meter more) {
    meter = more;
    return solve();
  }

  /** Solves; where it returns false, the steps were used up before the least was found. */
  boolean solve() {
    int raises = 0;
    for (int round = 0; round < ROUNDS; round++) {
      long pivots = lp.solve(PIVOTS);
      meter.add(2 + (pivots + 1) * lp.work() / LP_STEP);
      double[] y = lp.duals();
      if (reached() || round >= FEW + countRow.length / 2 && lp.unmet() < NONE && cost() <= rough) {
        met = true;
        return true;
      }
      smooth = Prices.mixed(smooth, y);
      boolean more = price(smooth, true) && pays(y);
      for (int k = 0; !more && bound < goal && k < (cost() <= rough ? 1 : 2); k++) {
        // What the mixed prices mislead to is looked for again with those of the fractions.
        smooth = y;
        more = price(y, k == 0) && pays(y);
      }
      if (bound >= goal) {
        return true;
      }
      if (!more) {
        met = lp.unmet() < NONE;
        if (met || raises++ == RAISES) {
          return true;
        }
        lp.dearer(DEARER);
      }
      if (meter.out()) {
        return false;
      }
    }
    return false;
  }

  /** Where the steps ran out: a closer look at what the prices so far are good for. */
  void closeBound() {
    if (smooth != null && bound < goal) {
      price(smooth, false);
    }
  }

  /** Whether the fractions cost no more than any plan must. */
  private boolean reached() {
    if (bound > raised) {
      raised = totals.next(bound);
    }
    return lp.unmet() < NONE && cost() <= raised + NONE * unit;
  }

  private double cost() {
    double[] x = lp.answer();
    double sum = 0;
    for (int i = 0; i < loads.size(); i++) {
      sum += x[numbers.get(i)] * aim.cost(problem.bins().get(loads.get(i).bin()));
    }
    return sum;
  }

  /** Whether any of the fillings added last is worth more than it costs. */
  private boolean pays(double[] y) {
    boolean pays = false;
    for (int i = paid; i < loads.size(); i++) {
      pays |= lp.reduced(numbers.get(i), y) < -PAYS;
    }
    paid = loads.size();
    return pays;
  }

  private boolean price(double[] y, boolean hasty) {
    double grain = (double) scale * unit;
    Prices prices = Prices.of(problem, aim, rules, y, rows - rules.size(), grain);
    long before = pricer.steps();
    long work = sequencer.work();
    // What is not looked at closely counts for what is known at once.
    long[] most = new long[countRow.length];
    Arrays.fill(most, UNKNOWN);
    if (problem.large() || countRow.length > MANY_KINDS) {
      most = pricer.most(prices.worth(), prices.duals());
    }
    boolean more = false;
    int some = 0;
    int next = turn;
    for (int k = 0; k < countRow.length; k++) {
      int b = (turn + k) % countRow.length;
      Bin bin = problem.bins().get(b);
      if (bin.count() == 0 || shut(b)) {
        most[b] = 0;
        continue;
      }
      if (hasty && some == AT_ONCE) {
        continue;
      }
      long own = aim.cost(bin) * scale + prices.perCap() * aim.toCap(bin);
      double extra = countRow[b] < 0 ? 0 : Math.max(0, 0 - y[countRow[b]]) * grain;
      // What the rounding of the fractions leaves is not worth a filling.
      long here = own + (long) Math.ceil(extra) + (long) (grain * 1e-8);
      if (most[b] <= here) {
        continue;
      }
      Pricer.Priced p = pricer.price(b, prices.worth(), prices.duals(), here, hasty);
      if (!p.found().isEmpty() && ++some == AT_ONCE) {
        // The others have their turn next time.
        next = (b + 1) % countRow.length;
      }
      for (int[] counts : p.found()) {
        more |= add(new Packing.Load(b, counts));
      }
      most[b] = p.whole() ? Math.min(most[b], p.bound()) : most[b];
    }
    turn = next;
    meter.add((pricer.steps() - before) / PRICE_STEP + (sequencer.work() - work) / ORDER_STEP);
    if (Arrays.stream(most).allMatch(v -> v < UNKNOWN)) {
      bound = Math.max(bound, prices.bound(problem, aim, most, scale));
    }
    return more;
  }

  private boolean shut(int b) {
    int[] none = new int[problem.demand().length];
    return rules.stream().anyMatch(r -> r.forbids(b, none));
  }

  /** No plan that keeps the rules costs less. */
  long bound() {
    return bound;
  }

  /** Whether the fractions give all parts. */
  boolean met() {
    return met;
  }

  /** Fractions of filled blanks, the fullest first. */
  List<Fraction> fractions() {
    double[] x = lp.answer();
    List<Fraction> out = new ArrayList<>();
    for (int i = 0; i < loads.size(); i++) {
      if (x[numbers.get(i)] > NONE) {
        out.add(new Fraction(loads.get(i), x[numbers.get(i)]));
      }
    }
    out.sort(Comparator.comparingDouble(f -> 0 - f.amount));
    return out;
  }

  /**
   * A part of a filled blank.
   *
   * @param load how it is filled
   * @param amount how much of it
   */
  record Fraction(Packing.Load load, double amount) {}

  /** The fillings that cost least beyond what they are worth, so many at most. */
  List<Packing.Load> nearest(int most) {
    double[] y = lp.duals();
    List<Fraction> by = new ArrayList<>();
    for (int i = 0; i < loads.size(); i++) {
      by.add(new Fraction(loads.get(i), lp.reduced(numbers.get(i), y)));
    }
    by.sort(Comparator.comparingDouble(f -> f.amount));
    return by.stream().limit(most).map(Fraction::load).toList();
  }
}
