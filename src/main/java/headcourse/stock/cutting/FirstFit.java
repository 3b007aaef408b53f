package headcourse.stock.cutting;

import headcourse.stock.cutting.CuttingProblem.Bin;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** What a careful hand would do: longest part first, each where it fits tightest. */
final class FirstFit {
  private final CuttingProblem problem;
  private final Sequencer sequencer;

  FirstFit(CuttingProblem problem, Sequencer sequencer) {
    this.problem = problem;
    this.sequencer = sequencer;
  }

  /** The better of a few hands. */
  Packing solve() {
    Packing best = null;
    for (int way = 0; way < 6; way++) {
      Packing p = hand(way % 2 == 0, way / 2);
      if (best == null || p.cost().compareTo(best.cost()) < 0) {
        best = p;
      }
    }
    return best;
  }

  private Packing hand(boolean firstRatherThanTightest, int opening) {
    Nesting nesting = problem.nesting();
    int[] left = problem.counts();
    List<Packing.Load> loads = new ArrayList<>();
    int[] missing = new int[problem.demand().length];
    for (int t : longestFirst(problem)) {
      for (int k = 0; k < problem.demand()[t]; k++) {
        Packing.Load at = null;
        long tightest = Long.MAX_VALUE;
        for (Packing.Load l : loads) {
          Bin bin = problem.bins().get(l.bin());
          if (!bin.takes()[t] || bin.single()) {
            continue;
          }
          l.counts()[t]++;
          long room = bin.usable() - nesting.leastLength(l.counts());
          if (room >= 0 && room < tightest && sequencer.fits(l.counts(), bin.usable())) {
            at = l;
            tightest = firstRatherThanTightest ? -1 : room;
          }
          l.counts()[t]--;
        }
        if (at == null) {
          int b = open(t, left, opening);
          if (b < 0) {
            missing[t] += problem.demand()[t] - k;
            break;
          }
          left[b]--;
          at = new Packing.Load(b, new int[missing.length]);
          loads.add(at);
        }
        at.counts()[t]++;
      }
    }
    return Packing.of(problem, loads, missing);
  }

  /** Which kind of blank to begin: the cheapest for its length, the longest, or the shortest. */
  private int open(int type, int[] left, int opening) {
    int best = -1;
    for (int b = 0; b < left.length; b++) {
      Bin bin = problem.bins().get(b);
      if (left[b] > 0 && problem.holds(bin, type)) {
        if (best < 0 || better(bin, problem.bins().get(best), opening)) {
          best = b;
        }
      }
    }
    return best;
  }

  private static boolean better(Bin a, Bin b, int opening) {
    if (a.single() || b.single()) {
      // What is no blank comes last.
      return b.single() && !a.single();
    }
    return switch (opening) {
      case 0 -> (double) a.cost().lead() / a.usable() < (double) b.cost().lead() / b.usable();
      case 1 -> a.usable() > b.usable();
      default -> a.usable() < b.usable();
    };
  }

  /** Types in the order of their length, longest first. */
  static int[] longestFirst(CuttingProblem problem) {
    Nesting n = problem.nesting();
    long[] size = new long[n.types];
    for (int t = 0; t < n.types; t++) {
      for (long w : n.weight[t]) {
        size[t] = Math.max(size[t], w);
      }
    }
    Integer[] order = new Integer[n.types];
    Arrays.setAll(order, i -> i);
    Arrays.sort(order, (a, b) -> size[a] != size[b] ? Long.compare(size[b], size[a]) : a - b);
    return Arrays.stream(order).mapToInt(i -> i).toArray();
  }
}
