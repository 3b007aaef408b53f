package headcourse.stock.cutting;

import headcourse.stock.cutting.CuttingProblem.Bin;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Plans from fractions of filled blanks: whole ones are taken, or else the fullest fraction is
 * taken as one, and the rest is solved again; with a few departures from what the fractions say.
 */
final class Dive {
  private static final int SEEDS = 300;
  private static final double NEARLY = 0.6;
  private static final double WHOLE = 1 - 1e-6;

  private final CuttingProblem problem;
  private final int[] counts;
  private final Sequencer sequencer;
  private final Aim aim;
  private final long last;
  private final Meter meter;
  private final List<Packing.Load> path = new ArrayList<>();
  private Packing best;

  /**
   * @param counts so many blanks of each kind at most
   * @param best the best known
   * @param last no plan has less of the aim
   */
  Dive(
      CuttingProblem problem,
      int[] counts,
      Sequencer sequencer,
      Aim aim,
      Packing best,
      long last,
      Meter meter) {
    this.problem = problem;
    this.counts = counts.clone();
    this.sequencer = sequencer;
    this.aim = aim;
    this.best = best;
    this.last = last;
    this.meter = meter;
  }

  /** The best plan, from fractions of the whole problem on, with so many departures. */
  Packing run(Master fractions, int departures) {
    go(problem.demand(), counts, fractions, departures, Cost.NONE);
    return best;
  }

  private boolean done() {
    return meter.out() || aim.of(best.cost()) <= last;
  }

  private void go(int[] rest, int[] left, Master fractions, int departures, Cost spent) {
    List<Master.Fraction> by = fractions.fractions();
    List<Packing.Load> seeds = fractions.nearest(SEEDS);
    int depth = path.size();
    int[] restThen = rest.clone();
    int[] leftThen = left.clone();
    Cost then = spent;
    for (Master.Fraction f : by) {
      for (int k = 0; k < (int) (f.amount() + 1 - WHOLE); k++) {
        if (take(f.load(), restThen, leftThen)) {
          then = then.plus(problem.bins().get(f.load().bin()).cost());
        }
      }
    }
    if (path.size() > depth) {
      next(restThen, leftThen, seeds, departures, then);
    } else {
      for (int k = 0; k < by.size() && k <= departures && !done(); k++) {
        int[] r = rest.clone();
        int[] l = left.clone();
        if (take(by.get(k).load(), r, l)) {
          Cost of = spent.plus(problem.bins().get(by.get(k).load().bin()).cost());
          next(r, l, seeds, departures - k, k == 0 ? full(by, r, l, of) : of);
          path.subList(depth, path.size()).clear();
        }
      }
    }
    while (path.size() > depth) {
      path.remove(path.size() - 1);
    }
  }

  /** Of a large problem the other nearly whole ones at once, where all their parts are left. */
  private Cost full(List<Master.Fraction> by, int[] rest, int[] left, Cost spent) {
    Cost then = spent;
    for (int k = 1; k < by.size() && by.get(k).amount() > NEARLY && problem.large(); k++) {
      Packing.Load load = by.get(k).load();
      boolean whole = true;
      for (int t = 0; t < rest.length; t++) {
        whole &= load.counts()[t] <= rest[t];
      }
      if (whole && take(load, rest, left)) {
        then = then.plus(problem.bins().get(load.bin()).cost());
      }
    }
    return then;
  }

  private void next(int[] rest, int[] left, List<Packing.Load> seeds, int departures, Cost spent) {
    List<Bin> bins = new ArrayList<>();
    for (int b = 0; b < left.length; b++) {
      bins.add(problem.bins().get(b).withCount(left[b]));
    }
    CuttingProblem open = new CuttingProblem(rest, problem.nesting(), bins);
    if (open.parts() == 0) {
      keep();
      return;
    }
    Aim now = aim.rest(spent, best.cost());
    if (aim.of(best.cost()) <= last || now.under() <= 0 || now.capped() && now.cap() < 0) {
      return;
    }
    if (meter.out() && !problem.large()) {
      return;
    }
    if (meter.out()) {
      finish(open);
      return;
    }
    Totals totals = new Totals(open, now, new int[left.length], left);
    Master fractions =
        new Master(open, sequencer, now, totals, List.of(), seeds, now.under(), meter);
    if (fractions.solveRoughly(totals.last())) {
      go(rest, left, fractions, departures, spent);
    } else if (problem.large()) {
      finish(open);
    }
  }

  /** What is left as a careful hand would do it. */
  private void finish(CuttingProblem open) {
    Packing hand = new FirstFit(open, sequencer).solve();
    if (Arrays.stream(hand.missing()).sum() == 0) {
      int depth = path.size();
      path.addAll(hand.loads());
      keep();
      path.subList(depth, path.size()).clear();
    }
  }

  private boolean take(Packing.Load load, int[] rest, int[] left) {
    int[] counts = load.counts().clone();
    int n = 0;
    for (int t = 0; t < counts.length; t++) {
      counts[t] = Math.min(counts[t], rest[t]);
      n += counts[t];
    }
    if (n == 0 || left[load.bin()] == 0) {
      return false;
    }
    for (int t = 0; t < counts.length; t++) {
      rest[t] -= counts[t];
    }
    left[load.bin()]--;
    path.add(new Packing.Load(load.bin(), counts));
    return true;
  }

  private void keep() {
    Packing whole = Packing.of(problem, path, new int[problem.demand().length]);
    if (whole.cost().compareTo(best.cost()) < 0) {
      best = whole;
    }
  }
}
