package headcourse.stock.fan;

import java.util.Arrays;

/**
 * What is left to a side from each of its joints, if every piece lay there as often as it is asked
 * for: the least that must be sawn off to come to one of the ends aimed at, and the least that its
 * bearing is off. No choice from the pile does better.
 */
final class FanReach {
  static final int NEVER = Integer.MAX_VALUE / 4;

  final FanRows rows;
  final int firstEnd;
  final int lastEnd;
  private final int fewest;
  private final int most;
  private final FanTail tail;
  private final int[][] sawn;
  private final long[][] off;
  private long work;

  /**
   * @param rows the side
   * @param waste by extent: what is sawn off the shortest pieces that hold it, for all copies
   * @param firstEnd the least foot aimed at
   * @param lastEnd the greatest
   * @param each how many stones stand on the side, or 0 where that is open
   * @param tail what is known of its later stones, or null
   */
  FanReach(FanRows rows, int[] waste, int firstEnd, int lastEnd, int each, FanTail tail) {
    this.rows = rows;
    this.firstEnd = Math.max(firstEnd, rows.first());
    this.lastEnd = Math.min(lastEnd, rows.lastEnd());
    this.fewest = Math.max(1, each);
    this.most = rows.most;
    int own = rows.rules() - 1;
    int from = own * (rows.min + rows.joint);
    this.tail =
        tail != null
            ? tail
            : new FanTail(
                rows, waste, this.firstEnd, this.lastEnd, each, Math.min(from, rows.last));
    this.work = tail != null ? 0 : this.tail.work();
    this.sawn = new int[own][];
    this.off = new long[own][];
    for (int i = own - 1; i >= 0; i--) {
      int feet = Math.min(rows.last, i * (Math.max(rows.min, rows.max) + rows.joint)) + 1;
      sawn[i] = new int[feet];
      off[i] = new long[feet];
      Arrays.fill(sawn[i], NEVER);
      Arrays.fill(off[i], Long.MAX_VALUE / 4);
      fill(i, waste);
    }
  }

  private void fill(int i, int[] waste) {
    int low = i * (rows.min + rows.joint);
    long high = Math.min((long) i * (rows.max + rows.joint), lastEnd - rows.joint - rows.min);
    for (int f = low; f <= high; f++) {
      short[] on = rows.on(i + 1, f);
      short[] ends = rows.ends(i + 1, f);
      int best = NEVER;
      long near = off[i][f];
      for (int w = 0; w < on.length; w++) {
        int outer = f + rows.joint + rows.min + w;
        if (ends[w] >= 0 && aimed(i + 1, outer)) {
          best = Math.min(best, waste[ends[w]]);
          near = Math.min(near, rows.off(outer));
        }
        int rest = on[w] < 0 ? NEVER : sawn(i + 1, outer, rows.min + w);
        if (rest < NEVER) {
          best = Math.min(best, waste[on[w]] + rest);
          near = Math.min(near, off(i + 1, outer));
        }
      }
      work += on.length;
      sawn[i][f] = Math.min(NEVER, best);
      off[i][f] = near;
    }
  }

  /** Whether so many stones may end at a foot, as far as the aim goes. */
  boolean aimed(int stones, int foot) {
    return stones >= fewest && stones <= most && foot >= firstEnd && foot <= lastEnd;
  }

  /** The least to be sawn off from joint {@code i} on; {@link #NEVER} where no end is reached. */
  int sawn(int i, int foot) {
    if (i >= most) {
      return NEVER;
    }
    return i < sawn.length ? sawn[i][foot] : tail.sawn(i, rows.start() + foot);
  }

  /** The same after a stone of such a width. */
  int sawn(int i, int foot, long width) {
    boolean own = i >= most || i < sawn.length;
    return own || tail.follows(i, rows.start() + foot, width) ? sawn(i, foot) : NEVER;
  }

  /** The least that the bearing is off, pm. */
  long off(int i, int foot) {
    if (i >= most) {
      return Long.MAX_VALUE / 4;
    }
    return i < off.length ? off[i][foot] : tail.off(i, rows.start() + foot);
  }

  long work() {
    return work;
  }
}
