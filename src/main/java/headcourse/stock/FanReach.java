package headcourse.stock;

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
  private final int[][] sawn;
  private final long[][] off;
  private long work;

  /**
   * @param rows the side
   * @param waste by extent: what is sawn off the shortest pieces that hold it, for all copies
   * @param firstEnd the least foot aimed at
   * @param lastEnd the greatest
   * @param fewest the least number of stones aimed at
   * @param most the greatest
   */
  FanReach(FanRows rows, int[] waste, int firstEnd, int lastEnd, int fewest, int most) {
    this.rows = rows;
    this.firstEnd = Math.max(firstEnd, rows.first());
    this.lastEnd = Math.min(lastEnd, rows.lastEnd());
    this.fewest = fewest;
    this.most = Math.min(most, rows.most);
    this.sawn = new int[Math.max(0, this.most) + 1][rows.last + 1];
    this.off = new long[Math.max(0, this.most) + 1][rows.last + 1];
    for (int i = 0; i < sawn.length; i++) {
      Arrays.fill(sawn[i], NEVER);
      Arrays.fill(off[i], Long.MAX_VALUE / 4);
    }
    for (int i = this.most - 1; i >= 0; i--) {
      fill(i, waste);
    }
  }

  private void fill(int i, int[] waste) {
    int low = i * (rows.min + rows.joint);
    long high = Math.min((long) i * (rows.max + rows.joint), lastEnd - rows.joint - rows.min);
    long least = firstEnd - (long) (most - i) * (rows.max + rows.joint);
    for (int f = (int) Math.max(low, least); f <= high; f++) {
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
        if (on[w] >= 0 && sawn[i + 1][outer] < NEVER) {
          best = Math.min(best, waste[on[w]] + sawn[i + 1][outer]);
          near = Math.min(near, off[i + 1][outer]);
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
    return i > most ? NEVER : sawn[i][foot];
  }

  /** The least that the bearing is off, pm. */
  long off(int i, int foot) {
    return i > most ? Long.MAX_VALUE / 4 : off[i][foot];
  }

  long work() {
    return work;
  }
}
