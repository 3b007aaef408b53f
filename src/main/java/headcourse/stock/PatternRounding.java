package headcourse.stock;

import headcourse.stock.CuttingProblem.Bin;
import java.util.ArrayList;
import java.util.List;

/**
 * Packings from fractions of filled blanks: whole ones are taken, the rest is solved again, and
 * where none is whole the fullest fraction is taken as one. Each rest is also finished by hand, and
 * the best of all is kept.
 */
final class PatternRounding {
  private final CuttingProblem problem;
  private final Sequencer sequencer;
  private final int[] rest;
  private final int[] left;
  private final List<Packing.Load> loads = new ArrayList<>();
  private Packing best;

  PatternRounding(CuttingProblem problem, Sequencer sequencer, Packing best) {
    this.problem = problem;
    this.sequencer = sequencer;
    this.best = best;
    this.rest = problem.demand().clone();
    this.left = problem.counts();
  }

  /** The best packing found, from the fractions of the whole problem on. */
  Packing solve(PatternBound fractions, Cost goal, long searchSteps) {
    PatternBound now = fractions;
    boolean searched = false;
    while (best.cost().compareTo(goal) > 0 && !now.patterns().isEmpty()) {
      if (!take(now)) {
        return best;
      }
      CuttingProblem open = open();
      if (open.parts() == 0) {
        keep(Packing.of(open, List.of(), new int[rest.length]));
        return best;
      }
      Packing tail = new FirstFit(open, sequencer).solve();
      keep(tail);
      now = PatternBound.ofLead(open, sequencer);
      if (!searched && open.parts() <= 40 && best.cost().compareTo(goal) > 0) {
        searched = true;
        List<RestBound> bounds = List.of(new LeastCost(open), now);
        PackSearch search = new PackSearch(open, sequencer, bounds, tail, Cost.NONE, searchSteps);
        search.run();
        keep(search.best());
      }
    }
    return best;
  }

  private boolean take(PatternBound now) {
    boolean any = false;
    int fullest = 0;
    for (int i = 0; i < now.patterns().size(); i++) {
      double x = now.amounts().get(i);
      fullest = x > now.amounts().get(fullest) ? i : fullest;
      for (int k = 0; k < Math.floor(x + 1e-6); k++) {
        any |= take(now.patterns().get(i));
      }
    }
    return any || take(now.patterns().get(fullest));
  }

  private boolean take(Packing.Load pattern) {
    int[] counts = pattern.counts().clone();
    int n = 0;
    for (int t = 0; t < counts.length; t++) {
      counts[t] = Math.min(counts[t], rest[t]);
      n += counts[t];
    }
    if (n == 0 || left[pattern.bin()] == 0) {
      return false;
    }
    for (int t = 0; t < counts.length; t++) {
      rest[t] -= counts[t];
    }
    left[pattern.bin()]--;
    loads.add(new Packing.Load(pattern.bin(), counts));
    return true;
  }

  private CuttingProblem open() {
    List<Bin> bins = new ArrayList<>();
    for (int b = 0; b < left.length; b++) {
      bins.add(problem.bins().get(b).withCount(left[b]));
    }
    return new CuttingProblem(rest.clone(), problem.nesting(), bins);
  }

  private void keep(Packing tail) {
    List<Packing.Load> all = new ArrayList<>(loads);
    all.addAll(tail.loads());
    Packing whole = Packing.of(problem, all, tail.missing());
    if (whole.cost().compareTo(best.cost()) < 0) {
      best = whole;
    }
  }
}
