package headcourse.stock.pile;

import java.util.Arrays;

/**
 * The least sum of differences between the stones of two sides, from some type of piece on.
 *
 * <p>Of all ways to put the stones of two sides side by side, the one by rank has the least sum of
 * differences. That is the integral, over all widths, of how many more stones of one side than of
 * the other are no wider.
 */
final class PairGaps {
  static final long NONE = Long.MAX_VALUE / 8;

  /** By type, stones still to come, and lead of one side over the other. */
  private final long[][][] least;

  /**
   * @param widths by type, ascending
   * @param count pieces of each type; 0 where it does not count
   * @param most greatest number of stones of both sides
   */
  PairGaps(long[] widths, int[] count, int most) {
    int types = widths.length;
    least = new long[types + 1][most + 1][most + 1];
    for (long[] row : least[types]) {
      Arrays.fill(row, NONE);
    }
    least[types][0][0] = 0;
    for (int t = types - 1; t >= 0; t--) {
      long gap = t + 1 < types ? widths[t + 1] - widths[t] : 0;
      long[][] now = new long[most + 1][most + 1];
      for (int r = 0; r <= most; r++) {
        for (int d = 0; d <= most; d++) {
          now[r][d] = Math.min(NONE, least[t + 1][r][d] + d * gap);
        }
      }
      for (int k = 0; k < count[t]; k++) {
        long[][] more = new long[most + 1][most + 1];
        for (int r = 0; r <= most; r++) {
          for (int d = 0; d <= most; d++) {
            long best = now[r][d];
            if (r > 0) {
              best = Math.min(best, now[r - 1][Math.abs(d - 1)]);
              best = d < most ? Math.min(best, now[r - 1][d + 1]) : best;
            }
            more[r][d] = best;
          }
        }
        now = more;
      }
      least[t] = now;
    }
  }

  /**
   * The least.
   *
   * @param t from this type on
   * @param stones still to come
   * @param lead how many stones one side is ahead of what it is to be
   */
  long least(int t, int stones, long lead) {
    long d = Math.abs(lead);
    return d >= least[t].length ? NONE : least[t][stones][(int) d];
  }
}
