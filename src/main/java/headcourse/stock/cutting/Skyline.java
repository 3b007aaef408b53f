package headcourse.stock.cutting;

import java.util.ArrayList;
import java.util.List;

/**
 * How far parts reach at a few heights, and what those that come after them take there at least;
 * parts that don't reach a height take nothing there.
 */
final class Skyline {
  private static final double NM = 1e6;
  private static final double SAME = 1e-6;
  private static final double[] BETWEEN = {0.5, 1};

  /** By node and height: from its left end to its right edge there, and a kerf; −1 above it. */
  private final long[][] right;

  /** By type and height: its width there, the less of its ways to lie, and a kerf. */
  private final long[][] width;

  private Skyline(long[][] right, long[][] width) {
    this.right = right;
    this.width = width;
  }

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
    int n = heights.size();
    long[][] right = new long[shapes.size()][n];
    long[][] width = new long[types][n];
    for (long[] of : width) {
      java.util.Arrays.fill(of, Long.MAX_VALUE);
    }
    for (int i = 0; i < right.length; i++) {
      Profile p = shapes.get(i);
      for (int h = 0; h < n; h++) {
        double y = heights.get(h);
        right[i][h] = -1;
        long wide = 0;
        if (y <= p.height() + SAME) {
          double to = p.right(Math.min(y, p.height()));
          double from = p.left(Math.min(y, p.height()));
          right[i][h] = Math.max(0, (long) Math.floor(to * NM - 1) + kerf);
          wide = Math.max(0, (long) Math.floor((to - from) * NM - 1) + kerf);
        }
        width[typeOf[i]][h] = Math.min(width[typeOf[i]][h], wide);
      }
    }
    return new Skyline(right, width);
  }

  int heights() {
    return right.length == 0 ? 0 : right[0].length;
  }

  /** How far all reach at a height once a node begins at a place. */
  long with(int node, long start, int height, long before) {
    long to = right[node][height];
    return to < 0 ? before : start + to;
  }

  long width(int type, int height) {
    return width[type][height];
  }
}
