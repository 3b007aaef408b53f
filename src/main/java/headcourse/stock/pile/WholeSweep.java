package headcourse.stock.pile;

import headcourse.stock.pile.PileDraft.Slot;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Search for choices in which nothing is sawn off: through the pieces from the shortest to the
 * longest, each left lying or given to a side of a head; the order of the stones comes after.
 *
 * <p>Where sides are to be alike, a head's stones go in pairs, each closed before the next is
 * begun: of all ways to pair given stones, pairing them in the order of their lengths has the least
 * sum of differences, and allows every difference of the two sides that any other way of that sum
 * does.
 */
final class WholeSweep {
  private static final int MEMORY = 400_000;

  private final Pile pile;
  private final PileTypes types;
  private final WholeSums[][] sums;
  private final int heads;
  private final int[][] n;
  private final long[][] sum;
  private final long[][] widest;
  private final long[] open;
  private final int[] openSide;
  private final List<List<long[]>> taken = new ArrayList<>();
  private final Map<SearchState, Long> seen = new HashMap<>();
  private final long[] top;
  private final WholeGaps gaps;
  private final long leastBearing;
  private long imbalanceCap;
  private PileDraft best;
  private long steps;
  private long limit;
  private long orderFailures;
  private boolean cutOff;
  private boolean thorough;

  WholeSweep(Pile pile, PileTypes types) {
    this.pile = pile;
    this.types = types;
    this.heads = pile.heads().size();
    this.sums = new WholeSums[heads][2];
    this.n = new int[heads][2];
    this.sum = new long[heads][2];
    this.widest = new long[heads][2];
    this.open = new long[heads];
    this.openSide = new int[heads];
    long off = 0;
    for (int h = 0; h < heads; h++) {
      Pile.Head head = pile.heads().get(h);
      for (int s = 0; s < 2; s++) {
        sums[h][s] = new WholeSums(head, head.side(s));
        off += head.copies() * PileSearch.leastOff(head.side(s));
      }
      taken.add(new ArrayList<>());
    }
    leastBearing = off;
    gaps = new WholeGaps(types);
    int pieces = Arrays.stream(types.count).sum();
    top = new long[pieces + 1];
    int k = 0;
    for (int t = types.size() - 1; t >= 0; t--) {
      for (int i = 0; i < types.count[t]; i++) {
        top[k + 1] = top[k] + types.usable[t];
        k++;
      }
    }
  }

  /** No choice with nothing sawn off and all stones in pairs differs by less on its two sides. */
  long leastImbalance() {
    for (long cap = 0; ; cap = cap * 2 + 1) {
      imbalanceCap = cap;
      if (cap > Long.MAX_VALUE / 8 || open(0, 0, 0)) {
        break;
      }
    }
    long low = -1;
    long high = imbalanceCap;
    while (high - low > 1) {
      imbalanceCap = (low + high) >>> 1;
      if (open(0, 0, 0)) {
        high = imbalanceCap;
      } else {
        low = imbalanceCap;
      }
    }
    return high;
  }

  /** The best choice found, or null. */
  PileDraft best() {
    return best;
  }

  long steps() {
    return steps;
  }

  /** Whether the last run looked at all that is better than its answer. */
  boolean sure() {
    return !cutOff && (thorough || orderFailures == 0) || best != null && atBound();
  }

  private boolean atBound() {
    return best.cost().bearing() <= leastBearing;
  }

  /**
   * Searches for choices whose sides differ by no more than so much.
   *
   * @param most how many steps it may take
   * @param thoroughly whether stones that can't be ordered are no reason to pass over others of the
   *     same sums
   * @return whether one was found
   */
  boolean run(long imbalance, long most, boolean thoroughly) {
    imbalanceCap = imbalance;
    thorough = thoroughly;
    orderFailures = 0;
    cutOff = false;
    limit = steps + most;
    seen.clear();
    go(0, 0, 0, 0);
    return best != null;
  }

  /** No less than this can the bearings of any choice be off. */
  long leastBearing() {
    return leastBearing;
  }

  private boolean mirror(int h) {
    return pile.heads().get(h).mirror();
  }

  private boolean done() {
    cutOff |= steps > limit;
    return steps > limit || best != null && atBound();
  }

  private void go(int t, int used, int firstHead, long imbalance) {
    steps++;
    if (done() || !open(t, used, imbalance)) {
      return;
    }
    if (t == types.size()) {
      finish(imbalance);
      return;
    }
    SearchState state = state(t, used, firstHead);
    Long before = seen.get(state);
    if (before != null && before <= imbalance) {
      return;
    }
    long failed = orderFailures;
    spread(t, used, firstHead, imbalance);
    // Other stones of the same sums may stand where these can't; thoroughly, only what fails by its
    // sums is remembered.
    if ((!thorough || failed == orderFailures)
        && !done()
        && (before != null || seen.size() < MEMORY)) {
      seen.put(state, imbalance);
    }
  }

  private void spread(int t, int used, int firstHead, long imbalance) {
    for (int h = firstHead; h < heads; h++) {
      int c = pile.heads().get(h).copies();
      if (used + c > types.count[t] || !types.whole(pile.heads().get(h), h, t)) {
        continue;
      }
      if (mirror(h) && open[h] > 0) {
        long more = imbalance + c * (types.usable[t] - open[h]);
        if (more <= imbalanceCap) {
          long was = open[h];
          open[h] = 0;
          give(h, 1 - openSide[h], t, used, more);
          open[h] = was;
        }
        continue;
      }
      // Two sides that are alike: the first stone goes left.
      boolean first = n[h][0] + n[h][1] == 0;
      Pile.Head head = pile.heads().get(h);
      int ways = first && head.left().equals(head.right()) ? 1 : 2;
      for (int s = 0; s < ways; s++) {
        if (mirror(h)) {
          open[h] = types.usable[t];
          openSide[h] = s;
        }
        give(h, s, t, used, imbalance);
        open[h] = 0;
      }
    }
    go(t + 1, 0, 0, imbalance);
  }

  private void give(int h, int s, int t, int used, long imbalance) {
    // In the order of their lengths neighbours differ least; what is too far apart there always is.
    long gap = types.usable[t] - widest[h][s];
    if (n[h][s] > 0 && gap - types.extra(h) > pile.heads().get(h).jump()) {
      return;
    }
    n[h][s]++;
    sum[h][s] += types.usable[t];
    taken.get(h).add(new long[] {s, t});
    int side = openSide[h];
    long was = widest[h][s];
    widest[h][s] = types.usable[t];
    go(t, used + pile.heads().get(h).copies(), h, imbalance);
    openSide[h] = side;
    widest[h][s] = was;
    taken.get(h).remove(taken.get(h).size() - 1);
    sum[h][s] -= types.usable[t];
    n[h][s]--;
  }

  /** Whether every head can still come out within the imbalance allowed. */
  private boolean open(int t, int used, long imbalance) {
    if (t == types.size()) {
      return true;
    }
    long each = types.usable[t];
    long pending = imbalance;
    int pairs = 0;
    for (int h = 0; h < heads; h++) {
      int c = pile.heads().get(h).copies();
      int l = sums[h][0].more(n[h][0], sum[h][0], each, top);
      int r = sums[h][1].more(n[h][1], sum[h][1], each, top);
      if (l < 0 || r < 0) {
        return false;
      }
      if (open[h] > 0) {
        pending += c * (each - open[h]);
      }
      if (mirror(h)) {
        pairs += c * Math.max(0, Math.max(l, r) - (open[h] > 0 ? 1 : 0));
      }
    }
    return pending + gaps.least(t, used, pairs) <= imbalanceCap;
  }

  private void finish(long imbalance) {
    long bearing = 0;
    for (int h = 0; h < heads; h++) {
      if (open[h] > 0 || mirror(h) && n[h][0] != n[h][1]) {
        return;
      }
      for (int s = 0; s < 2; s++) {
        long off = sums[h][s].off(n[h][s], sum[h][s]);
        if (off < 0 || !sums[h][s].ends(n[h][s], sum[h][s], widest[h][s])) {
          return;
        }
        bearing += pile.heads().get(h).copies() * off;
      }
    }
    Pile.Cost cost = new Pile.Cost(0, imbalance, bearing);
    if (best != null && best.cost().compareTo(cost) <= 0) {
      return;
    }
    List<List<List<Slot>>> rows = new ArrayList<>();
    for (int h = 0; h < heads; h++) {
      List<List<Slot>> row = ordered(h);
      if (row == null) {
        orderFailures++;
        return;
      }
      rows.add(row);
    }
    best = new PileDraft(rows, cost);
    for (WholeSums[] of : sums) {
      for (WholeSums side : of) {
        long spare = cost.bearing() - 1 - leastBearing;
        side.within(side.leastOff() + Math.max(0, spare / side.head().copies()));
      }
    }
  }

  /** The stones of a head in an order that keeps to its rules, or null. */
  private List<List<Slot>> ordered(int h) {
    Pile.Head head = pile.heads().get(h);
    List<List<long[]>> bySide = List.of(new ArrayList<>(), new ArrayList<>());
    for (long[] st : taken.get(h)) {
      bySide.get((int) st[0]).add(new long[] {types.usable[(int) st[1]], st[1]});
    }
    if (head.mirror()) {
      List<long[]> pairs = new ArrayList<>();
      for (int i = 0; i < bySide.get(0).size(); i++) {
        long[] l = bySide.get(0).get(i);
        long[] r = bySide.get(1).get(i);
        pairs.add(new long[] {l[0], r[0], l[1], r[1]});
      }
      List<long[]> row = arranged(new WholeOrder(head, new int[] {0, 1}, pairs, h + 1));
      return row == null ? null : List.of(slots(head, row, 0, 0, 2), slots(head, row, 1, 1, 3));
    }
    List<List<Slot>> out = new ArrayList<>();
    for (int s = 0; s < 2; s++) {
      List<long[]> row =
          arranged(new WholeOrder(head, new int[] {s}, bySide.get(s), 2L * h + s + 1));
      if (row == null) {
        return null;
      }
      out.add(slots(head, row, s, 0, 1));
    }
    return out;
  }

  private List<long[]> arranged(WholeOrder order) {
    List<long[]> row = order.find();
    steps += order.steps();
    cutOff |= thorough && row == null && order.cutOff();
    return row;
  }

  static List<Slot> slots(Pile.Head head, List<long[]> row, int s, int lengthAt, int typeAt) {
    List<Slot> out = new ArrayList<>();
    for (int i = 0; i < row.size(); i++) {
      int[] from = new int[head.copies()];
      Arrays.fill(from, (int) row.get(i)[typeAt]);
      out.add(new Slot(row.get(i)[lengthAt] - head.side(s).extra(i + 1), from));
    }
    return out;
  }

  private SearchState state(int t, int used, int firstHead) {
    long[] key = new long[3 + 8 * heads];
    key[0] = t;
    key[1] = used;
    key[2] = firstHead;
    for (int h = 0; h < heads; h++) {
      int k = 3 + 8 * h;
      key[k] = n[h][0];
      key[k + 1] = n[h][1];
      key[k + 2] = sum[h][0];
      key[k + 3] = sum[h][1];
      key[k + 4] = open[h];
      key[k + 5] = open[h] > 0 ? openSide[h] : 0;
      key[k + 6] = widest[h][0];
      key[k + 7] = widest[h][1];
    }
    return new SearchState(key);
  }
}
