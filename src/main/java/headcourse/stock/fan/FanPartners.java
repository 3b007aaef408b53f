package headcourse.stock.fan;

import java.util.Arrays;
import java.util.List;

/**
 * What may stand across from a stone that is still to be chosen, where nothing more can be sawn off
 * than must be: a stone without a partner near enough in width need not be tried.
 */
final class FanPartners {
  private static final int NONE = -1;
  private static final int SEVERAL = -2;

  private final int min;
  private final long near;
  private final boolean together;
  private final int[] on;
  private final int[] ends;

  /**
   * @param trials the stones that may stand across
   * @param rows the side across
   * @param near how far widths may differ
   * @param together whether both sides must end with the same stone
   */
  FanPartners(List<FanTrial> trials, FanRows rows, long near, boolean together) {
    this.min = rows.min;
    this.near = near;
    this.together = together;
    int widths = Math.max(0, rows.max - rows.min + 1);
    this.on = new int[widths];
    this.ends = new int[widths];
    Arrays.fill(on, NONE);
    Arrays.fill(ends, NONE);
    for (FanTrial t : trials) {
      int[] of = t.end() ? ends : on;
      int w = (int) t.width() - min;
      boolean first = of[w] == NONE && t.types().length == 1;
      of[w] = first || of[w] == t.types()[0] ? t.types()[0] : SEVERAL;
    }
  }

  /** Whether a stone has one; {@code twin} where another piece of its type is at hand. */
  boolean any(FanTrial t, boolean twin) {
    int w = (int) t.width() - min;
    int low = (int) Math.max(0, w - near);
    int high = (int) Math.min(on.length - 1L, w + near);
    for (int i = low; i <= high; i++) {
      if (other(on[i], t, twin) && !(together && t.end())
          || other(ends[i], t, twin) && (!together || t.end())) {
        return true;
      }
    }
    return false;
  }

  private static boolean other(int there, FanTrial t, boolean twin) {
    return there == SEVERAL || there != NONE && (there != t.types()[0] || twin);
  }
}
