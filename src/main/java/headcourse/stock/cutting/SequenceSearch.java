package headcourse.stock.cutting;

import java.util.Arrays;

/**
 * Depth-first search over the sequences of parts on one blank that are shorter than a bound.
 *
 * <p>What lies on the blank already matters only by where each of the others may begin at the
 * least: where the same parts were laid before so that none began later, nothing is gained.
 */
final class SequenceSearch {
  /** It gives up after so many parts laid: some sets of parts can't be decided in any time. */
  private static final int NODES = 20_000;

  /** With more sets of parts still to come than this there is no memory for dominance. */
  private static final int STATES = 40_000;

  /** So many ways to have laid the same parts are kept to compare with. */
  private static final int KEPT = 6;

  /** With so few parts left it is quicker to go on than to compare. */
  private static final int LAST = 3;

  private final Nesting nesting;
  private final int[] left;
  private final int[] nodes;
  private final long enough;
  private final int[] types;
  private final int[] path;
  private final StepBudget budget;

  /** By how many are laid and node: where it may begin; and at last how far those laid reach. */
  private final long[][] from;

  /** By how many are laid and height: how far they reach there. */
  private final long[][] front;

  /** By height: what the parts still to come take there. */
  private final long[] open;

  /** By the parts still to come: where each may begin, as found before; null where unused. */
  private final long[][][] before;

  /** By type: what one of it counts for in the number of the parts still to come. */
  private final int[] stride;

  private int size;
  private int state;
  private long bound;
  private int[] best;
  private int nodesLaid;

  /**
   * @param counts how many parts of each type
   * @param bound only shorter sequences are of interest
   * @param enough the first no longer than this is good enough
   * @param budget what it counts on
   */
  SequenceSearch(Nesting nesting, int[] counts, long bound, long enough, StepBudget budget) {
    this.budget = budget;
    this.nesting = nesting;
    this.left = counts.clone();
    this.bound = bound;
    this.enough = enough;
    this.nodes = nodes(nesting, counts);
    int parts = 0;
    for (int c : counts) {
      parts += c;
    }
    types = new int[nodes.length];
    for (int k = 0; k < types.length; k++) {
      types[k] = nesting.typeOf[nodes[k]];
    }
    path = new int[parts];
    from = new long[path.length + 1][nodes.length + 1];
    open = new long[nesting.skyline.heights()];
    front = new long[path.length + 1][open.length];
    stride = new int[counts.length];
    long states = 1;
    for (int t = 0; t < counts.length; t++) {
      for (int h = 0; counts[t] > 0 && h < open.length; h++) {
        open[h] += counts[t] * nesting.skyline.width(t, h);
      }
      stride[t] = (int) states;
      states = Math.min(STATES, states * (counts[t] + 1));
    }
    before = states < STATES ? new long[(int) states][][] : null;
    state = (int) states - 1;
    budget.spend(states / 4 + (long) path.length * nodes.length + nesting.typeOf.length);
  }

  private static int[] nodes(Nesting nesting, int[] counts) {
    int[] present = Nesting.present(counts);
    int[] all = new int[2 * present.length];
    int n = 0;
    for (int t : present) {
      for (int node = nesting.firstNode[t]; node < nesting.firstNode[t + 1]; node++) {
        all[n++] = node;
      }
    }
    return Arrays.copyOf(all, n);
  }

  /** Looks for the shortest. */
  void run() {
    nodesLaid++;
    budget.spend(3L * nodes.length);
    if (gaveUp() || bound <= enough) {
      return;
    }
    long[] here = from[size];
    if (size == path.length) {
      bound = here[nodes.length];
      best = path.clone();
      return;
    }
    for (int k = 0; k < nodes.length; k++) {
      int node = nodes[k];
      int t = types[k];
      if (left[t] == 0) {
        continue;
      }
      long start = here[k];
      long reach = Math.max(here[nodes.length], start + nesting.extent[node]);
      if (reach >= bound || isLong(node, t, start)) {
        continue;
      }
      budget.spend(nodes.length + 2L * open.length);
      long[] then = from[size + 1];
      for (int j = 0; j < nodes.length; j++) {
        if (left[types[j]] == 0) {
          continue;
        }
        then[j] = Math.max(here[j], start + nesting.distance[node][nodes[j]]);
      }
      then[nodes.length] = reach;
      budget.spend(before == null ? 0 : KEPT * nodes.length / 2);
      take(t, 1);
      if (!worse(then)) {
        path[size++] = node;
        run();
        size--;
      }
      take(t, -1);
    }
  }

  int nodes() {
    return nodesLaid;
  }

  /** Whether it ended before all was looked at. */
  boolean gaveUp() {
    return nodesLaid > NODES || budget.out();
  }

  /** The shortest sequence found; null where there is none. */
  int[] best() {
    return best;
  }

  /** Its length. */
  long length() {
    return bound;
  }

  private boolean worse(long[] then) {
    if (before == null || path.length - size <= LAST) {
      return false;
    }
    long[][] known = before[state];
    if (known == null) {
      known = new long[KEPT][];
      before[state] = known;
    }
    for (int i = 0; i < KEPT && known[i] != null; i++) {
      if (noLater(known[i], then)) {
        return true;
      }
    }
    for (int i = 0; i < KEPT; i++) {
      if (known[i] == null || noLater(then, known[i])) {
        known[i] = then.clone();
        break;
      }
    }
    return false;
  }

  private boolean noLater(long[] a, long[] b) {
    if (a[nodes.length] > b[nodes.length]) {
      return false;
    }
    for (int k = 0; k < nodes.length; k++) {
      if (a[k] > b[k] && left[types[k]] > 0) {
        return false;
      }
    }
    return true;
  }

  private void take(int type, int n) {
    left[type] -= n;
    state -= n * stride[type];
    for (int h = 0; h < open.length; h++) {
      open[h] -= n * nesting.skyline.width(type, h);
    }
  }

  /** Whether with a node laid at a place the others still to come reach too far at some height. */
  private boolean isLong(int node, int type, long start) {
    Skyline skyline = nesting.skyline;
    for (int h = 0; h < open.length; h++) {
      long to = skyline.with(node, start, h, front[size][h]);
      front[size + 1][h] = to;
      if (to + open[h] - skyline.width(type, h) - nesting.kerf - Nesting.SLACK >= bound) {
        return true;
      }
    }
    return false;
  }
}
