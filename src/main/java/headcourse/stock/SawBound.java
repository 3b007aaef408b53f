package headcourse.stock;

import java.util.Arrays;
import java.util.BitSet;

/**
 * What must be sawn off at least, whatever the order of the stones.
 *
 * <p>So many pieces that reach an end are together at least so long; the least such sum comes from
 * a table by number and width. Each side is bounded by itself from the whole pile, and all sides
 * together as one long row of as many stones.
 */
final class SawBound {
  private static final long TOO_MUCH = 400_000_000;

  /** More than any pile has. */
  static final long NONE = Long.MAX_VALUE / 4;

  private final Pile pile;
  private final PileTypes types;

  private final SideFeet[][] feet;

  /** By head, side and end: the least sawn off one copy. */
  private final long[][][] byEnd;

  /** By head, side and end of one copy: the least sawn off all sides together. */
  private final long[][][] allByEnd;

  private final long apart;
  private final long together;
  private long work;

  SawBound(Pile pile, PileTypes types) {
    this.pile = pile;
    this.types = types;
    int heads = pile.heads().size();
    byEnd = new long[heads][2][];
    allByEnd = new long[heads][2][];
    feet = new SideFeet[heads][2];
    long widest = types.usable[types.size() - 1];
    long sum = 0;
    for (int h = 0; h < heads; h++) {
      for (int s = 0; s < 2; s++) {
        PileSide side = pile.heads().get(h).side(s);
        feet[h][s] = new SideFeet(pile.heads().get(h), side, most(h), widest);
      }
      long[][] table = table(h, most(h), reach(h));
      for (int s = 0; s < 2; s++) {
        byEnd[h][s] = ends(h, s, table);
        sum = Math.min(NONE, sum + pile.heads().get(h).copies() * least(h, s));
      }
    }
    apart = sum;
    together = together();
  }

  /** Work it took, in steps of a search. */
  long work() {
    return work / 4_000;
  }

  /** No choice saws off less; huge where there is none. */
  long least() {
    return Math.max(apart, together);
  }

  /** The least sawn off a copy of one side by itself. */
  long least(int h, int s) {
    return Arrays.stream(byEnd[h][s]).min().orElse(NONE);
  }

  /** The least that bearings are off their targets where no more than so much is sawn off, pm. */
  long bearing(long sawn) {
    long sum = 0;
    for (int h = 0; h < byEnd.length; h++) {
      int c = pile.heads().get(h).copies();
      for (int s = 0; s < 2; s++) {
        PileSide side = pile.heads().get(h).side(s);
        long off = NONE;
        for (int i = 0; i < byEnd[h][s].length; i++) {
          if (byEnd[h][s][i] < NONE
              && allByEnd[h][s][i] <= sawn
              && apart - least(h, s) + byEnd[h][s][i] <= sawn) {
            off = Math.min(off, side.bearingOff(side.firstEnd() + i));
          }
        }
        sum += off == NONE ? 0 : c * off;
      }
    }
    return sum;
  }

  private int most(int h) {
    int n = 0;
    for (int s = 0; s < 2; s++) {
      n = Math.max(n, new SweepSums(pile.heads().get(h), pile.heads().get(h).side(s)).most);
    }
    return n;
  }

  private long reach(int h) {
    long most = 0;
    for (int s = 0; s < 2; s++) {
      PileSide side = pile.heads().get(h).side(s);
      most = Math.max(most, side.lastEnd() - side.start() + most(h) * types.extra(h));
    }
    return most;
  }

  /**
   * By number of pieces and width that they must cover: their least sum. Of a piece that is longer
   * than a stone may be only so much covers.
   *
   * @param h head; all heads where it is their number
   */
  private long[][] table(int h, int most, long reach) {
    int pieces = Arrays.stream(types.count).sum();
    int n = Math.min(most, pieces);
    if (n <= 0 || reach <= 0 || (double) pieces * n * reach > TOO_MUCH) {
      return null;
    }
    work += (long) pieces * n * reach;
    int width = (int) reach;
    long[][] least = new long[n + 1][width + 1];
    for (long[] row : least) {
      Arrays.fill(row, NONE);
    }
    least[0][0] = 0;
    for (int t = 0; t < types.size(); t++) {
      int covers = covers(h, t);
      for (int k = 0; k < types.count[t] && covers > 0; k++) {
        for (int i = n; i > 0; i--) {
          for (int x = width; x >= 0; x--) {
            long with = least[i - 1][Math.max(0, x - covers)] + types.usable[t];
            least[i][x] = Math.min(least[i][x], with);
          }
        }
      }
    }
    return least;
  }

  /** How much of a stone a type makes at most; 0 where it makes none. */
  private int covers(int only, int t) {
    long most = 0;
    for (int h = 0; h < pile.heads().size(); h++) {
      Pile.Head head = pile.heads().get(h);
      if ((only == h || only == pile.heads().size())
          && types.fits.get(t).get(h)
          && types.usable[t] >= head.min()) {
        most = Math.max(most, Math.min(types.usable[t], head.max() + types.extra(h)));
      }
    }
    return (int) most;
  }

  private long[] ends(int h, int s, long[][] table) {
    PileSide side = pile.heads().get(h).side(s);
    SweepSums sums = new SweepSums(pile.heads().get(h), side);
    long[] out = new long[(int) Math.max(0, side.lastEnd() - side.firstEnd() + 1)];
    Arrays.fill(out, table == null ? 0 : NONE);
    for (int i = 0; i < out.length && table != null; i++) {
      long e = side.firstEnd() + i;
      for (int n = sums.fewest; n <= sums.most && n < table.length; n++) {
        long need = e - sums.end(n, 0);
        if (stands(h, s, n, e) && need > 0 && need < table[n].length) {
          out[i] = Math.min(out[i], table[n][(int) need] - need);
        }
      }
      out[i] = out[i] > NONE / 2 ? NONE : out[i];
    }
    return out;
  }

  /** All sides as one row. */
  private long together() {
    int most = 0;
    long reach = 0;
    for (int h = 0; h < byEnd.length; h++) {
      most += 2 * pile.heads().get(h).copies() * most(h);
      reach += 2 * pile.heads().get(h).copies() * reach(h);
    }
    long[][] table = table(byEnd.length, most, reach);
    if (table == null) {
      for (int h = 0; h < byEnd.length; h++) {
        for (int s = 0; s < 2; s++) {
          allByEnd[h][s] = new long[byEnd[h][s].length];
        }
      }
      return 0;
    }
    long least = NONE;
    for (int h = 0; h < byEnd.length; h++) {
      for (int s = 0; s < 2; s++) {
        allByEnd[h][s] = allByEnd(h, s, others(h, s, table.length), table);
        least = Arrays.stream(allByEnd[h][s]).min().orElse(NONE);
      }
    }
    return least;
  }

  private boolean stands(int h, int s, int n, long end) {
    return pile.heads().get(h).side(s).bearingOff(end) >= 0 && feet[h][s].comesOut(n, end);
  }

  /** By number of stones: what all sides but a copy of one may come to. */
  private BitSet[] others(int head, int side, int numbers) {
    BitSet[] sums = new BitSet[numbers];
    Arrays.setAll(sums, i -> new BitSet());
    sums[0].set(0);
    for (int h = 0; h < byEnd.length; h++) {
      for (int s = 0; s < 2; s++) {
        for (int c = h == head && s == side ? 1 : 0; c < pile.heads().get(h).copies(); c++) {
          sums = with(sums, h, s);
        }
      }
    }
    return sums;
  }

  private long[] allByEnd(int h, int s, BitSet[] others, long[][] table) {
    PileSide side = pile.heads().get(h).side(s);
    SweepSums sums = new SweepSums(pile.heads().get(h), side);
    long[] out = new long[byEnd[h][s].length];
    Arrays.fill(out, NONE);
    for (int i = 0; i < out.length; i++) {
      long e = side.firstEnd() + i;
      for (int n = sums.fewest; n <= sums.most && n < table.length; n++) {
        long need = e - sums.end(n, 0);
        for (int m = 0; m + n < table.length && need > 0 && stands(h, s, n, e); m++) {
          long[] row = table[m + n];
          for (int x = others[m].nextSetBit(0); x >= 0; x = others[m].nextSetBit(x + 1)) {
            long all = x + need;
            if (all < row.length && row[(int) all] < NONE) {
              out[i] = Math.min(out[i], row[(int) all] - all);
            }
          }
        }
      }
    }
    return out;
  }

  private BitSet[] with(BitSet[] before, int h, int s) {
    PileSide side = pile.heads().get(h).side(s);
    SweepSums sums = new SweepSums(pile.heads().get(h), side);
    BitSet[] out = new BitSet[before.length];
    Arrays.setAll(out, i -> new BitSet());
    for (int n = sums.fewest; n <= sums.most; n++) {
      for (long e = side.firstEnd(); e <= side.lastEnd(); e++) {
        long need = e - sums.end(n, 0);
        if (!stands(h, s, n, e) || need <= 0) {
          continue;
        }
        for (int m = 0; m + n < out.length; m++) {
          for (int x = before[m].nextSetBit(0); x >= 0; x = before[m].nextSetBit(x + 1)) {
            out[m + n].set((int) (x + need));
          }
        }
      }
    }
    return out;
  }
}
