package headcourse.stock.pile;

import headcourse.stock.pile.PileDraft.Slot;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Complete search over the stones of all heads, outwards from each key, the side with fewer stones
 * first; every piece, every width it can be sawn to, every end.
 *
 * <p>What lies ahead depends only on where the open sides stand, their last widths and the pieces
 * left, so a place reached dearer than before is left again.
 */
public final class PileSearch {
  private static final int MEMORY = 150_000;

  private final Pile pile;
  private final PileTypes types;
  private final Pile.Cost goal;
  private final long limit;
  private final int[] left;
  private final List<List<List<Slot>>> row = new ArrayList<>();
  private final Map<SearchState, Pile.Cost> seen = new HashMap<>();
  private final long[] ahead;
  private PileDraft best;
  private long steps;

  /**
   * @param best the best known, or null
   * @param goal no choice costs less
   * @param limit how many steps it may take
   */
  PileSearch(Pile pile, PileTypes types, PileDraft best, Pile.Cost goal, long limit) {
    this.goal = goal;
    this.pile = pile;
    this.types = types;
    this.limit = limit;
    this.best = best;
    this.left = types.count.clone();
    this.ahead = new long[pile.heads().size() + 1];
    for (int h = pile.heads().size() - 1; h >= 0; h--) {
      Pile.Head head = pile.heads().get(h);
      ahead[h] = ahead[h + 1] + head.copies() * (leastOff(head.left()) + leastOff(head.right()));
    }
    for (int h = 0; h < pile.heads().size(); h++) {
      row.add(List.of(new ArrayList<>(), new ArrayList<>()));
    }
  }

  /** The least that the bearing of a side can be off its target, pm. */
  public static long leastOff(PileSide side) {
    long least = Long.MAX_VALUE;
    for (long e = side.firstEnd(); e <= side.lastEnd(); e++) {
      long off = side.bearingOff(e);
      least = off >= 0 ? Math.min(least, off) : least;
    }
    return least == Long.MAX_VALUE ? 0 : least;
  }

  /** Searches; true where all was looked at. */
  boolean run() {
    head(0, Pile.Cost.NONE);
    return steps <= limit || best != null && best.cost().compareTo(goal) <= 0;
  }

  PileDraft best() {
    return best;
  }

  long steps() {
    return steps;
  }

  private boolean hopeless(Pile.Cost cost, long bearingAhead) {
    return steps > limit
        || best != null && best.cost().compareTo(goal) <= 0
        || best != null && cost.plus(0, 0, bearingAhead).compareTo(best.cost()) >= 0;
  }

  private void head(int h, Pile.Cost cost) {
    if (hopeless(cost, ahead[h])) {
      return;
    }
    if (h == pile.heads().size()) {
      List<List<List<Slot>>> copy = new ArrayList<>();
      row.forEach(r -> copy.add(List.of(List.copyOf(r.get(0)), List.copyOf(r.get(1)))));
      best = new PileDraft(copy, cost);
      return;
    }
    PileSide l = pile.heads().get(h).left();
    PileSide r = pile.heads().get(h).right();
    extend(h, new long[] {l.start(), r.start()}, new boolean[2], cost);
  }

  /** Sets the next stone of a head. */
  private void extend(int h, long[] foot, boolean[] ended, Pile.Cost cost) {
    steps++;
    if (ended[0] && ended[1]) {
      head(h + 1, cost);
      return;
    }
    Pile.Head head = pile.heads().get(h);
    if (hopeless(cost, ahead[h + 1]) || again(h, foot, ended, cost)) {
      return;
    }
    int nl = row.get(h).get(0).size();
    int nr = row.get(h).get(1).size();
    int s = ended[0] ? 1 : ended[1] ? 0 : nl <= nr ? 0 : 1;
    PileSide side = head.side(s);
    List<Slot> mine = row.get(h).get(s);
    int index = mine.size() + 1;
    if (head.eachSide() > 0 && index > head.eachSide()) {
      return;
    }
    long inner = foot[s];
    long extra = side.extra(index);
    long most = Math.min(head.max(), types.usable[types.size() - 1] - extra);
    long least = head.min();
    if (!mine.isEmpty()) {
      long before = mine.get(mine.size() - 1).width();
      most = Math.min(most, sum(before, head.jump()));
      least = Math.max(least, before - Math.min(head.jump(), before));
    }
    most = Math.min(most, side.lastEnd() - inner - side.joint());
    for (long w = most; w >= least; w--) {
      long outer = inner + side.joint() + w;
      boolean end = ends(head, side, index, inner, outer);
      boolean on =
          side.jointStands(index, outer)
              && side.stoneFits(index, inner, outer)
              && outer + side.joint() + head.min() <= side.lastEnd();
      if (end || on) {
        pick(
            h,
            s,
            new Trial(w, extra, outer, end, on),
            new int[head.copies()],
            0,
            0,
            foot,
            ended,
            cost);
      }
    }
  }

  private static long sum(long a, long b) {
    return a > Long.MAX_VALUE - b ? Long.MAX_VALUE : a + b;
  }

  private static boolean ends(Pile.Head head, PileSide side, int index, long inner, long outer) {
    return (head.eachSide() == 0 || index == head.eachSide())
        && outer >= side.firstEnd()
        && outer <= side.lastEnd()
        && side.bearingOff(outer) >= 0
        && side.endFits(index, inner, outer);
  }

  private record Trial(long width, long extra, long outer, boolean end, boolean on) {}

  /** Picks pieces for the copies of a stone, shortest first. */
  private void pick(
      int h,
      int s,
      Trial trial,
      int[] from,
      int copy,
      int firstType,
      long[] foot,
      boolean[] ended,
      Pile.Cost cost) {
    steps++;
    if (copy == from.length) {
      set(h, s, trial, from.clone(), foot, ended, cost);
      return;
    }
    for (int t = firstType; t < types.size(); t++) {
      long sawn = types.usable[t] - trial.width - trial.extra;
      if (sawn < 0 || left[t] == 0 || !types.fits.get(t).get(h)) {
        continue;
      }
      Pile.Cost more = cost.plus(sawn, 0, 0);
      if (hopeless(more, ahead[h + 1])) {
        return;
      }
      left[t]--;
      from[copy] = t;
      pick(h, s, trial, from, copy + 1, t, foot, ended, more);
      left[t]++;
    }
  }

  private void set(
      int h, int s, Trial trial, int[] from, long[] foot, boolean[] ended, Pile.Cost cost) {
    Pile.Head head = pile.heads().get(h);
    List<Slot> mine = row.get(h).get(s);
    List<Slot> other = row.get(h).get(1 - s);
    mine.add(new Slot(trial.width, from));
    int index = mine.size();
    long was = foot[s];
    foot[s] = trial.outer;
    long imbalance = 0;
    // The left goes first, so a stone beside an open side finds its partner when that is set.
    if (head.mirror() && (ended[1 - s] || other.size() >= index)) {
      long partner = other.size() >= index ? other.get(index - 1).width() : 0;
      imbalance = head.copies() * Math.abs(trial.width - partner);
    }
    if (trial.end) {
      ended[s] = true;
      long off = head.copies() * head.side(s).bearingOff(trial.outer);
      extend(h, foot, ended, cost.plus(0, imbalance, off));
      ended[s] = false;
    }
    if (trial.on) {
      extend(h, foot, ended, cost.plus(0, imbalance, 0));
    }
    foot[s] = was;
    mine.remove(mine.size() - 1);
  }

  private boolean again(int h, long[] foot, boolean[] ended, Pile.Cost cost) {
    long[] n = new long[left.length + 8];
    for (int t = 0; t < left.length; t++) {
      n[t] = left[t];
    }
    int k = left.length;
    n[k++] = h;
    for (int s = 0; s < 2; s++) {
      List<Slot> mine = row.get(h).get(s);
      int size = mine.size();
      n[k++] = ended[s] ? -1 : foot[s];
      n[k++] = size;
      n[k++] = size == 0 ? -1 : mine.get(size - 1).width();
    }
    SearchState state = new SearchState(n);
    Pile.Cost before = seen.get(state);
    if (before != null && before.compareTo(cost) <= 0) {
      return true;
    }
    if (before != null || seen.size() < MEMORY) {
      seen.put(state, cost);
    }
    return false;
  }
}
