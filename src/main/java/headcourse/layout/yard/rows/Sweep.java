package headcourse.layout.yard.rows;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Gives pieces to the sides of upright heads whose numbers of stones are known: piece by piece, the
 * shortest first, each left lying or given to a side. Of a row of upright stones the order counts
 * only beside the jamb and for neighbours, which differ least in the order of their lengths, so
 * each stone is as long as its piece and the one before it allow.
 *
 * <p>A state is, by side, how many stones have their pieces, what they come to, and the longest.
 */
final class Sweep extends LayeredSearch<SweepState> {
  /** How many of what it finds are kept. */
  private static final int FEW = 12;

  /** No less is sawn off by what the last run did not look at; {@link Store#NEVER} for nothing. */
  long floor;

  private final Store store;
  private final SweepSide[] sides;
  private final int[] pieces;
  private final long[] usable;
  private final long[] upTo;
  private final long[][] longest;
  private final boolean[] paired;
  private final long[] least;
  private final long[] most;
  private final boolean steep;
  private boolean allPaired = true;
  private long uneven;
  private long mostInAll;
  private final List<SweepState> done = new ArrayList<>();
  private int width;
  private Bar bar;
  private long until;

  /**
   * What is looked for.
   *
   * @param sawn less is to be sawn off; where sides are to differ by less, no more
   * @param imbalance the sides are to differ by less, or {@link Store#NEVER} where that is open
   * @param bearing the bearings are to be off by less
   */
  record Bar(long sawn, long imbalance, long bearing) {
    boolean alike() {
      return imbalance < Store.NEVER;
    }
  }

  /**
   * @param sides left and right of each head in turn
   * @param free pieces that may be taken, the shortest first
   */
  Sweep(Store store, List<SweepSide> sides, int[] free) {
    this.store = store;
    this.sides = sides.toArray(SweepSide[]::new);
    this.pieces = free;
    usable = new long[free.length];
    upTo = new long[free.length + 1];
    for (int t = 0; t < free.length; t++) {
      usable[t] = store.usable(free[t]);
      upTo[t + 1] = upTo[t] + usable[t];
    }
    paired = new boolean[this.sides.length / 2];
    for (int h = 0; h < paired.length; h++) {
      SweepSide l = this.sides[2 * h];
      SweepSide r = this.sides[2 * h + 1];
      paired[h] = l.pairs(r) && l.stones == r.stones;
      allPaired &= paired[h];
      uneven += l.pairs(r) ? l.copies * Math.abs(l.stones - r.stones) * l.head.min() : 0;
    }
    steep = sides.stream().anyMatch(x -> x.jump < SweepSide.FREE);
    longest = new long[this.sides.length][];
    least = new long[this.sides.length];
    most = new long[this.sides.length];
    for (int u = 0; u < this.sides.length; u++) {
      SweepSide x = this.sides[u];
      longest[u] = new long[x.stones + 1];
      for (int r = 1; r <= x.stones; r++) {
        int at = free.length - r * x.copies;
        longest[u][r] = at < 0 ? -1 : longest[u][r - 1] + Math.min(x.widest, usable[at]);
      }
    }
    bear(Store.NEVER);
  }

  /** How much the sides differ at least, where pairs of their pieces differ by so much. */
  long unlike(long pairs) {
    return allPaired ? Math.max(0, pairs) : uneven;
  }

  /** Takes of every side the ends whose bearings are off by less. */
  private void bear(long off) {
    mostInAll = 0;
    for (int u = 0; u < sides.length; u++) {
      least[u] = sides[u].need(off, true);
      most[u] = sides[u].need(off, false);
      mostInAll += sides[u].copies * most[u];
    }
  }

  /** What is sawn off in any case; {@link Store#NEVER} where the pieces do not suffice. */
  long root() {
    return low(new SweepState(sides));
  }

  /**
   * Runs once.
   *
   * @param width how many states of a layer are kept
   * @param bar what is found must cost less, or saw off no more and differ by less
   * @param until how many steps may be taken in all
   * @return what was found, the best first
   */
  List<SweepState> run(int width, Bar bar, long until) {
    this.width = width;
    this.bar = bar;
    this.until = until;
    floor = Store.NEVER;
    done.clear();
    bear(bar.bearing());
    SweepState first = new SweepState(sides);
    first.low = low(first);
    if (!search(first)) {
      floor = 0;
    }
    cut();
    return List.copyOf(done);
  }

  /** Leaves of what was found the best few. */
  private void cut() {
    done.sort(Comparator.comparingLong((SweepState s) -> s.low).thenComparingLong(s -> s.gap));
    if (done.size() > FEW) {
      floor = Math.min(floor, done.get(FEW).low);
      done.subList(FEW, done.size()).clear();
    }
  }

  @Override
  boolean over() {
    return store.steps.taken() > until;
  }

  @Override
  int width(int layer) {
    return width;
  }

  @Override
  Comparator<SweepState> order() {
    Comparator<SweepState> order = Comparator.comparingLong(s -> s.low);
    // Another width is another seed for which of states that come to as little are kept.
    int seed = width % 7;
    if (seed % 2 == 0) {
      order = order.thenComparingLong(s -> s.gap);
    }
    return order.thenComparingInt(s -> LayeredSearch.State.mix(s.hashCode() + seed));
  }

  @Override
  void dropped(SweepState s) {
    floor = Math.min(floor, s.low);
  }

  @Override
  SweepState better(SweepState a, SweepState b) {
    boolean alike = bar.alike();
    long one = alike ? a.gap + a.waste : a.waste;
    long two = alike ? b.gap + b.waste : b.waste;
    return two < one || two == one && b.gap < a.gap ? b : a;
  }

  @Override
  boolean found(SweepState s) {
    if (!s.whole()) {
      return false;
    }
    if (bar.bearing() == Store.NEVER || near(s)) {
      done.add(s);
      if (done.size() > 8 * FEW) {
        cut();
      }
    }
    return true;
  }

  /** The next piece is given to one of the sides, or left lying. */
  @Override
  List<SweepState> next(SweepState s, int among) {
    List<SweepState> out = new ArrayList<>();
    if (s.at < pieces.length) {
      for (int u = 0; u < sides.length; u++) {
        take(s, u, out);
      }
      on(s, s.at, s.at + 1);
      store.steps.count();
      s.at++;
      s.low = low(s);
      out.add(s);
    }
    return out;
  }

  /** The pairs' differences from a piece to another. */
  private void on(SweepState s, int t, int to) {
    if (to >= usable.length) {
      return;
    }
    for (int h = 0; h < sides.length / 2; h++) {
      SweepSide l = sides[2 * h];
      if (paired[h]) {
        int apart = Math.abs(s.count[2 * h] - s.count[2 * h + 1]);
        s.gap +=
            l.copies * apart * (Math.min(l.widest, usable[to]) - Math.min(l.widest, usable[t]));
      }
    }
  }

  private void take(SweepState s, int u, List<SweepState> out) {
    SweepSide x = sides[u];
    if (s.count[u] == x.stones || !store.fits(pieces[s.at], x.h, false)) {
      return;
    }
    int[] of = new int[x.copies];
    long length = 0;
    int at = s.at;
    for (int c = 0; c < x.copies; c++) {
      while (at < pieces.length && !store.fits(pieces[at], x.h, false)) {
        floor = 0;
        at++;
      }
      if (at == pieces.length) {
        return;
      }
      of[c] = pieces[at];
      length += usable[at++];
    }
    long cover = Math.min(usable[s.at], x.widest);
    cover = Math.min(cover, s.count[u] == 0 ? x.first : s.last[u] + x.jump);
    if (cover < x.narrowest) {
      return;
    }
    store.steps.count();
    SweepState next = new SweepState(s, u, of, cover, length - x.copies * cover, at);
    if (!next.whole()) {
      on(next, s.at, at);
    }
    next.low = next.whole() ? whole(next) : low(next);
    out.add(next);
  }

  @Override
  boolean open(SweepState s) {
    if (!bar.alike()) {
      return s.low < bar.sawn();
    }
    // What is sawn off may make the stones of a pair alike.
    long slack = steep ? bar.sawn() : bar.sawn() - s.waste;
    return s.low <= bar.sawn() && uneven + Math.max(0, s.gap - slack) < bar.imbalance();
  }

  /** Whether bearings may be so near where all sides have their stones. */
  private boolean near(SweepState s) {
    return IntStream.range(0, sides.length)
            .mapToLong(u -> sides[u].bearing(s.sum[u], s.last[u], bar.sawn()))
            .sum()
        < bar.bearing();
  }

  /** What is sawn off at least where all sides have their stones. */
  private long whole(SweepState s) {
    long low = s.waste;
    for (int u = 0; u < sides.length; u++) {
      long need = sides[u].reached(s.sum[u], s.last[u]);
      if (need < 0) {
        return Store.NEVER;
      }
      low += sides[u].copies * (s.sum[u] - need);
    }
    return low;
  }

  /** No less is sawn off with the pieces that are still to come. */
  private long low(SweepState s) {
    int t = s.at;
    int open = 0;
    long need = 0;
    long taken = s.waste;
    long over = 0;
    for (int u = 0; u < sides.length; u++) {
      SweepSide x = sides[u];
      int r = x.stones - s.count[u];
      int n = r * x.copies;
      open += n;
      taken += x.copies * s.sum[u];
      long reach = reach(s, u, r);
      if (reach < 0 || s.sum[u] + reach < least[u]) {
        return Store.NEVER;
      }
      long widest = Math.min(x.widest, usable[usable.length - 1]);
      widest = Math.min(widest, s.last[u] + r * x.jump);
      if (widest < x.last) {
        return Store.NEVER;
      }
      need += x.copies * Math.max(0, least[u] - s.sum[u]);
      long next = t == usable.length ? 0 : Math.min(usable[t], x.widest);
      next = Math.min(next, s.last[u] + x.jump);
      over += x.copies * Math.max(0, s.sum[u] + r * next - most[u]);
    }
    if (t + open > usable.length) {
      return Store.NEVER;
    }
    long q = Math.max(need, upTo[t + open] - upTo[t]);
    return Math.max(s.waste + over, Math.max(taken + q - mostInAll, s.waste));
  }

  /** What so many more stones of a side come to at most, or −1 where they can't be had. */
  private long reach(SweepState s, int u, int r) {
    SweepSide x = sides[u];
    long all = longest[u][r];
    if (all < 0 || x.jump >= SweepSide.FREE) {
      return all;
    }
    long sum = 0;
    for (int k = 1; k <= r; k++) {
      long at = longest[u][r - k + 1] - longest[u][r - k];
      sum += Math.min(at, s.last[u] + k * x.jump);
    }
    return Math.min(all, sum);
  }
}
