package headcourse.stock;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Depth-first over the orders of parts on one blank that are shorter than a bound.
 *
 * <p>What lies on the blank already matters only by where each of the others may begin at the
 * least: where the same parts were laid before so that none began later, nothing is gained.
 */
final class OrderWalk {
  private static final int STEPS = 20_000;
  private static final int STATES = 40_000;
  private static final int KEPT = 6;

  private final Nesting nesting;
  private final int[] left;
  private final int[] nodes;
  private final long enough;
  private final int[] path;

  /** By how many are laid and node: where it may begin; and at last how far those laid reach. */
  private final long[][] from;

  /** By height: what the parts still to come take there. */
  private final long[] open;

  /** By the parts still to come: where each may begin, as found before; null where unused. */
  private final List<List<long[]>> before;

  /** By type: what one of it counts for in the number of the parts still to come. */
  private final int[] stride;

  private int size;
  private int state;
  private long bound;
  private List<Integer> best;
  private int steps;

  /**
   * @param counts how many parts of each type
   * @param bound only shorter orders are of interest
   * @param enough the first no longer than this is good enough
   */
  OrderWalk(Nesting nesting, int[] counts, long bound, long enough) {
    this.nesting = nesting;
    this.left = counts.clone();
    this.bound = bound;
    this.enough = enough;
    this.nodes =
        IntStream.range(0, nesting.typeOf.length)
            .filter(n -> counts[nesting.typeOf[n]] > 0)
            .toArray();
    path = new int[Arrays.stream(counts).sum()];
    from = new long[path.length + 1][nodes.length + 1];
    open = new long[nesting.heights()];
    stride = new int[counts.length];
    long states = 1;
    for (int t = 0; t < counts.length; t++) {
      for (int h = 0; h < open.length; h++) {
        open[h] += counts[t] * nesting.weight[t][h];
      }
      stride[t] = (int) states;
      states = Math.min(STATES, states * (counts[t] + 1));
    }
    before = new ArrayList<>();
    if (states < STATES) {
      state = (int) states - 1;
      for (int i = 0; i < states; i++) {
        before.add(null);
      }
    }
  }

  /** Looks for the shortest. */
  void go() {
    steps++;
    if (tired() || bound <= enough) {
      return;
    }
    long[] here = from[size];
    if (size == path.length) {
      bound = here[nodes.length];
      best = Arrays.stream(path).boxed().toList();
      return;
    }
    for (int k = 0; k < nodes.length; k++) {
      int node = nodes[k];
      int t = nesting.typeOf[node];
      if (left[t] == 0) {
        continue;
      }
      long start = here[k];
      long reach = Math.max(here[nodes.length], start + nesting.extent[node]);
      if (reach >= bound || start + rest(t) >= bound) {
        continue;
      }
      long[] then = from[size + 1];
      for (int j = 0; j < nodes.length; j++) {
        then[j] = Math.max(here[j], start + nesting.distance[node][nodes[j]]);
      }
      then[nodes.length] = reach;
      take(t, 1);
      if (!worse(then)) {
        path[size++] = node;
        go();
        size--;
      }
      take(t, -1);
    }
  }

  /** Whether the steps were used up. */
  boolean tired() {
    return steps > STEPS;
  }

  int steps() {
    return steps;
  }

  /** The shortest order found; null where there is none. */
  List<Integer> best() {
    return best;
  }

  /** Its length. */
  long length() {
    return bound;
  }

  private boolean worse(long[] then) {
    if (before.isEmpty()) {
      return false;
    }
    List<long[]> known = before.get(state);
    if (known == null) {
      known = new ArrayList<>();
      before.set(state, known);
    }
    for (long[] k : known) {
      if (noLater(k, then)) {
        return true;
      }
    }
    known.removeIf(k -> noLater(then, k));
    if (known.size() < KEPT) {
      known.add(then.clone());
    }
    return false;
  }

  private boolean noLater(long[] a, long[] b) {
    if (a[nodes.length] > b[nodes.length]) {
      return false;
    }
    for (int k = 0; k < nodes.length; k++) {
      if (a[k] > b[k] && left[nesting.typeOf[nodes[k]]] > 0) {
        return false;
      }
    }
    return true;
  }

  private void take(int type, int n) {
    left[type] -= n;
    state -= n * stride[type];
    for (int h = 0; h < open.length; h++) {
      open[h] -= n * nesting.weight[type][h];
    }
  }

  /** How far beyond a part's start it and the others still to come reach at least. */
  private long rest(int type) {
    long most = 0;
    for (int h = 0; h < open.length; h++) {
      most = Math.max(most, nesting.lead[type][h] + open[h] - nesting.kerf);
    }
    return most - Nesting.SLACK;
  }
}
