package headcourse.stock.fan;

import java.util.Arrays;

/**
 * Whether both sides of a head that are to be alike can come to their ends with nothing sawn off
 * and no more than so much difference, stone by stone, if every piece lay there as often as it is
 * asked for; but two stones across from each other are two pieces. From where all stones follow one
 * rule.
 */
final class FanPairs {
  private final FanRows left;
  private final FanRows right;
  private final int[] count;
  private final int copies;
  private final int each;
  private final long start;
  private final int[][] on;
  private final int[][] onRight;
  private final int[][] ends;
  private final int[][] endsRight;
  private final byte[][][] most;
  private final byte[][][] least;
  private long work;

  /**
   * @param left the left side
   * @param right the right side, its joints at the same places
   * @param count by length: how many pieces there are
   * @param copies how many openings the head stands over
   * @param each how many stones stand on each side, or 0 where that is open
   */
  FanPairs(FanRows left, FanRows right, int[] count, int copies, int each) {
    this.left = left;
    this.right = right;
    this.count = count;
    this.copies = copies;
    this.each = each;
    this.start = Math.min(0, left.start());
    int feet = (int) (left.start() + Math.max(left.last, right.last) - start) + 1;
    this.on = new int[feet][];
    this.onRight = left == right ? on : new int[feet][];
    this.ends = new int[feet][];
    this.endsRight = left == right ? ends : new int[feet][];
    this.most = new byte[each + 1][feet][];
    this.least = new byte[each + 1][feet][];
  }

  /**
   * Whether it can be; true where that is not known.
   *
   * @param stones how many are set on each side
   * @param l foot of the left side, ticks from the centre line
   * @param r foot of the right side
   * @param differ how much both may differ in all from here on
   */
  boolean within(int stones, long l, long r, long differ) {
    // A stone without a partner counts whole.
    if (differ >= left.min || differ >= Byte.MAX_VALUE || each > 0 && stones >= each) {
      return true;
    }
    int rest = Math.max(0, each - stones);
    return differ >= 0 && may(rest, (int) (l - start), (int) (r - start), (int) differ);
  }

  private boolean may(int rest, int l, int r, int differ) {
    int band = left.min;
    int d = r - l + band;
    if (l >= on.length || r >= on.length || d < 0 || d > 2 * band) {
      return false;
    }
    if (least[rest][l] == null) {
      least[rest][l] = new byte[2 * band + 1];
      most[rest][l] = new byte[2 * band + 1];
      Arrays.fill(least[rest][l], Byte.MAX_VALUE);
      Arrays.fill(most[rest][l], (byte) -1);
    }
    if (differ >= least[rest][l][d]) {
      return true;
    }
    if (differ <= most[rest][l][d]) {
      return false;
    }
    boolean found = rest <= 1 && end(l, r, differ) || rest != 1 && next(rest, l, r, differ);
    if (found) {
      least[rest][l][d] = (byte) differ;
    } else {
      most[rest][l][d] = (byte) differ;
    }
    return found;
  }

  private boolean end(int l, int r, int differ) {
    for (int a : ends(left, ends, l)) {
      for (int b : ends(right, endsRight, r)) {
        work++;
        if (Math.abs((a >> 16) - (b >> 16)) <= differ && two(a & 0xFFFF, b & 0xFFFF)) {
          return true;
        }
      }
    }
    return false;
  }

  private boolean next(int rest, int l, int r, int differ) {
    int[] across = on(right, onRight, r);
    int from = 0;
    for (int a : on(left, on, l)) {
      int w = a >> 16;
      while (from < across.length && across[from] >> 16 < w - differ) {
        from++;
      }
      for (int i = from; i < across.length && across[i] >> 16 <= w + differ; i++) {
        int v = across[i] >> 16;
        work++;
        if (two(a & 0xFFFF, across[i] & 0xFFFF)
            && may(
                Math.max(0, rest - 1),
                l + left.joint + w,
                r + left.joint + v,
                differ - Math.abs(w - v))) {
          return true;
        }
      }
    }
    return false;
  }

  /** Whether there are pieces of two lengths for all copies. */
  private boolean two(int a, int b) {
    return a != b || count[a] >= 2 * copies;
  }

  private int[] on(FanRows rows, int[][] known, int at) {
    int foot = (int) (at + start - rows.start());
    if (known[at] == null) {
      known[at] = foot > rows.last ? new int[0] : exact(rows, rows.on(rows.rules(), foot));
    }
    return known[at];
  }

  private int[] ends(FanRows rows, int[][] known, int at) {
    int foot = (int) (at + start - rows.start());
    if (known[at] == null) {
      known[at] = foot > rows.last ? new int[0] : exact(rows, rows.ends(rows.rules(), foot));
    }
    return known[at];
  }

  /** Width and extent of the stones that are just as long as a piece. */
  private int[] exact(FanRows rows, short[] extents) {
    int[] out = new int[extents.length];
    int n = 0;
    for (int w = 0; w < extents.length; w++) {
      if (extents[w] >= 0 && count[extents[w]] >= copies) {
        out[n++] = rows.min + w << 16 | extents[w];
      }
    }
    work += extents.length / 5;
    return Arrays.copyOf(out, n);
  }

  /** How much was worked out. */
  long work() {
    return work;
  }
}
