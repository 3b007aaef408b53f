package headcourse.stock.cutting;

import headcourse.stock.cutting.CuttingProblem.Bin;
import java.util.ArrayList;
import java.util.List;

/**
 * Nearest-neighbour heuristic: on each blank it lays beside the last part whichever lies closest to
 * it, turned or not, so that what leans alike comes together; of all parts to begin with, and of
 * all kinds of blank, it takes the pattern that fills best.
 */
final class NeighbourHeuristic {
  /** It ends with the budget's share; large problems would take too long. */
  private static final double SHARE = 0.5;

  /** Of more nodes than this only some are tried to begin with. */
  private static final int STARTS = 60;

  private final CuttingProblem problem;
  private final Nesting nesting;
  private final Sequencer sequencer;
  private final StepBudget share;
  private final double[] mean;

  NeighbourHeuristic(CuttingProblem problem, Sequencer sequencer) {
    this.problem = problem;
    this.nesting = problem.nesting();
    this.sequencer = sequencer;
    this.share = sequencer.budget().share(SHARE);
    mean = new double[nesting.types];
    for (int t = 0; t < mean.length; t++) {
      mean[t] = nesting.slices.width()[t][nesting.slices.heights() / 2];
    }
  }

  /** The better of filling lengths and of filling what they cost, or the other if better. */
  Packing better(Packing other) {
    Packing best = other;
    for (int way = 0; way < 2 && !share.out(); way++) {
      Packing p = pack(way == 1);
      best = p.cost().compareTo(best.cost()) < 0 ? p : best;
    }
    return best;
  }

  private Packing pack(boolean byCost) {
    int[] rest = problem.demand().clone();
    int[] left = problem.counts();
    List<Packing.Pattern> patterns = new ArrayList<>();
    Packing.Pattern pattern = fullest(rest, left, byCost);
    while (pattern != null && !share.out()) {
      left[pattern.bin()]--;
      for (int t = 0; t < rest.length; t++) {
        rest[t] -= pattern.counts()[t];
      }
      patterns.add(pattern);
      pattern = fullest(rest, left, byCost);
    }
    return Packing.of(problem, patterns, rest);
  }

  /** The best pattern of one blank, or null. */
  private Packing.Pattern fullest(int[] rest, int[] left, boolean byCost) {
    int[] best = null;
    int kind = -1;
    double most = 0;
    int open = 0;
    for (int t : nesting.typeOf) {
      open += rest[t] > 0 ? 1 : 0;
    }
    int every = 1 + open / STARTS;
    int n = 0;
    for (int b = 0; b < left.length; b++) {
      Bin bin = problem.bins().get(b);
      for (int i = 0; left[b] > 0 && !bin.single() && i < nesting.typeOf.length; i++) {
        int t = nesting.typeOf[i];
        if (rest[t] <= 0
            || !bin.takes()[t]
            || nesting.extent[i] > bin.usable()
            || n++ % every != 0) {
          continue;
        }
        int[] order = chain(rest, bin, i);
        double fill = fill(order) / (byCost ? Math.max(1, bin.cost().lead()) : bin.usable());
        if (fill > most) {
          best = order;
          kind = b;
          most = fill;
        }
      }
    }
    if (best == null || sequencer.know(best) > problem.bins().get(kind).usable()) {
      return null;
    }
    int[] counts = new int[rest.length];
    for (int i : best) {
      counts[nesting.typeOf[i]]++;
    }
    return new Packing.Pattern(kind, counts);
  }

  private double fill(int[] order) {
    double sum = 0;
    for (int i : order) {
      sum += mean[nesting.typeOf[i]];
    }
    return sum;
  }

  /** Parts one after the other, each the one that leaves the least beside the last. */
  private int[] chain(int[] rest, Bin bin, int first) {
    int[] counts = new int[rest.length];
    List<Integer> order = new ArrayList<>(List.of(first));
    List<Long> starts = new ArrayList<>(List.of(0L));
    long end = nesting.extent[first];
    counts[nesting.typeOf[first]]++;
    while (true) {
      int next = -1;
      share.spend(4L * nesting.typeOf.length);
      double least = Double.MAX_VALUE;
      long at = 0;
      for (int j = 0; j < nesting.typeOf.length; j++) {
        int t = nesting.typeOf[j];
        if (rest[t] <= counts[t] || !bin.takes()[t]) {
          continue;
        }
        double beside = beside(order.get(order.size() - 1), j);
        if (beside < least) {
          long start = start(order, starts, j);
          if (Math.max(end, start + nesting.extent[j]) <= bin.usable()) {
            next = j;
            least = beside;
            at = start;
          }
        }
      }
      if (next < 0) {
        return order.stream().mapToInt(i -> i).toArray();
      }
      order.add(next);
      starts.add(at);
      end = Math.max(end, at + nesting.extent[next]);
      counts[nesting.typeOf[next]]++;
    }
  }

  private long start(List<Integer> order, List<Long> starts, int part) {
    long start = 0;
    for (int i = 0; i < order.size(); i++) {
      start = Math.max(start, starts.get(i) + nesting.distance[order.get(i)][part]);
    }
    return start;
  }

  /** What lies between the middles of two neighbours beyond half of each. */
  private double beside(int a, int b) {
    double middles = nesting.distance[a][b] + (nesting.extent[b] - nesting.extent[a]) / 2.0;
    return middles - (mean[nesting.typeOf[a]] + mean[nesting.typeOf[b]]) / 2;
  }
}
