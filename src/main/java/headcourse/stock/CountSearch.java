package headcourse.stock;

import headcourse.stock.CuttingProblem.Bin;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Exact search by how many blanks of each kind are used: the choices that cost less than the best
 * known, cheapest first; the first that holds all parts is the best of all.
 */
final class CountSearch {
  private static final int CHOICES = 3_000;
  private static final int LOOKED_AT = 300_000;

  private final CuttingProblem problem;
  private final Sequencer sequencer;
  private final Cost bound;
  private final long limit;
  private final List<Choice> choices = new ArrayList<>();
  private final long[] need;
  private final List<Packing.Load> pool = new ArrayList<>();
  private Packing best;
  private Cost reached = Cost.NONE;
  private int looked;
  private long steps;

  CountSearch(CuttingProblem problem, Sequencer sequencer, Cost bound, Packing best, long limit) {
    this.problem = problem;
    this.sequencer = sequencer;
    this.bound = bound;
    this.best = best;
    this.limit = limit;
    Nesting n = problem.nesting();
    need = new long[n.heights()];
    for (int h = 0; h < need.length; h++) {
      for (int t = 0; t < n.types; t++) {
        need[h] += problem.demand()[t] * n.weight[t][h];
      }
    }
  }

  private record Choice(int[] counts, Cost cost) {}

  Packing best() {
    return best;
  }

  long steps() {
    return steps;
  }

  /** Searches; true where the best is proved. */
  boolean run() {
    list(0, new int[problem.bins().size()], Cost.NONE, 0);
    if (looked > LOOKED_AT || choices.size() > CHOICES) {
      return false;
    }
    choices.sort(Comparator.comparing(Choice::cost));
    for (Choice c : choices) {
      List<Bin> bins = new ArrayList<>();
      for (int b = 0; b < c.counts.length; b++) {
        bins.add(problem.bins().get(b).withCount(c.counts[b]));
      }
      CuttingProblem fixed = new CuttingProblem(problem.demand(), problem.nesting(), bins);
      if (problem.nesting().lean != null) {
        PatternSearch search = leaning(fixed, c);
        boolean sure = search.run() && !sequencer.undecided();
        steps += search.steps();
        if (search.best().cost().lead() <= blanks(c)) {
          best = Packing.of(problem, search.best().loads(), search.best().missing());
          return true;
        }
        if (!sure || steps > limit) {
          reached = c.cost;
          return false;
        }
        continue;
      }
      List<RestBound> bounds = List.of(new LeastCost(fixed));
      PackSearch search = new PackSearch(fixed, sequencer, bounds, best, c.cost, limit - steps);
      boolean sure = search.run();
      steps += search.steps();
      if (search.best() != best) {
        best = search.best();
        return true;
      }
      if (!sure) {
        return false;
      }
    }
    return true;
  }

  /** Whether so many blanks hold all parts, as a search for a plan with no more than those. */
  private PatternSearch leaning(CuttingProblem fixed, Choice c) {
    List<Bin> counted = new ArrayList<>();
    for (Bin b : fixed.bins()) {
      counted.add(new Bin(b.index(), b.usable(), b.count(), new Cost(0, 1, 1), b.takes()));
    }
    CuttingProblem even = new CuttingProblem(fixed.demand(), fixed.nesting(), counted);
    Packing none =
        new Packing(List.of(), new int[problem.demand().length], new Cost(0, blanks(c) + 1, 0));
    return new PatternSearch(even, sequencer, none, false, limit - steps, pool);
  }

  private static int blanks(Choice c) {
    return Arrays.stream(c.counts).sum();
  }

  /** No packing costs less, as far as this search has shown. */
  Cost reached() {
    return reached;
  }

  private void list(int b, int[] counts, Cost cost, long capacity) {
    if (++looked > LOOKED_AT || choices.size() > CHOICES) {
      return;
    }
    if (cost.compareTo(best.cost()) >= 0) {
      return;
    }
    if (b == counts.length) {
      long most = Arrays.stream(need).max().orElse(0);
      if (cost.compareTo(bound) >= 0 && capacity >= most) {
        choices.add(new Choice(counts.clone(), cost));
      }
      return;
    }
    Bin bin = problem.bins().get(b);
    Cost sum = cost;
    long room = capacity;
    int count = Math.min(bin.count(), problem.parts());
    for (int n = 0; n <= count && sum.compareTo(best.cost()) < 0; n++) {
      counts[b] = n;
      list(b + 1, counts, sum, room);
      sum = sum.plus(bin.cost());
      room += bin.usable() + problem.nesting().kerf + Nesting.SLACK;
    }
    counts[b] = 0;
  }
}
