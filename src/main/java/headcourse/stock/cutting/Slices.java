package headcourse.stock.cutting;

import java.util.Arrays;
import java.util.List;

/**
 * What parts take of a blank at a few heights that all of them reach, and in the mean of these.
 *
 * <p>At any height the parts on a blank lie side by side with at least a kerf between them; so
 * their widths there, with a kerf each, and what the end parts leave over there, never exceed the
 * usable length and one kerf.
 *
 * @param width by type and height: width there and a kerf
 * @param lead by type and height: the least that is lost there left of the part where it lies first
 * @param tail by type and height: the least that is lost there right of it where it lies last
 */
record Slices(long[][] width, long[][] lead, long[][] tail) {
  /** Parts of the least part's height; a trapezium rule over them gives the mean. */
  private static final double[] HEIGHTS = {0, 0.25, 0.5, 0.75, 1};

  /** Square parts are as wide at every height. */
  private static final double[] SQUARE = {0};

  private static final double NM = 1e6;

  static Slices of(int types, List<Profile> nodes, int[] typeOf, long kerf, boolean square) {
    double[] heights = square ? SQUARE : HEIGHTS;
    double top = nodes.stream().mapToDouble(Profile::height).min().orElse(0);
    int s = heights.length;
    long[][][] out = new long[3][types][s + 1];
    for (long[][] of : out) {
      for (long[] row : of) {
        Arrays.fill(row, Long.MAX_VALUE);
      }
    }
    for (int node = 0; node < typeOf.length; node++) {
      Profile shape = nodes.get(node);
      double[] mean = new double[3];
      for (int i = 0; i < s; i++) {
        double y = heights[i] * top;
        double left = shape.left(y);
        double right = shape.right(y);
        double[] at = {right - left, left, shape.extent() - right};
        for (int k = 0; k < 3; k++) {
          lower(out[k][typeOf[node]], i, at[k], k == 0 ? kerf : 0);
          mean[k] += at[k] * (square ? 1 : i == 0 || i == s - 1 ? 0.125 : 0.25);
        }
      }
      for (int k = 0; k < 3; k++) {
        lower(out[k][typeOf[node]], s, mean[k], k == 0 ? kerf : 0);
      }
    }
    return new Slices(out[0], out[1], out[2]);
  }

  private static void lower(long[] row, int i, double mm, long kerf) {
    row[i] = Math.min(row[i], (long) Math.floor(mm * NM - 0.01) + kerf);
  }

  /** Number of heights. */
  int heights() {
    return width.length == 0 ? 0 : width[0].length;
  }

  /** The width in the mean of all heights, with a kerf. */
  long mean(int type) {
    return width[type][heights() - 1];
  }

  /** No blank shorter than this holds so many of each type, as far as is seen at a height. */
  long least(int h, int[] present, int[] counts, long kerf) {
    long sum = -kerf;
    long first = Long.MAX_VALUE;
    long last = Long.MAX_VALUE;
    for (int t : present) {
      sum += counts[t] * width[t][h];
      first = Math.min(first, lead[t][h]);
      last = Math.min(last, tail[t][h]);
    }
    return sum + first + last;
  }
}
