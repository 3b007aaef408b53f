package headcourse.layout.yard.rows;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;

/**
 * How many stones the sides of upright heads may get, and beside which keys; those first that may
 * saw off least.
 */
final class Numbers {
  /** No more than these are looked at. */
  private static final int MOST = 2_000;

  /** Nor are more tried, of which some have no pieces in any case. */
  private static final int TRIED = 10 * MOST;

  /** Ends times widths of the last stone in all: with more of them it takes too long to begin. */
  private static final long LASTS = 4_000_000;

  private final Pile pile;
  private final Store store;
  private final long shortfall;
  private final List<Choice> all = new ArrayList<>();
  private boolean whole = true;
  private int tried;

  /**
   * One choice of numbers.
   *
   * @param ways by head: its key
   * @param keys by head: the key's pieces
   * @param sides left and right of each head in turn
   * @param sawn off the keys
   * @param sweep over the pieces that are left
   * @param root what is sawn off in any case, keys included
   */
  record Choice(
      int[] ways, List<int[]> keys, List<SweepSide> sides, long sawn, Sweep sweep, long root) {}

  /**
   * @param shortfall no joint and no end may be wanting more spare, pm
   */
  Numbers(Store store, long shortfall) {
    pile = store.pile;
    this.store = store;
    this.shortfall = shortfall;
    List<List<List<SweepSide>>> heads = new ArrayList<>();
    List<List<Integer>> ways = new ArrayList<>();
    for (int h = 0; h < pile.heads().size(); h++) {
      List<List<SweepSide>> of = new ArrayList<>();
      List<Integer> way = new ArrayList<>();
      for (int w = 0; w < pile.heads().get(h).ways().size(); w++) {
        for (List<SweepSide> pair : pairs(h, w)) {
          of.add(pair);
          way.add(w);
        }
      }
      heads.add(of);
      ways.add(way);
    }
    collect(heads, ways, new ArrayList<>(), new ArrayList<>());
    all.sort(Comparator.comparingLong(Choice::root));
  }

  /** Whether heads are such that the order of stones hardly counts. */
  static boolean apply(Pile pile) {
    long lasts = 0;
    for (Pile.Head h : pile.heads()) {
      for (Pile.Way w : h.ways()) {
        if (pile.ticketed() || !plain(w.left()) || !plain(w.right())) {
          return false;
        }
        lasts += lasts(h, w.left()) + lasts(h, w.right());
      }
    }
    return lasts <= LASTS;
  }

  private static long lasts(Pile.Head head, Pile.Row row) {
    RowSide side = row.side();
    long ends = 0;
    for (long e = side.start(); e <= side.lastEnd(); e++) {
      ends += side.bearingOff(e) >= 0 ? 1 : 0;
    }
    long stones = (side.lastEnd() - side.start()) / Math.max(1, side.joint() + head.min());
    return Math.max(0, row.each() == 0 ? stones : 1) * ends * (head.max() - head.min() + 1);
  }

  private static boolean plain(Pile.Row row) {
    return row.side() != null && !row.side().fanned() && !row.mayEnd();
  }

  List<Choice> all() {
    return all;
  }

  /** Whether there are no others. */
  boolean whole() {
    return whole;
  }

  private List<List<SweepSide>> pairs(int h, int w) {
    Pile.Way way = pile.heads().get(h).ways().get(w);
    List<SweepSide> left = sides(h, 0, way.left());
    List<SweepSide> right = sides(h, 1, way.right());
    List<List<SweepSide>> out = new ArrayList<>();
    for (SweepSide l : left) {
      for (SweepSide r : right) {
        out.add(List.of(l, r));
      }
    }
    return out;
  }

  private List<SweepSide> sides(int h, int s, Pile.Row row) {
    Pile.Head head = pile.heads().get(h);
    List<SweepSide> out = new ArrayList<>();
    long room = row.side().lastEnd() - row.side().start();
    for (int n = 1; n * (row.side().joint() + head.min()) <= room; n++) {
      if (row.each() == 0 || row.each() == n) {
        SweepSide x = new SweepSide(head, h, s, row, n, shortfall);
        if (x.possible()) {
          out.add(x);
        }
      }
    }
    return out;
  }

  private void collect(
      List<List<List<SweepSide>>> heads,
      List<List<Integer>> ways,
      List<SweepSide> sides,
      List<Integer> way) {
    int h = way.size();
    if (h == heads.size()) {
      choice(sides, way);
      return;
    }
    for (int i = 0; i < heads.get(h).size(); i++) {
      if (all.size() >= MOST || tried >= TRIED) {
        whole = false;
        return;
      }
      sides.addAll(heads.get(h).get(i));
      way.add(ways.get(h).get(i));
      collect(heads, ways, sides, way);
      way.remove(h);
      sides.subList(2 * h, sides.size()).clear();
    }
  }

  private void choice(List<SweepSide> sides, List<Integer> way) {
    tried++;
    BitSet used = new BitSet();
    List<int[]> keys = new ArrayList<>();
    long sawn = 0;
    for (int h = 0; h < way.size(); h++) {
      Pile.Head head = pile.heads().get(h);
      long key = head.ways().get(way.get(h)).key();
      int[] of = key < 0 ? new int[0] : store.shortest(used, h, true, key, head.copies());
      if (of == null) {
        return;
      }
      for (int k : of) {
        used.set(k);
        sawn += store.usable(k) - key;
      }
      keys.add(of);
    }
    int[] free = store.ordinary().filter(k -> !used.get(k)).toArray();
    Sweep sweep = new Sweep(store, sides, free);
    long root = sweep.root();
    if (root < Store.NEVER) {
      all.add(
          new Choice(
              way.stream().mapToInt(w -> w).toArray(),
              keys,
              List.copyOf(sides),
              sawn,
              sweep,
              root + sawn));
    }
  }
}
