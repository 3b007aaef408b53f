package headcourse.stock.cutting;

import java.util.Arrays;

/** Quick sequences of parts on one blank: what leans alike side by side, then moved one by one. */
final class SequenceHeuristic {
  private final Nesting nesting;
  private final StepBudget budget;

  /** All nodes in the order of how far they lean. */
  private final int[] leaning;

  /** By type: the first and the last place in that order. */
  private final int[] first;

  private final int[] last;

  /** The same type the other way round, or −1. */
  private final int[] twin;

  SequenceHeuristic(Nesting nesting, StepBudget budget) {
    this.nesting = nesting;
    this.budget = budget;
    int n = nesting.typeOf.length;
    Integer[] by = new Integer[n];
    Arrays.setAll(by, i -> i);
    // Twice the lean is what two of a kind save on their extents.
    long[] lean = new long[n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        lean[i] += nesting.distance[i][j] - nesting.distance[j][i] - nesting.extent[i];
      }
    }
    Arrays.sort(by, (a, b) -> lean[a] != lean[b] ? Long.compare(lean[a], lean[b]) : a - b);
    leaning = Arrays.stream(by).mapToInt(i -> i).toArray();
    first = new int[nesting.types];
    last = new int[nesting.types];
    for (int i = n - 1; i >= 0; i--) {
      first[nesting.typeOf[leaning[i]]] = i;
      last[nesting.typeOf[leaning[n - 1 - i]]] = n - 1 - i;
    }
    twin = new int[n];
    Arrays.fill(twin, -1);
    for (int i = 1; i < n; i++) {
      if (nesting.typeOf[i] == nesting.typeOf[i - 1]) {
        twin[i] = i - 1;
        twin[i - 1] = i;
      }
    }
    budget.spend((long) n * n);
  }

  /** In the order of their lean, or against it, whichever is shorter. */
  int[] byLean(int[] counts) {
    int[] best = byLean(counts, false);
    int[] other = byLean(counts, true);
    return length(other) < length(best) ? other : best;
  }

  int[] byLean(int[] counts, boolean backwards) {
    int parts = 0;
    int nodes = 0;
    for (int t = 0; t < counts.length; t++) {
      parts += counts[t];
      nodes += counts[t] > 0 ? 1 : 0;
    }
    // By type the first of its ways to lie in the order of leans.
    int[] at = new int[nodes];
    nodes = 0;
    for (int t = 0; t < counts.length; t++) {
      if (counts[t] > 0) {
        at[nodes++] = backwards ? 0 - last[t] : first[t];
      }
    }
    Arrays.sort(at);
    int[] order = new int[parts];
    int n = 0;
    for (int place : at) {
      int node = leaning[Math.abs(place)];
      int to = n + counts[nesting.typeOf[node]];
      Arrays.fill(order, n, to, node);
      n = to;
    }
    budget.spend(counts.length + 10L * at.length);
    return order;
  }

  /** A local search from there: parts turned or moved one by one to where they save most. */
  int[] improved(int[] from) {
    int[] best = from;
    long length = length(best);
    boolean better = true;
    while (better && !budget.out()) {
      better = false;
      for (int i = 0; i < best.length; i++) {
        for (int j = -1; j < best.length; j++) {
          int[] other = j < 0 ? flipped(best, i) : moved(best, i, j);
          long l = other == best ? length : length(other);
          if (l < length) {
            best = other;
            length = l;
            better = true;
          }
        }
      }
    }
    return best;
  }

  private int[] flipped(int[] order, int i) {
    if (twin[order[i]] < 0) {
      return order;
    }
    int[] flipped = order.clone();
    flipped[i] = twin[order[i]];
    return flipped;
  }

  private static int[] moved(int[] order, int from, int to) {
    if (from == to) {
      return order;
    }
    int[] moved = order.clone();
    if (from < to) {
      System.arraycopy(order, from + 1, moved, from, to - from);
    } else {
      System.arraycopy(order, to, moved, to + 1, from - to);
    }
    moved[to] = order[from];
    return moved;
  }

  /**
   * The shortest of a sequence and of another with one part put in anywhere, either way round.
   *
   * @param rest the other, one shorter
   */
  int[] inserted(int[] rest, int type, int[] than) {
    int[] best = than;
    long length = length(best);
    int[] with = new int[than.length];
    for (int node = nesting.firstNode[type]; node < nesting.firstNode[type + 1]; node++) {
      for (int j = 0; j < with.length; j++) {
        System.arraycopy(rest, 0, with, 0, j);
        System.arraycopy(rest, j, with, j + 1, with.length - 1 - j);
        with[j] = node;
        long l = length(with);
        if (l < length) {
          best = with.clone();
          length = l;
        }
      }
    }
    return best;
  }

  /** Length that a sequence takes. */
  long length(int[] order) {
    budget.spend((long) order.length * order.length / 2 + 4);
    return nesting.length(order);
  }
}
