package headcourse.stock.cutting;

import java.util.Arrays;
import java.util.List;

/**
 * How wide parts are at a few heights that all of them reach, and in the mean of these.
 *
 * <p>At any height the parts on a blank lie side by side with at least a kerf between them; so
 * their widths there, with a kerf each, never exceed the usable length and one kerf.
 *
 * @param width by type and height: width there and a kerf; at last the mean
 */
record Slices(long[][] width) {
  /** Parts of the least part's height; a trapezium rule over them gives the mean. */
  private static final double[] HEIGHTS = {0, 0.25, 0.5, 0.75, 1};

  private static final double NM = 1e6;

  static Slices of(int types, List<Profile> nodes, int[] typeOf, long kerf) {
    double top = nodes.stream().mapToDouble(Profile::height).min().orElse(0);
    int s = HEIGHTS.length;
    long[][] width = new long[types][s + 1];
    for (long[] row : width) {
      Arrays.fill(row, Long.MAX_VALUE);
    }
    for (int node = 0; node < typeOf.length; node++) {
      double mean = 0;
      for (int i = 0; i <= s; i++) {
        double y = i < s ? HEIGHTS[i] * top : 0;
        double mm = i < s ? nodes.get(node).right(y) - nodes.get(node).left(y) : mean;
        mean += mm * (i == 0 || i == s - 1 ? 0.125 : 0.25);
        long[] row = width[typeOf[node]];
        row[i] = Math.min(row[i], (long) Math.floor(mm * NM - 0.01) + kerf);
      }
    }
    return new Slices(width);
  }

  /** Number of heights, and one for the mean. */
  int heights() {
    return HEIGHTS.length + 1;
  }

  /** The width in the mean of all heights, with a kerf. */
  long mean(int type) {
    return width[type][HEIGHTS.length];
  }
}
