package headcourse.layout.yard.rows;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.stream.LongStream;
import java.util.stream.Stream;

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

  /** What a choice takes for each piece. */
  private static final int CELLS = 8;

  final List<Choice> all = new ArrayList<>();

  /** Whether there are no others. */
  boolean whole = true;

  private final Pile pile;
  private final Store store;
  private final long until;
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
      List<Integer> ways,
      List<int[]> keys,
      List<SweepSide> sides,
      long sawn,
      Sweep sweep,
      long root) {}

  /** The sides beside a key. */
  private record Pair(int way, SweepSide left, SweepSide right) {
    int stones() {
      return left.stones + right.stones;
    }
  }

  /**
   * @param shortfall no joint and no end may be wanting more spare, pm
   * @param until with so many steps in all it ends; then there may be others
   */
  Numbers(Store store, long shortfall, long until) {
    this.store = store;
    this.until = until;
    pile = store.pile;
    List<List<Pair>> heads = new ArrayList<>();
    for (int h = 0; h < pile.heads().size(); h++) {
      List<Pair> of = new ArrayList<>();
      List<Pile.Way> ways = pile.heads().get(h).ways();
      for (int w = 0; w < ways.size(); w++) {
        List<SweepSide> right = sides(h, ways.get(w).right(), shortfall);
        for (SweepSide l : sides(h, ways.get(w).left(), shortfall)) {
          for (SweepSide r : right) {
            of.add(new Pair(w, l, r));
          }
        }
      }
      heads.add(of);
    }
    collect(heads, new ArrayList<>(), store.ordinary().count());
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
    LongStream feet = LongStream.rangeClosed(side.start(), side.lastEnd());
    long ends = feet.filter(e -> side.bearingOff(e) >= 0).count();
    long stones = (side.lastEnd() - side.start()) / Math.max(1, side.joint() + head.min());
    return Math.max(0, row.each() == 0 ? stones : 1) * ends * (head.max() - head.min() + 1);
  }

  private static boolean plain(Pile.Row row) {
    return row.side() != null && !row.side().fanned() && !row.mayEnd();
  }

  private List<SweepSide> sides(int h, Pile.Row row, long shortfall) {
    Pile.Head head = pile.heads().get(h);
    List<SweepSide> out = new ArrayList<>();
    long room = row.side().lastEnd() - row.side().start();
    long pieces = store.ordinary().count();
    for (int n = 1;
        n * (row.side().joint() + head.min()) <= room && (long) n * head.copies() <= pieces;
        n++) {
      if (row.each() == 0 || row.each() == n) {
        out.add(new SweepSide(head, h, row, n, shortfall));
      }
    }
    out.removeIf(x -> x.ends.isEmpty());
    return out;
  }

  /**
   * @param left pieces that the heads before leave
   */
  private void collect(List<List<Pair>> heads, List<Pair> chosen, long left) {
    int h = chosen.size();
    if (h == heads.size()) {
      choice(chosen);
      return;
    }
    for (Pair pair : heads.get(h)) {
      if (all.size() >= MOST || tried >= TRIED || store.steps.taken() >= until) {
        whole = false;
        return;
      }
      store.steps.cells(1);
      long need = (long) pile.heads().get(h).copies() * pair.stones();
      if (need <= left) {
        chosen.add(pair);
        collect(heads, chosen, left - need);
        chosen.remove(h);
      }
    }
  }

  private void choice(List<Pair> pairs) {
    tried++;
    BitSet used = new BitSet();
    List<int[]> keys = new ArrayList<>();
    long sawn = 0;
    for (int h = 0; h < pairs.size(); h++) {
      Pile.Head head = pile.heads().get(h);
      long key = head.ways().get(pairs.get(h).way()).key();
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
    List<SweepSide> sides = pairs.stream().flatMap(p -> Stream.of(p.left(), p.right())).toList();
    store.steps.cells((long) CELLS * (pile.pieces().size() + pairs.size()));
    Sweep sweep = new Sweep(store, sides, store.ordinary().filter(k -> !used.get(k)).toArray());
    long root = sweep.root();
    if (root < Store.NEVER) {
      List<Integer> ways = pairs.stream().map(Pair::way).toList();
      all.add(new Choice(ways, keys, sides, sawn, sweep, root + sawn));
    }
  }
}
