package headcourse.layout.yard.rows;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * All sets of pieces that make the sides of every head just alike with so much sawn off, and all
 * ways to share them among the heads, whatever the order of their stones: pieces are paired one
 * with the next, and each pair goes to a head. What remains to be asked of each is whether its
 * stones can stand in some order.
 */
final class SetSplit {
  /** With more of them than this it is given up. */
  private static final int MOST = 20_000;

  private static final int FAR = Integer.MAX_VALUE / 4;

  private final long[] usable;
  private final int pieces;
  private final int[][][] apart;
  private final int most;
  private final int longest;
  private final List<Ends> ends = new ArrayList<>();
  private final List<Split> found = new ArrayList<>();
  private final int[] low;
  private final int[] home;
  private final Pile pile;
  private final long shortfall;
  private int pairs;
  private long steps;
  private long limit;

  /** By number of stones a side and what they give in all: how far bearings are off; or −1. */
  private record Ends(long[][] off) {}

  /**
   * Pieces shared among heads.
   *
   * @param lengths by head: what each pair gives
   * @param cuts by head: what is sawn off one of its pairs besides
   * @param bearing how far the bearings are off, pm
   */
  record Split(List<List<Long>> lengths, long[] cuts, long bearing) {}

  /**
   * @param pile heads whose sides are to be alike, one copy of each, with no two ways
   * @param pieces numbers of the pieces that stones may be, the shortest first
   * @param longest the most that they may come to in all
   */
  SetSplit(Pile pile, Store store, int[] pieces, int most, int longest, long shortfall) {
    this.pieces = pieces.length;
    this.most = most;
    this.longest = longest;
    usable = Arrays.stream(pieces).mapToLong(store::usable).toArray();
    apart = new int[pieces.length + 1][most + 1][longest + 1];
    low = new int[most / 2 + 1];
    home = new int[most / 2 + 1];
    this.pile = pile;
    this.shortfall = shortfall;
    fill();
    for (Pile.Head head : pile.heads()) {
      ends.add(ends(head, shortfall));
    }
  }

  /** Whether a pile is such that sides just alike are a matter of sets. */
  static boolean applies(Pile pile, Store store) {
    return store.alike()
        && pile.heads().stream()
            .allMatch(
                h ->
                    h.mirror()
                        && h.copies() == 1
                        && h.ways().size() == 1
                        && h.ways()
                            .get(0)
                            .left()
                            .side()
                            .rule()
                            .equals(h.ways().get(0).right().side().rule())
                        && h.ways().get(0).left().side().start()
                            == h.ways().get(0).right().side().start());
  }

  private void fill() {
    for (int[][] layer : apart) {
      for (int[] row : layer) {
        Arrays.fill(row, FAR);
      }
    }
    apart[0][0][0] = 0;
    for (int k = 0; k < pieces; k++) {
      int gap = k == 0 ? 0 : (int) (usable[k] - usable[k - 1]);
      int u = (int) usable[k];
      for (int m = 0; m <= most; m++) {
        for (int t = 0; t <= longest; t++) {
          int now = Math.min(FAR, apart[k][m][t] + (m % 2 == 1 ? gap : 0));
          if (m > 0 && t >= u) {
            int open = (m - 1) % 2 == 1 ? gap : 0;
            now = Math.min(now, apart[k][m - 1][t - u] + open);
          }
          apart[k + 1][m][t] = Math.min(FAR, now);
        }
      }
    }
  }

  private static Ends ends(Pile.Head head, long shortfall) {
    Pile.Row row = head.ways().get(0).left();
    RowSide side = row.side();
    int n = (int) ((side.lastEnd() - side.start()) / (side.joint() + head.min()));
    long[][] off = new long[n + 1][];
    long extras = 0;
    for (int i = 1; i <= n; i++) {
      long step = side.joint() + head.min();
      extras += side.extent(i, side.start(), side.start() + step, false) - head.min();
      off[i] = new long[(int) (side.lastEnd() - side.start() + extras) + 1];
      Arrays.fill(off[i], -1);
      for (long e = side.start(); e <= side.lastEnd(); e++) {
        long widths = e - side.start() - i * side.joint();
        boolean counts = row.each() == 0 || row.each() == i;
        if (counts
            && widths > 0
            && side.bearingOff(e) >= 0
            && side.shortfall(i, e, true) <= shortfall) {
          off[i][(int) (widths + extras)] = 2 * side.bearingOff(e);
        }
      }
    }
    return new Ends(off);
  }

  /**
   * All of them, the bearings nearest their targets first; null where there are too many.
   *
   * @param off length sawn off the stones in all, just that
   * @param wants how many stones and what length of pieces are to be had
   * @param within how many steps it may take
   */
  List<Split> all(long off, List<SetBound.Want> wants, long within) {
    found.clear();
    limit = within;
    steps = 0;
    for (SetBound.Want w : wants) {
      if (w.stones() % 2 == 0) {
        pairs = 0;
        pick(pieces, w.stones(), w.length(), off, -1);
      }
    }
    if (over()) {
      return null;
    }
    found.sort(Comparator.comparingLong(Split::bearing));
    return found;
  }

  long steps() {
    return steps / 8;
  }

  private boolean over() {
    return found.size() > MOST || steps > limit;
  }

  /** Takes pieces from the longest down; one that waits is the longer of a pair. */
  private void pick(int k, int m, int t, long budget, int waiting) {
    steps++;
    if (over() || budget < 0) {
      return;
    }
    if (m == 0) {
      share(budget);
      return;
    }
    if (k == 0) {
      return;
    }
    int u = (int) usable[k - 1];
    int gap = k == 1 ? 0 : (int) (usable[k - 1] - usable[k - 2]);
    // Left: the pair that waits opens wider.
    int left = m % 2 == 1 ? gap : 0;
    if (apart[k - 1][m][t] + left <= budget) {
      pick(k - 1, m, t, budget - left, waiting);
    }
    int open = (m - 1) % 2 == 1 ? gap : 0;
    if (t >= u && apart[k - 1][m - 1][t - u] + open <= budget) {
      if (waiting < 0) {
        pick(k - 1, m - 1, t - u, budget - open, k - 1);
      } else {
        low[pairs] = k - 1;
        pairs++;
        pick(k - 1, m - 1, t - u, budget - open, -1);
        pairs--;
      }
    }
  }

  private void share(long extra) {
    if (extra % 2 == 0) {
      share(0, new int[ends.size()], new long[ends.size()], extra / 2);
    }
  }

  /** Each pair to a head; what is to be sawn off besides, off any of them. */
  private void share(int pair, int[] n, long[] sum, long extra) {
    steps++;
    if (over()) {
      return;
    }
    if (pair == pairs) {
      bearings(0, n, sum, extra, new long[n.length], 0);
      return;
    }
    for (int h = 0; h < n.length; h++) {
      n[h]++;
      sum[h] += usable[low[pair]];
      home[pair] = h;
      if (n[h] < ends.get(h).off().length
          && sum[h] - extra < ends.get(h).off()[ends.get(h).off().length - 1].length) {
        share(pair + 1, n, sum, extra);
      }
      n[h]--;
      sum[h] -= usable[low[pair]];
    }
  }

  private void bearings(int h, int[] n, long[] sum, long extra, long[] cuts, long bearing) {
    if (h == n.length) {
      if (extra == 0) {
        List<List<Long>> lengths = new ArrayList<>();
        for (int g = 0; g < n.length; g++) {
          lengths.add(new ArrayList<>());
        }
        for (int i = 0; i < pairs; i++) {
          lengths.get(home[i]).add(usable[low[i]]);
        }
        found.add(new Split(lengths, cuts.clone(), bearing));
      }
      return;
    }
    long[] off = n[h] == 0 ? new long[0] : ends.get(h).off()[n[h]];
    for (long cut = 0; cut <= extra; cut++) {
      long s = sum[h] - cut;
      if (s >= 0 && s < off.length && off[(int) s] >= 0) {
        cuts[h] = cut;
        bearings(h + 1, n, sum, extra - cut, cuts, bearing + off[(int) s]);
      }
    }
  }

  /** The widths of a head's pairs in an order in which they can stand, outwards; or null. */
  List<Long> order(int h, Split split) {
    return order(h, new ArrayList<>(split.lengths().get(h)), 0, split.cuts()[h]);
  }

  /** The same with so much more to be sawn off pairs from one on. */
  private List<Long> order(int h, List<Long> lengths, int from, long cut) {
    if (cut == 0) {
      List<Long> out = new ArrayList<>();
      return place(pile.heads().get(h), lengths, out) ? out : null;
    }
    for (int i = from; i < lengths.size(); i++) {
      for (long c = 1; c <= cut; c++) {
        List<Long> less = new ArrayList<>(lengths);
        less.set(i, less.get(i) - c);
        List<Long> out = order(h, less, i + 1, cut - c);
        if (out != null) {
          return out;
        }
      }
    }
    return null;
  }

  private boolean place(Pile.Head head, List<Long> left, List<Long> out) {
    steps++;
    if (left.isEmpty()) {
      return true;
    }
    Pile.Way way = head.ways().get(0);
    RowSide side = way.left().side();
    int i = out.size() + 1;
    long foot = side.start();
    for (long w : out) {
      foot += side.joint() + w;
    }
    long step = side.joint() + head.min();
    long extra = side.extent(i, side.start(), side.start() + step, false) - head.min();
    for (int k = 0; k < left.size(); k++) {
      long w = left.get(k) - extra;
      long before = out.isEmpty() ? w : out.get(out.size() - 1);
      long outer = foot + side.joint() + w;
      boolean last = left.size() == 1;
      if (left.indexOf(left.get(k)) == k
          && w >= head.min()
          && w <= head.max()
          && Math.abs(w - before) <= head.jump()
          && side.stands(i, foot, outer, last)
          && side.shortfall(i, outer, last) <= shortfall) {
        List<Long> rest = new ArrayList<>(left);
        rest.remove(k);
        out.add(w);
        if (place(head, rest, out)) {
          return true;
        }
        out.remove(out.size() - 1);
      }
    }
    return false;
  }
}
