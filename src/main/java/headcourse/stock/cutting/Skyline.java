package headcourse.stock.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * How far parts reach at a few heights, and what those that come after them take there at least;
 * parts that don't reach a height take nothing there.
 *
 * @param right by height and node: from its left end to its right edge there, and a kerf; −1 above
 *     it
 * @param width by height and type: its width there, the less of its ways to lie, and a kerf
 */
record Skyline(long[][] right, long[][] width) {
  private static final double NM = 1e6;
  private static final double SAME = 1e-6;
  private static final double[] BETWEEN = {0.5, 1};

  /**
   * Of some parts.
   *
   * @param shapes of the nodes
   * @param typeOf type of each
   * @param tops heights up to which parts reach
   */
  static Skyline of(List<Profile> shapes, int[] typeOf, int types, List<Double> tops, long kerf) {
    List<Double> heights = new ArrayList<>(tops.isEmpty() ? List.of() : List.of(0.0));
    for (double top : tops) {
      double below = heights.get(heights.size() - 1);
      for (double part : BETWEEN) {
        heights.add(below + part * (top - below));
      }
    }
    long[][] right = new long[heights.size()][typeOf.length];
    long[][] width = new long[heights.size()][types];
    for (int h = 0; h < right.length; h++) {
      Arrays.fill(width[h], Long.MAX_VALUE);
      for (int i = 0; i < typeOf.length; i++) {
        Profile p = shapes.get(i);
        double y = Math.min(heights.get(h), p.height());
        boolean reaches = heights.get(h) <= p.height() + SAME;
        right[h][i] = reaches ? floor(p.right(y)) + kerf : -1;
        long wide = reaches ? floor(p.right(y) - p.left(y)) + kerf : 0;
        width[h][typeOf[i]] = Math.min(width[h][typeOf[i]], wide);
      }
    }
    return new Skyline(right, width);
  }

  private static long floor(double mm) {
    return Math.max(0, (long) Math.floor(mm * NM - 1));
  }
}
