package headcourse.stock.fan;

import java.util.Arrays;

/**
 * What is left to a side from each foot on where all stones follow one rule, whatever key it began
 * beside: the least that must be sawn off to come to one of the ends aimed at, and the least that
 * its bearing is off, if every piece lay there as often as it is asked for. Where neighbours may
 * differ by so much only, that is kept to.
 */
final class FanTail {
  private final int each;
  private final long start;
  private final int[][] sawn;
  private final long[][] off;
  private final int min;
  private final long jump;

  /** Of the widths with which the next stone may go on to an end: how many are less. */
  private final short[][][] less;

  private long work;

  /**
   * @param rows the side
   * @param waste by extent: what is sawn off the shortest pieces that hold it, for all copies
   * @param firstEnd the least foot aimed at
   * @param lastEnd the greatest
   * @param each how many stones stand on the side, or 0 where that is open
   * @param from the least foot that is asked for, negative beside a narrower key
   */
  FanTail(FanRows rows, int[] waste, int firstEnd, int lastEnd, int each, int from) {
    this.each = each;
    this.min = rows.min;
    this.jump = rows.jump;
    this.start = rows.start() + from;
    this.sawn = new int[each + 1][Math.max(0, rows.last - from + 1)];
    this.off = new long[each + 1][sawn[0].length];
    this.less = jump >= rows.max - rows.min ? null : new short[each + 1][sawn[0].length][];
    for (int n = 0; n <= each; n++) {
      Arrays.fill(sawn[n], FanReach.NEVER);
      Arrays.fill(off[n], Long.MAX_VALUE / 4);
    }
    for (int n = each > 0 ? 1 : 0; n <= each; n++) {
      int next = each > 0 ? n - 1 : 0;
      for (int f = lastEnd - rows.joint - rows.min; f >= from; f--) {
        fill(rows, waste, firstEnd, lastEnd, n, next, f, f - from);
      }
    }
  }

  private void fill(
      FanRows rows, int[] waste, int firstEnd, int lastEnd, int n, int next, int foot, int at) {
    short[] on = rows.on(rows.rules(), foot);
    short[] ends = n <= 1 ? rows.ends(rows.rules(), foot) : null;
    int best = FanReach.NEVER;
    long near = Long.MAX_VALUE / 4;
    short[] may = less == null ? null : new short[on.length + 1];
    for (int w = 0; w < on.length; w++) {
      int step = rows.joint + rows.min + w;
      int outer = foot + step;
      boolean comes = false;
      if (ends != null && outer >= firstEnd && outer <= lastEnd && ends[w] >= 0) {
        best = Math.min(best, waste[ends[w]]);
        near = Math.min(near, rows.off(outer));
        comes = waste[ends[w]] < FanReach.NEVER;
      }
      if (n != 1
          && on[w] >= 0
          && sawn[next][at + step] < FanReach.NEVER
          && follows(next, at + step, rows.min + w)) {
        best = Math.min(best, waste[on[w]] + sawn[next][at + step]);
        near = Math.min(near, off[next][at + step]);
        comes |= waste[on[w]] < FanReach.NEVER;
      }
      if (may != null) {
        may[w + 1] = (short) (may[w] + (comes ? 1 : 0));
      }
    }
    if (less != null) {
      less[n][at] = may;
    }
    work += on.length;
    sawn[n][at] = Math.min(FanReach.NEVER, best);
    off[n][at] = near;
  }

  private boolean follows(int rest, int at, long width) {
    if (less == null) {
      return true;
    }
    short[] n = less[rest][at];
    if (n == null) {
      return false;
    }
    int low = (int) Math.max(0, width - jump - min);
    int high = (int) Math.min(n.length - 1L, width + jump - min + 1);
    return low < high && n[high] > n[low];
  }

  /**
   * Whether a stone may follow one of such a width.
   *
   * @param stones how many are set
   * @param foot where the next begins, ticks from the centre line
   */
  boolean follows(int stones, long foot, long width) {
    int rest = each - stones;
    return (each == 0 || rest > 0) && follows(Math.max(0, rest), (int) (foot - start), width);
  }

  /**
   * The least to be sawn off.
   *
   * @param stones how many are set
   * @param foot where the next begins, ticks from the centre line
   */
  int sawn(int stones, long foot) {
    int rest = each - stones;
    return each > 0 && rest <= 0 ? FanReach.NEVER : sawn[Math.max(0, rest)][(int) (foot - start)];
  }

  /** The least that the bearing is off, pm. */
  long off(int stones, long foot) {
    int rest = each - stones;
    return each > 0 && rest <= 0
        ? Long.MAX_VALUE / 4
        : off[Math.max(0, rest)][(int) (foot - start)];
  }

  long work() {
    return work;
  }
}
