package headcourse.stock.cutting;

import java.util.HashMap;
import java.util.Map;

/** The least cost of all ways to part a few stones among blanks, each looked at. */
final class AllWays {
  private final CuttingProblem problem;
  private final int[] typeOf;
  private final Map<Integer, Long> length = new HashMap<>();
  private Cost best;

  AllWays(CuttingProblem problem) {
    this.problem = problem;
    this.typeOf = new int[problem.parts()];
    int n = 0;
    for (int t = 0; t < problem.demand().length; t++) {
      for (int k = 0; k < problem.demand()[t]; k++) {
        typeOf[n++] = t;
      }
    }
  }

  Cost best() {
    best = new Cost(typeOf.length + 1, 0, 0);
    part((1 << typeOf.length) - 1, problem.counts(), Cost.NONE);
    return best;
  }

  private void part(int rest, int[] left, Cost cost) {
    if (cost.compareTo(best) >= 0) {
      return;
    }
    if (rest == 0) {
      best = cost;
      return;
    }
    int first = Integer.lowestOneBit(rest);
    part(rest - first, left, cost.plus(new Cost(1, 0, 0)));
    int others = rest - first;
    for (int with = others; ; with = (with - 1) & others) {
      for (int b = 0; b < left.length; b++) {
        if (left[b] > 0 && fits(with | first, problem.bins().get(b))) {
          left[b]--;
          part(others & ~with, left, cost.plus(problem.bins().get(b).cost()));
          left[b]++;
        }
      }
      if (with == 0) {
        return;
      }
    }
  }

  private boolean fits(int parts, CuttingProblem.Bin bin) {
    int[] counts = new int[problem.demand().length];
    for (int i = 0; i < typeOf.length; i++) {
      if ((parts >> i & 1) != 0) {
        counts[typeOf[i]]++;
        if (!bin.takes()[typeOf[i]]) {
          return false;
        }
      }
    }
    return length.computeIfAbsent(parts, k -> shortest(problem.nesting(), counts)) <= bin.usable();
  }

  /** The shortest of all orders of parts, each whichever way it may lie. */
  static long shortest(Nesting nesting, int[] counts) {
    return shortest(nesting, counts.clone(), new int[0]);
  }

  /** The shortest of all orders of parts after some that are laid. */
  private static long shortest(Nesting n, int[] counts, int[] laid) {
    long least = Long.MAX_VALUE;
    boolean any = false;
    for (int node = 0; node < n.typeOf.length; node++) {
      if (counts[n.typeOf[node]] > 0) {
        any = true;
        counts[n.typeOf[node]]--;
        int[] more = java.util.Arrays.copyOf(laid, laid.length + 1);
        more[laid.length] = node;
        least = Math.min(least, shortest(n, counts, more));
        counts[n.typeOf[node]]++;
      }
    }
    return any ? least : length(n, laid);
  }

  private static long length(Nesting n, int[] order) {
    long[] at = new long[order.length];
    long end = 0;
    for (int j = 0; j < order.length; j++) {
      for (int i = 0; i < j; i++) {
        at[j] = Math.max(at[j], at[i] + n.distance[order[i]][order[j]]);
      }
      end = Math.max(end, at[j] + n.extent[order[j]]);
    }
    return end;
  }
}
