package headcourse.layout.yard.rows;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Gives pieces to the sides of upright heads whose numbers of stones are known: piece by piece, the
 * shortest first, each left lying or given to a side. Of a row of upright stones the order counts
 * only beside the jamb and for neighbours, which differ least in the order of their lengths, so
 * each stone is as long as its piece and the one before it allow.
 *
 * <p>A layered graph: a state is, by side, how many stones have their pieces, what they come to,
 * and the longest. Of each layer those are kept that may saw off least.
 */
final class Sweep {
  private final Store store;
  private final SweepSide[] sides;
  private final int[] pieces;
  private final long[] usable;
  private final long[] upTo;
  private final long[][] longest;
  private final boolean[] paired;
  private final boolean steep;
  private final long uneven;
  private final long most;
  private long floor;
  private long steps;

  /**
   * What is looked for.
   *
   * @param sawn less is to be sawn off; where sides are to differ by less, no more
   * @param imbalance the sides are to differ by less, or {@link Store#NEVER} where that is open
   * @param bearing the bearings are to be off by less
   */
  record Bar(long sawn, long imbalance, long bearing) {
    /** Less sawn off. */
    Bar(long sawn) {
      this(sawn, Store.NEVER, Store.NEVER);
    }

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
    long unlike = 0;
    boolean any = false;
    for (int h = 0; h < paired.length; h++) {
      SweepSide l = this.sides[2 * h];
      SweepSide r = this.sides[2 * h + 1];
      paired[h] = l.pairs(r) && l.stones == r.stones;
      unlike += l.pairs(r) ? l.copies * Math.abs(l.stones - r.stones) * l.head.min() : 0;
      any |= l.jump < Store.NEVER || r.jump < Store.NEVER;
    }
    uneven = unlike;
    steep = any;
    longest = new long[this.sides.length][];
    long sum = 0;
    for (int u = 0; u < this.sides.length; u++) {
      SweepSide x = this.sides[u];
      sum += x.copies * x.most;
      longest[u] = new long[x.stones + 1];
      for (int r = 1; r <= x.stones; r++) {
        int at = free.length - r * x.copies;
        longest[u][r] = at < 0 ? -1 : longest[u][r - 1] + Math.min(x.widest, usable[at]);
      }
    }
    most = sum;
  }

  /** No less is sawn off by what the last run did not look at; {@link Store#NEVER} for nothing. */
  long floor() {
    return floor;
  }

  long steps() {
    return steps;
  }

  /** What is sawn off in any case; {@link Store#NEVER} where the pieces do not suffice. */
  long root() {
    SweepState s = new SweepState(sides.length);
    return low(s, 0);
  }

  /**
   * Runs once.
   *
   * @param width how many states of a layer are kept
   * @param bar what is found must cost less, or saw off no more and differ by less
   * @param few how many it may find
   * @param until how many steps it may take
   * @param seed which of states that come to as little are kept
   * @return what it found, the best first
   */
  List<SweepState> run(int width, Bar bar, int few, long until, int seed) {
    floor = Store.NEVER;
    List<SweepState> done = new ArrayList<>();
    List<Map<SweepState.Key, SweepState>> layers = new ArrayList<>();
    for (int t = 0; t <= pieces.length; t++) {
      layers.add(null);
    }
    SweepState first = new SweepState(sides.length);
    first.low = low(first, 0);
    layers.set(0, new LinkedHashMap<>(Map.of(key(first), first)));
    for (int t = 0; t < pieces.length; t++) {
      Map<SweepState.Key, SweepState> layer = layers.get(t);
      layers.set(t, null);
      if (layer == null) {
        continue;
      }
      for (SweepState s : kept(layer, width, seed)) {
        if (steps > until) {
          floor = 0;
          return sorted(done, few);
        }
        for (int u = 0; u < sides.length; u++) {
          take(s, u, t, bar, layers, done, few);
        }
        on(s, t, t + 1);
        steps++;
        add(s, t + 1, bar, layers);
      }
    }
    return sorted(done, few);
  }

  private static List<SweepState> sorted(List<SweepState> done, int few) {
    done.sort(Comparator.comparingLong((SweepState s) -> s.low).thenComparingLong(s -> s.gap));
    return done.size() > few ? done.subList(0, few) : done;
  }

  /** The states of a layer that may saw off least. */
  private List<SweepState> kept(Map<SweepState.Key, SweepState> layer, int width, int seed) {
    List<Map.Entry<SweepState.Key, SweepState>> all = new ArrayList<>(layer.entrySet());
    Comparator<Map.Entry<SweepState.Key, SweepState>> order =
        Comparator.comparingLong(e -> e.getValue().low);
    if (seed % 2 == 0) {
      order = order.thenComparingLong(e -> e.getValue().gap);
    }
    order = order.thenComparingInt(e -> SweepState.Key.mix(e.getKey().hashCode() + seed));
    all.sort(order);
    List<SweepState> out = new ArrayList<>();
    for (Map.Entry<SweepState.Key, SweepState> e : all) {
      if (out.size() < width) {
        out.add(e.getValue());
      } else {
        floor = Math.min(floor, e.getValue().low);
      }
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

  private void take(
      SweepState s,
      int u,
      int t,
      Bar bar,
      List<Map<SweepState.Key, SweepState>> layers,
      List<SweepState> done,
      int few) {
    SweepSide x = sides[u];
    if (s.count[u] == x.stones || !store.fits(pieces[t], x.h)) {
      return;
    }
    int[] of = new int[x.copies];
    long length = 0;
    int at = t;
    for (int c = 0; c < x.copies; c++) {
      while (at < pieces.length && !store.fits(pieces[at], x.h)) {
        floor = 0;
        at++;
      }
      if (at == pieces.length) {
        return;
      }
      of[c] = pieces[at];
      length += usable[at++];
    }
    long cover = Math.min(usable[t], x.widest);
    cover = Math.min(cover, s.count[u] == 0 ? x.first : s.last[u] + x.jump);
    if (cover < x.narrowest) {
      return;
    }
    steps++;
    SweepState next = new SweepState(s, u, of, cover, length - x.copies * cover);
    boolean whole = true;
    for (int v = 0; v < sides.length; v++) {
      whole &= next.count[v] == sides[v].stones;
    }
    if (!whole) {
      on(next, t, at);
      add(next, at, bar, layers);
      return;
    }
    next.low = whole(next);
    if (open(next, bar) && (bar.bearing() == Store.NEVER || near(next, bar))) {
      done.add(next);
      if (done.size() > 8 * few) {
        sorted(done, few);
        floor = Math.min(floor, done.get(few).low);
        done.subList(few, done.size()).clear();
      }
    }
  }

  private void add(SweepState s, int t, Bar bar, List<Map<SweepState.Key, SweepState>> layers) {
    s.low = low(s, t);
    if (!open(s, bar)) {
      return;
    }
    if (layers.get(t) == null) {
      layers.set(t, new LinkedHashMap<>());
    }
    boolean alike = bar.alike();
    layers
        .get(t)
        .merge(
            key(s),
            s,
            (a, b) -> {
              long one = alike ? a.gap + a.waste : a.waste;
              long two = alike ? b.gap + b.waste : b.waste;
              return two < one || two == one && b.gap < a.gap ? b : a;
            });
  }

  private boolean open(SweepState s, Bar bar) {
    if (!bar.alike()) {
      return s.low < bar.sawn();
    }
    // What is sawn off may make the stones of a pair alike.
    long slack = steep ? bar.sawn() : bar.sawn() - s.waste;
    return s.low <= bar.sawn() && uneven + Math.max(0, s.gap - slack) < bar.imbalance();
  }

  /** Whether bearings may be so near where all sides have their stones. */
  private boolean near(SweepState s, Bar bar) {
    long off = 0;
    for (int u = 0; u < sides.length; u++) {
      off += sides[u].bearing(s.sum[u], s.last[u], bar.sawn());
    }
    return off < bar.bearing();
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

  /** No less is sawn off with the pieces from {@code t} on. */
  private long low(SweepState s, int t) {
    int open = 0;
    long short1 = 0;
    long need = 0;
    long taken = s.waste;
    long over = 0;
    for (int u = 0; u < sides.length; u++) {
      SweepSide x = sides[u];
      int r = x.stones - s.count[u];
      int n = r * x.copies;
      if (t + n > usable.length) {
        return Store.NEVER;
      }
      open += n;
      taken += x.copies * s.sum[u];
      long reach = reach(s, u, r);
      if (reach < 0 || s.sum[u] + reach < x.least) {
        return Store.NEVER;
      }
      long widest = r == 0 ? s.last[u] : Math.min(x.widest, usable[usable.length - 1]);
      if (s.count[u] > 0 && x.jump < Store.NEVER) {
        widest = Math.min(widest, s.last[u] + r * x.jump);
      }
      if (widest < x.last) {
        return Store.NEVER;
      }
      need += x.copies * Math.max(0, x.least - s.sum[u]);
      long extra = shortest(s, u, r, t);
      over += x.copies * Math.max(0, s.sum[u] + extra - x.most);
    }
    if (t + open > usable.length) {
      return Store.NEVER;
    }
    long q = upTo[t + open] - upTo[t];
    return Math.max(s.waste + over, Math.max(taken + Math.max(q, need) - most, s.waste));
  }

  /** What so many more stones of a side come to at least. */
  private long shortest(SweepState s, int u, int r, int t) {
    SweepSide x = sides[u];
    if (r == 0) {
      return 0;
    }
    long first = Math.min(usable[t], x.widest);
    if (s.count[u] > 0 && x.jump < Store.NEVER) {
      first = Math.min(first, s.last[u] + x.jump);
    }
    return r * first;
  }

  /** What so many more stones of a side come to at most, or −1 where they can't be had. */
  private long reach(SweepState s, int u, int r) {
    SweepSide x = sides[u];
    long all = longest[u][r];
    if (all < 0 || s.count[u] == 0 || x.jump >= Store.NEVER) {
      return all;
    }
    long sum = 0;
    for (int k = 1; k <= r; k++) {
      long at = longest[u][r - k + 1] - longest[u][r - k];
      sum += Math.min(at, s.last[u] + k * x.jump);
    }
    return Math.min(all, sum);
  }

  private SweepState.Key key(SweepState s) {
    long[] of = new long[3 * sides.length];
    for (int u = 0; u < sides.length; u++) {
      boolean counts = s.count[u] == sides[u].stones || sides[u].jump < Store.NEVER;
      of[3 * u] = s.count[u];
      of[3 * u + 1] = s.sum[u];
      of[3 * u + 2] = counts ? s.last[u] : 0;
    }
    return new SweepState.Key(of);
  }
}
