package headcourse.stock.cutting;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Depth-first search over the sequences of parts on one blank that are shorter than a bound.
 *
 * <p>What lies on the blank already matters only by where each of the others may begin at the
 * least: where the same parts were laid before so that none began later, nothing is gained.
 */
final class SequenceSearch {
  /** It gives up after so many parts laid: some sets of parts can't be decided in any time. */
  private static final int NODES = 20_000;

  /** So many ways to have laid the same parts are kept to compare with. */
  private static final int KEPT = 6;

  /** With so few parts left it is quicker to go on than to compare. */
  private static final int LAST = 3;

  /** Operations to look up what was laid before. */
  private static final int LOOK = 60;

  private final Nesting nesting;
  private final int[] left;
  private final int[] nodes;
  private final long enough;
  private final int[] types;
  private final int[] present;
  private final int[] path;
  private final StepBudget budget;

  /** By how many are laid and node: where it may begin; and at last how far those laid reach. */
  private final long[][] from;

  /** By how many are laid and height: how far they reach there. */
  private final long[][] front;

  /** By height: what the parts still to come take there. */
  private final long[] open;

  /** By how many are still to come of each type: where each may begin, as found before. */
  private final Map<Numbers, List<long[]>> before = new HashMap<>();

  private int size;
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
    this.left = new int[counts.length];
    this.bound = bound;
    this.enough = enough;
    nodes =
        IntStream.range(0, nesting.typeOf.length)
            .filter(node -> counts[nesting.typeOf[node]] > 0)
            .toArray();
    types = IntStream.of(nodes).map(node -> nesting.typeOf[node]).toArray();
    path = new int[IntStream.of(counts).sum()];
    from = new long[path.length + 1][nodes.length + 1];
    open = new long[nesting.skyline.width().length];
    front = new long[path.length + 1][open.length];
    present = Nesting.present(counts);
    for (int t : present) {
      take(t, 0 - counts[t]);
    }
    budget.spend((long) path.length * nodes.length + nesting.typeOf.length);
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
      budget.spend(KEPT * nodes.length / 2 + LOOK);
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
    if (path.length - size <= LAST) {
      return false;
    }
    int[] rest = new int[present.length];
    for (int k = 0; k < rest.length; k++) {
      rest[k] = left[present[k]];
    }
    List<long[]> known = before.computeIfAbsent(new Numbers(rest), s -> new ArrayList<>(KEPT));
    for (long[] one : known) {
      if (noLater(one, then)) {
        return true;
      }
    }
    known.removeIf(one -> noLater(then, one));
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
      if (a[k] > b[k] && left[types[k]] > 0) {
        return false;
      }
    }
    return true;
  }

  private void take(int type, int n) {
    left[type] -= n;
    for (int h = 0; h < open.length; h++) {
      open[h] -= n * nesting.skyline.width()[h][type];
    }
  }

  /** Whether with a node laid at a place the others still to come reach too far at some height. */
  private boolean isLong(int node, int type, long start) {
    Skyline skyline = nesting.skyline;
    for (int h = 0; h < open.length; h++) {
      long right = skyline.right()[h][node];
      long to = right < 0 ? front[size][h] : start + right;
      front[size + 1][h] = to;
      if (to + open[h] - skyline.width()[h][type] - nesting.kerf - Nesting.SLACK >= bound) {
        return true;
      }
    }
    return false;
  }
}
