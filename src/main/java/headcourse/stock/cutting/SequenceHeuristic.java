package headcourse.stock.cutting;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/** Quick sequences of parts on one blank: what leans alike side by side, then moved one by one. */
final class SequenceHeuristic {
  private final Nesting nesting;
  private final StepBudget budget;

  /** All nodes in the order of how far they lean. */
  private final int[] leaning;

  SequenceHeuristic(Nesting nesting, StepBudget budget) {
    this.nesting = nesting;
    this.budget = budget;
    int n = nesting.typeOf.length;
    // Twice the lean is what two of a kind save on their extents.
    long[] lean = new long[n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        lean[i] += nesting.distance[i][j] - nesting.distance[j][i] - nesting.extent[i];
      }
    }
    leaning =
        IntStream.range(0, n)
            .boxed()
            .sorted(Comparator.comparingLong(i -> lean[i]))
            .mapToInt(i -> i)
            .toArray();
    budget.spend((long) n * n);
  }

  /** In the order of their lean, or against it, whichever is shorter. */
  int[] byLean(int[] counts) {
    int[] best = byLean(counts, false);
    int[] other = byLean(counts, true);
    return length(other) < length(best) ? other : best;
  }

  int[] byLean(int[] counts, boolean backwards) {
    int[] rest = counts.clone();
    int[] order = new int[Arrays.stream(counts).sum()];
    int n = 0;
    for (int i = 0; i < leaning.length && n < order.length; i++) {
      int node = leaning[backwards ? leaning.length - 1 - i : i];
      int type = nesting.typeOf[node];
      Arrays.fill(order, n, n + rest[type], node);
      n += rest[type];
      rest[type] = 0;
    }
    budget.spend(2L * leaning.length);
    return order;
  }

  /**
   * A local search from there: each part is taken out and put in anew where all take least.
   *
   * @param enough it ends with the first no longer than this
   */
  int[] improved(int[] from, long enough) {
    int[] best = from;
    long length = length(best);
    long before = Long.MAX_VALUE;
    while (length < before && length > enough && !budget.out()) {
      before = length;
      for (int i = 0; i < best.length && length > enough; i++) {
        int[] rest = new int[best.length - 1];
        System.arraycopy(best, 0, rest, 0, i);
        System.arraycopy(best, i + 1, rest, i, rest.length - i);
        best = inserted(rest, nesting.typeOf[best[i]], best, length);
        length = length(best);
      }
    }
    return best;
  }

  /**
   * The shortest of a sequence and of another with one part put in anywhere, either way round. That
   * takes the longest path through the part put in, or what the others take.
   *
   * @param rest the other, one shorter
   * @param than the sequence
   * @param length what it takes
   */
  int[] inserted(int[] rest, int type, int[] than, long length) {
    int n = rest.length;
    budget.spend((long) n * n + 8L * n + 4);
    long[] start = nesting.starts(rest);
    long[] tail = new long[n];
    long shortest = length;
    long others = 0;
    for (int i = n - 1; i >= 0; i--) {
      tail[i] = nesting.extent[rest[i]];
      for (int j = i + 1; j < n; j++) {
        tail[i] = Math.max(tail[i], nesting.distance[rest[i]][rest[j]] + tail[j]);
      }
      others = Math.max(others, start[i] + tail[i]);
    }
    int at = -1;
    int with = -1;
    long[] after = new long[n + 1];
    for (int node = nesting.firstNode[type]; node < nesting.firstNode[type + 1]; node++) {
      after[n] = nesting.extent[node];
      for (int j = n - 1; j >= 0; j--) {
        after[j] = Math.max(after[j + 1], nesting.distance[node][rest[j]] + tail[j]);
      }
      long from = 0;
      for (int j = 0; j <= n; j++) {
        from = j == 0 ? 0 : Math.max(from, start[j - 1] + nesting.distance[rest[j - 1]][node]);
        long all = Math.max(others, from + after[j]);
        if (all < shortest) {
          shortest = all;
          at = j;
          with = node;
        }
      }
    }
    if (at < 0) {
      return than;
    }
    int[] order = Arrays.copyOf(rest, n + 1);
    System.arraycopy(rest, at, order, at + 1, n - at);
    order[at] = with;
    return order;
  }

  /** Length that a sequence takes. */
  long length(int[] order) {
    budget.spend((long) order.length * order.length / 2 + 4);
    return nesting.length(order);
  }
}
