package headcourse.layout.yard.rows;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What heads of upright stones cost at least, whatever the order of their stones: by a dynamic
 * programme over the pieces, the shortest first, each taken or not.
 *
 * <p>Stones saw off what their pieces have more than the sides need in all. Where the sides are to
 * be alike, the pieces taken are paired one with the next, and what the two of a pair differ by is
 * either sawn off or stands as a difference of the sides: no other pairing differs by less.
 */
final class SetBound {
  /** With more ways than this, or longer rows, it is left. */
  private static final int MOST_WAYS = 64;

  private static final long MOST_CELLS = 40_000_000;

  /** A pair of needs put together in order takes as long as so many cells. */
  private static final int PAIR = 16;

  /** How many cells are a step. */
  private static final int STEP = 64;

  private static final int FAR = Integer.MAX_VALUE / 4;

  private final Pile pile;
  private final Store store;
  private final long[] usable;
  private final int[] pieces;
  private final boolean paired;
  private final List<Need> needs = new ArrayList<>();
  private final long shortfall;
  private final long pairs;
  private boolean applies;
  private long uneven = Store.NEVER;
  private int most;
  private int longest;
  private int[][] apart;
  private long steps;

  /**
   * What heads may need in all.
   *
   * @param stones pieces for ordinary stones
   * @param length what these give along their blanks
   * @param bearing how far bearings are off at least, pm
   * @param keys what is sawn off keys at least
   */
  private record Need(int stones, long length, long bearing, long keys) {
    Need plus(Need o) {
      return new Need(stones + o.stones, length + o.length, bearing + o.bearing, keys + o.keys);
    }

    long key() {
      return (long) stones << 40 | length;
    }

    /** What costs no more than either. */
    Need least(Need o) {
      return new Need(stones, length, Math.min(bearing, o.bearing), Math.min(keys, o.keys));
    }
  }

  /**
   * @param cap how much may be sawn off
   * @param shortfall no end may be wanting more spare, pm
   * @param limit how many steps all of the search may take
   */
  SetBound(Pile pile, Store store, long cap, long shortfall, long limit) {
    this.shortfall = shortfall;
    long cellsAtMost = Math.min(MOST_CELLS, limit * STEP / 4);
    this.pairs = cellsAtMost / PAIR;
    this.pile = pile;
    this.store = store;
    paired = pile.heads().stream().allMatch(Pile.Head::mirror);
    boolean[] any = new boolean[store.size()];
    for (int h = 0; h < pile.heads().size(); h++) {
      for (int k : store.of(h, false)) {
        any[k] = true;
      }
    }
    pieces = java.util.stream.IntStream.range(0, any.length).filter(k -> any[k]).toArray();
    usable = Arrays.stream(pieces).mapToLong(store::usable).toArray();
    applies = !pile.ticketed() && pile.heads().stream().allMatch(SetBound::plain);
    if (applies) {
      Map<Long, Need> all = new TreeMap<>(Map.of(0L, new Need(0, 0, 0, 0)));
      for (int h = 0; h < pile.heads().size() && applies; h++) {
        all = together(all, head(h));
      }
      needs.addAll(all.values());
      for (Need n : needs) {
        most = Math.max(most, n.stones());
        longest = (int) Math.max(longest, n.length() + Math.min(cap, Arrays.stream(usable).sum()));
      }
      long cells = (long) most * longest * Math.max(1, pieces.length);
      applies &= cells <= cellsAtMost;
    }
    if (applies) {
      fill();
    }
  }

  private static boolean plain(Pile.Head head) {
    return head.ways().size() <= MOST_WAYS
        && head.ways().stream().allMatch(w -> plain(w.left()) && plain(w.right()));
  }

  private static boolean plain(Pile.Row row) {
    return row.side() != null && !row.side().fanned() && !row.mayEnd() && row.there().isEmpty();
  }

  boolean applies() {
    return applies;
  }

  long steps() {
    return steps / STEP;
  }

  private Map<Long, Need> together(Map<Long, Need> a, Map<Long, Need> b) {
    Map<Long, Need> out = new TreeMap<>();
    if (tooMany(a.size(), b.size())) {
      return out;
    }
    for (Need x : a.values()) {
      for (Need y : b.values()) {
        Need z = x.plus(y);
        out.merge(z.key(), z, Need::least);
      }
    }
    return out;
  }

  /** Whether so many pairs are more than can be put together; else they are counted. */
  private boolean tooMany(int a, int b) {
    long more = (long) a * b * PAIR;
    applies &= steps + more <= pairs * PAIR;
    steps += applies ? more : 0;
    return !applies;
  }

  private Map<Long, Need> head(int h) {
    Pile.Head head = pile.heads().get(h);
    Map<Long, Need> out = new TreeMap<>();
    for (Pile.Way way : head.ways()) {
      long keys = way.key() < 0 ? 0 : store.waste(h, true, way.key());
      if (keys >= Store.NEVER) {
        continue;
      }
      List<Need> left = side(head, way.left());
      List<Need> right = way.right().equals(way.left()) ? left : side(head, way.right());
      if (tooMany(left.size(), right.size())) {
        return out;
      }
      for (Need l : left) {
        for (Need r : right) {
          Need both = l.plus(r).plus(new Need(0, 0, 0, keys));
          if (head.mirror() && l.stones() != r.stones()) {
            uneven = Math.min(uneven, Math.abs(l.stones() - r.stones()) * head.min());
          }
          out.merge(both.key(), both, Need::least);
        }
      }
    }
    return out;
  }

  private List<Need> side(Pile.Head head, Pile.Row row) {
    List<Need> out = new ArrayList<>();
    RowSide side = row.side();
    long widest = usable.length == 0 ? -1 : Math.min(head.max(), usable[usable.length - 1]);
    long extras = 0;
    for (int n = 1; row.each() == 0 || n <= row.each(); n++) {
      long step = side.joint() + head.min();
      if (side.start() + n * step > side.lastEnd()) {
        break;
      }
      extras += side.extent(n, side.start(), side.start() + step, false) - head.min();
      for (long e = side.start();
          (row.each() == 0 || n == row.each()) && e <= side.lastEnd();
          e++) {
        long widths = e - side.start() - n * side.joint();
        long off = side.bearingOff(e);
        boolean lands = off >= 0 && side.shortfall(n, e, true) <= shortfall;
        if (lands && widths >= n * head.min() && widths <= n * widest) {
          int c = head.copies();
          out.add(new Need(c * n, c * (widths + extras), c * off, 0));
        }
      }
    }
    return out;
  }

  /** By number of pieces and their length in all: the least that pairs of them differ by. */
  private void fill() {
    apart = new int[most + 1][longest + 1];
    for (int[] row : apart) {
      Arrays.fill(row, FAR);
    }
    apart[0][0] = 0;
    for (int k = 0; k < pieces.length; k++) {
      int gap = k == 0 || !paired ? 0 : (int) (usable[k] - usable[k - 1]);
      for (int m = 1; m <= most && gap > 0; m += 2) {
        for (int t = 0; t <= longest; t++) {
          apart[m][t] = Math.min(FAR, apart[m][t] + gap);
        }
      }
      int u = (int) usable[k];
      for (int m = Math.min(k, most - 1); m >= 0; m--) {
        steps += longest;
        for (int t = longest - u; t >= 0; t--) {
          if (apart[m][t] < apart[m + 1][t + u]) {
            apart[m + 1][t + u] = apart[m][t];
          }
        }
      }
    }
  }

  /**
   * The least that any choice may cost that saws off no more than the cap; null where there is
   * none.
   *
   * @param alike whether what is sawn off within the cap counts as none
   */
  Cost least(long cap, boolean alike) {
    Cost best = null;
    for (Need n : needs) {
      long to = Math.min(longest, n.length() + Math.max(0, cap - n.keys()));
      for (long t = n.length(); t <= to; t++) {
        int gap = apart[n.stones()][(int) t];
        if (gap < FAR) {
          long sawn = t - n.length();
          boolean odd = n.stones() % 2 == 1;
          long unlike = !alike || !paired ? 0 : odd ? uneven : Math.max(0, gap - sawn);
          Cost cost = new Cost(0, 0, 0, sawn + n.keys(), Math.min(unlike, uneven), n.bearing());
          best = best == null || cost.compare(best, alike ? cap : 0) < 0 ? cost : best;
        }
      }
    }
    return best;
  }
}
