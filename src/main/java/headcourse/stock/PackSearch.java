package headcourse.stock;

import headcourse.stock.CuttingProblem.Bin;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Exact search over cutting plans: fills one blank after another, always around the longest part
 * left, with every way to fill it that leaves no room for more.
 *
 * <p>Adding a part to a blank never makes the rest dearer, so only full blanks need be tried; and
 * the same rest with the same blanks left is looked at again only when reached cheaper.
 */
final class PackSearch {
  private static final int MEMORY = 150_000;

  private final CuttingProblem problem;
  private final Sequencer sequencer;
  private final List<RestBound> bounds;
  private final long limit;
  private final long workBefore;
  private final int[] order;
  private final Map<State, Cost> seen = new HashMap<>();
  private final List<Packing.Load> path = new ArrayList<>();
  private final int[] left;
  private final int[] rest;
  private final Cost bound;
  private Packing best;
  private long steps;

  /**
   * @param bounds what a rest must cost
   * @param best the best known
   * @param bound no packing costs less; the search ends when it reaches it
   * @param limit how many steps it may take
   */
  PackSearch(
      CuttingProblem problem,
      Sequencer sequencer,
      List<RestBound> bounds,
      Packing best,
      Cost bound,
      long limit) {
    this.problem = problem;
    this.sequencer = sequencer;
    this.bounds = bounds;
    this.limit = limit;
    this.workBefore = sequencer.work();
    this.best = best;
    this.bound = bound;
    this.order = FirstFit.longestFirst(problem);
    this.left = problem.counts();
    this.rest = problem.demand().clone();
  }

  private record State(int[] numbers) {
    @Override
    public boolean equals(Object o) {
      return o instanceof State s && Arrays.equals(numbers, s.numbers);
    }

    @Override
    public int hashCode() {
      return Arrays.hashCode(numbers);
    }
  }

  /** Searches; true where the best is proved. */
  boolean run() {
    search(Cost.NONE, new int[rest.length]);
    return !tired() && !sequencer.undecided();
  }

  Packing best() {
    return best;
  }

  long steps() {
    return steps + (sequencer.work() - workBefore) / 4;
  }

  /** Steps with the orders looked at on blanks, which take about as long for every few. */
  private boolean tired() {
    return steps + (sequencer.work() - workBefore) / 4 > limit;
  }

  private boolean done() {
    return tired() || best.cost().compareTo(bound) <= 0;
  }

  private void search(Cost cost, int[] missing) {
    steps++;
    if (done()) {
      return;
    }
    int longest = -1;
    for (int t : order) {
      if (rest[t] > 0) {
        longest = t;
        break;
      }
    }
    if (longest < 0) {
      if (cost.compareTo(best.cost()) < 0) {
        best = Packing.of(problem, copy(path), missing);
      }
      return;
    }
    if (hopeless(cost) || again(cost)) {
      return;
    }
    for (int b = 0; b < left.length; b++) {
      Bin bin = problem.bins().get(b);
      if (left[b] > 0 && problem.holds(bin, longest)) {
        int[] counts = new int[rest.length];
        counts[longest] = 1;
        rest[longest]--;
        left[b]--;
        fill(b, counts, 0, cost, missing);
        left[b]++;
        rest[longest]++;
      }
    }
    Cost without = cost.plus(new Cost(1, 0, 0));
    if (without.compareTo(best.cost()) < 0) {
      rest[longest]--;
      missing[longest]++;
      search(without, missing);
      missing[longest]--;
      rest[longest]++;
    }
  }

  private boolean hopeless(Cost cost) {
    Cost least = Cost.NONE;
    for (RestBound b : bounds) {
      least = least.raised(b.of(rest, left, cost));
      if (least.missing() > 0) {
        least = new Cost(least.missing(), 0, 0);
      }
      if (cost.plus(least).compareTo(best.cost()) >= 0) {
        return true;
      }
    }
    return false;
  }

  /** Adds parts from the {@code i}th type on, most first. */
  private void fill(int b, int[] counts, int i, Cost cost, int[] missing) {
    if (done()) {
      return;
    }
    Bin bin = problem.bins().get(b);
    if (i == order.length) {
      if (full(bin, counts)) {
        path.add(new Packing.Load(b, counts));
        search(cost.plus(bin.cost()), missing);
        path.remove(path.size() - 1);
      } else {
        steps++;
      }
      return;
    }
    int t = order[i];
    int added = 0;
    if (bin.takes()[t]) {
      while (rest[t] > 0) {
        counts[t]++;
        if (!sequencer.fits(counts, bin.usable())) {
          counts[t]--;
          break;
        }
        rest[t]--;
        added++;
      }
    }
    while (true) {
      fill(b, counts, i + 1, cost, missing);
      if (added == 0) {
        return;
      }
      counts[t]--;
      rest[t]++;
      added--;
    }
  }

  private boolean full(Bin bin, int[] counts) {
    for (int t = 0; t < counts.length; t++) {
      if (rest[t] > 0 && bin.takes()[t]) {
        counts[t]++;
        boolean more = sequencer.fits(counts, bin.usable());
        counts[t]--;
        if (more) {
          return false;
        }
      }
    }
    return true;
  }

  private boolean again(Cost cost) {
    int[] numbers = Arrays.copyOf(rest, rest.length + left.length);
    for (int b = 0; b < left.length; b++) {
      // More blanks than parts are as good as any number.
      numbers[rest.length + b] = Math.min(left[b], problem.parts());
    }
    State state = new State(numbers);
    Cost before = seen.get(state);
    if (before != null && before.compareTo(cost) <= 0) {
      return true;
    }
    if (before != null || seen.size() < MEMORY) {
      seen.put(state, cost);
    }
    return false;
  }

  private static List<Packing.Load> copy(List<Packing.Load> loads) {
    return loads.stream().map(l -> new Packing.Load(l.bin(), l.counts().clone())).toList();
  }
}
