package headcourse.stock;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Finds in which order parts lie on one blank so that they take the least length. */
final class Sequencer {
  private static final int EXACT_NODES = 20_000;
  private static final int CACHE = 200_000;

  private final Nesting nesting;
  private final int[] leaning;
  private final Map<Key, Long> known = new HashMap<>();

  /** Whether some order was left undecided, so that nothing built on it is proved. */
  private boolean undecided;

  Sequencer(Nesting nesting) {
    this.nesting = nesting;
    Integer[] by = new Integer[nesting.typeOf.length];
    Arrays.setAll(by, i -> i);
    // What leans alike lies together: twice the lean is what two of a kind save on their extents.
    long[] lean = new long[by.length];
    for (int i = 0; i < by.length; i++) {
      for (int j = 0; j < by.length; j++) {
        lean[i] += nesting.distance[i][j] - nesting.distance[j][i] - nesting.extent[i];
      }
    }
    Arrays.sort(by, (a, b) -> lean[a] != lean[b] ? Long.compare(lean[a], lean[b]) : a - b);
    leaning = Arrays.stream(by).mapToInt(i -> i).toArray();
  }

  private record Key(int[] counts) {
    @Override
    public boolean equals(Object o) {
      return o instanceof Key k && Arrays.equals(counts, k.counts);
    }

    @Override
    public int hashCode() {
      return Arrays.hashCode(counts);
    }
  }

  boolean undecided() {
    return undecided;
  }

  /** Whether so many of each type go on one blank. */
  boolean fits(int[] counts, long usable) {
    if (nesting.leastLength(counts) > usable) {
      return false;
    }
    if (nesting.square) {
      return true;
    }
    Key key = new Key(counts);
    Long length = known.get(key);
    if (length == null) {
      length = length(best(counts));
      if (known.size() < CACHE) {
        known.put(new Key(counts.clone()), length);
      }
    }
    return length <= usable;
  }

  /** The nodes from left to right in the shortest order. */
  List<Integer> best(int[] counts) {
    if (nesting.square) {
      return run(counts, false);
    }
    List<Integer> best = run(counts, false);
    List<Integer> other = run(counts, true);
    if (length(other) < length(best)) {
      best = other;
    }
    Walk walk = new Walk(counts.clone(), length(best), best);
    walk.go();
    undecided |= walk.steps > EXACT_NODES;
    return walk.best;
  }

  private List<Integer> run(int[] counts, boolean backwards) {
    List<Integer> order = new ArrayList<>();
    int[] left = counts.clone();
    for (int i = 0; i < leaning.length; i++) {
      int node = leaning[backwards ? leaning.length - 1 - i : i];
      for (; left[nesting.typeOf[node]] > 0; left[nesting.typeOf[node]]--) {
        order.add(node);
      }
    }
    return order;
  }

  /** Where each node begins, packed to the left. */
  long[] starts(List<Integer> order) {
    long[] at = new long[order.size()];
    for (int j = 1; j < at.length; j++) {
      for (int i = 0; i < j; i++) {
        at[j] = Math.max(at[j], at[i] + nesting.distance[order.get(i)][order.get(j)]);
      }
    }
    return at;
  }

  /** Length that an order takes. */
  long length(List<Integer> order) {
    long[] at = starts(order);
    long end = 0;
    for (int i = 0; i < at.length; i++) {
      end = Math.max(end, at[i] + nesting.extent[order.get(i)]);
    }
    return end;
  }

  /** Depth-first over the orders. */
  private final class Walk {
    private final int[] left;
    private final List<Integer> path = new ArrayList<>();
    private final List<Long> at = new ArrayList<>();
    private long bound;
    private List<Integer> best;
    private int steps;

    Walk(int[] left, long bound, List<Integer> best) {
      this.left = left;
      this.bound = bound;
      this.best = best;
    }

    void go() {
      go(0);
    }

    private void go(long end) {
      if (++steps > EXACT_NODES) {
        return;
      }
      boolean any = false;
      for (int node = 0; node < nesting.typeOf.length; node++) {
        int t = nesting.typeOf[node];
        if (left[t] == 0) {
          continue;
        }
        any = true;
        long start = 0;
        for (int i = 0; i < path.size(); i++) {
          start = Math.max(start, at.get(i) + nesting.distance[path.get(i)][node]);
        }
        left[t]--;
        long reach = Math.max(end, start + nesting.extent[node]);
        if (start + nesting.extent[node] + rest(node) < bound && reach < bound) {
          path.add(node);
          at.add(start);
          go(reach);
          path.remove(path.size() - 1);
          at.remove(at.size() - 1);
        }
        left[t]++;
      }
      if (!any && end < bound) {
        bound = end;
        best = List.copyOf(path);
      }
    }

    /** What the parts still to come add at least to the right of a node, at the best height. */
    private long rest(int node) {
      long most = Long.MIN_VALUE;
      int t0 = nesting.typeOf[node];
      for (int h = 0; h < nesting.heights(); h++) {
        long sum = 0;
        for (int t = 0; t < nesting.types; t++) {
          sum += left[t] * nesting.weight[t][h];
        }
        // At this height the node reaches so far from its start, and the rest lies beyond.
        long reach = nesting.lead[t0][h] + nesting.weight[t0][h] - nesting.kerf;
        most = Math.max(most, sum + reach - nesting.extent[node]);
      }
      return Math.max(most - Nesting.SLACK, -nesting.extent[node]);
    }
  }
}
