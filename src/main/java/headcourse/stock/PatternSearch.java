package headcourse.stock;

import headcourse.stock.CuttingProblem.Bin;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Exact search over cutting plans of leaning parts, with fractions of filled blanks solved anew for
 * every rest: always around the part that is worth most, with every way to fill a blank that is
 * worth enough; first as the fractions say, then with more and more departures from them.
 */
final class PatternSearch {
  private static final int[] DEPARTURES = {0, 2, 6, Integer.MAX_VALUE};

  private final CuttingProblem problem;
  private final Sequencer sequencer;
  private final boolean second;
  private final long target;
  private final long limit;
  private final List<Packing.Load> pool;
  private final List<Packing.Load> path = new ArrayList<>();
  private Packing best;
  private long steps;
  private boolean cut;

  /**
   * @param best the best known, with nothing missing
   * @param second whether to look for what decides among packings whose lead is the best's, rather
   *     than for a lesser lead
   * @param limit how many steps it may take
   * @param pool fillings found before, to which those found are added
   */
  PatternSearch(
      CuttingProblem problem,
      Sequencer sequencer,
      Packing best,
      boolean second,
      long limit,
      List<Packing.Load> pool) {
    this.pool = pool;
    this.problem = problem;
    this.sequencer = sequencer;
    this.best = best;
    this.second = second;
    this.target = best.cost().lead();
    this.limit = limit;
  }

  /** Searches; true where nothing better is left. */
  boolean run() {
    for (int departures : DEPARTURES) {
      cut = false;
      go(problem.demand(), problem.counts(), Cost.NONE, departures);
      if (!cut || tired()) {
        break;
      }
    }
    return !cut && !tired();
  }

  Packing best() {
    return best;
  }

  long steps() {
    return steps;
  }

  private boolean tired() {
    return steps > limit;
  }

  private boolean better(Cost least) {
    if (least.missing() > 0) {
      return false;
    }
    Cost b = best.cost();
    return second
        ? least.lead() <= target && least.compareTo(b) < 0 && least.second() < b.second()
        : least.lead() < b.lead();
  }

  private void go(int[] rest, int[] left, Cost spent, int departures) {
    List<Bin> bins = new ArrayList<>();
    for (int b = 0; b < left.length; b++) {
      bins.add(problem.bins().get(b).withCount(left[b]));
    }
    CuttingProblem open = new CuttingProblem(rest, problem.nesting(), bins);
    if (open.parts() == 0) {
      keep(Packing.of(open, List.of(), new int[rest.length]));
      return;
    }
    if (tired() || !better(spent.plus(new LeastCost(open).of(rest, left, Cost.NONE)))) {
      return;
    }
    PatternBound fractions =
        second
            ? PatternBound.ofSecond(open, sequencer, target - spent.lead(), pool)
            : PatternBound.ofLead(open, sequencer, pool);
    steps += 1 + fractions.work();
    if (!better(spent.plus(fractions.of(rest, left, Cost.NONE)))) {
      return;
    }
    keep(new FirstFit(open, sequencer).solve());
    int k = 0;
    for (Packing.Load load : ways(open, fractions, spent)) {
      if (tired()) {
        return;
      }
      if (k > departures) {
        cut = true;
        return;
      }
      int[] restThen = rest.clone();
      for (int t = 0; t < restThen.length; t++) {
        restThen[t] -= load.counts()[t];
      }
      int[] leftThen = left.clone();
      leftThen[load.bin()]--;
      Cost of = problem.bins().get(load.bin()).cost();
      if (better(spent.plus(of).plus(fractions.of(restThen, leftThen, of)))) {
        path.add(load);
        go(restThen, leftThen, spent.plus(of), departures - k);
        path.remove(path.size() - 1);
        k++;
      }
    }
  }

  /**
   * Ways to fill a blank around the part that is worth most, those first that the fractions use.
   */
  private List<Packing.Load> ways(CuttingProblem open, PatternBound fractions, Cost spent) {
    long[] worth = fractions.worth();
    int around = -1;
    for (int t = 0; t < worth.length; t++) {
      if (open.demand()[t] > 0 && (around < 0 || worth[t] > worth[around])) {
        around = t;
      }
    }
    List<Packing.Load> out = new ArrayList<>();
    for (int b = 0; b < open.bins().size(); b++) {
      Bin bin = open.bins().get(b);
      if (bin.count() == 0 || !open.holds(bin, around)) {
        continue;
      }
      Cost of = spent.plus(bin.cost());
      long allowed =
          second ? best.cost().second() - 1 - of.second() : best.cost().lead() - 1 - of.lead();
      LeanFillings fillings = new LeanFillings(open, sequencer, bin, worth);
      for (int[] counts : fillings.around(around, fractions.excess(open, bin, allowed))) {
        out.add(new Packing.Load(b, counts));
      }
      steps += fillings.steps();
      cut |= fillings.cutOff();
    }
    out.sort(
        Comparator.comparingDouble((Packing.Load l) -> -amount(fractions, l))
            .thenComparing(l -> -LeanFillings.value(l.counts(), worth))
            .thenComparing(Packing.Load::counts, java.util.Arrays::compare)
            .thenComparing(Packing.Load::bin));
    return out;
  }

  private static double amount(PatternBound fractions, Packing.Load load) {
    for (int i = 0; i < fractions.patterns().size(); i++) {
      Packing.Load p = fractions.patterns().get(i);
      if (p.bin() == load.bin() && java.util.Arrays.equals(p.counts(), load.counts())) {
        return fractions.amounts().get(i);
      }
    }
    return 0;
  }

  private void keep(Packing tail) {
    List<Packing.Load> all = new ArrayList<>();
    path.forEach(l -> all.add(new Packing.Load(l.bin(), l.counts().clone())));
    all.addAll(tail.loads());
    Packing whole = Packing.of(problem, all, tail.missing());
    if (whole.cost().compareTo(best.cost()) < 0) {
      best = whole;
    }
  }
}
