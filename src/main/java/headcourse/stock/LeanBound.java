package headcourse.stock;

import java.util.List;

/**
 * Least length of parts on one blank by how their edges lean.
 *
 * <p>Between two heights, neighbours whose facing edges lean differently leave a wedge of half the
 * difference in their middle; the ends of the blank lean not at all. Whatever the order, each right
 * edge (and the blank's left end) faces one left edge (or the blank's right end), and no pairing of
 * numbers has a smaller sum of differences than the sorted one. This is the lower bound of Gilmore
 * and Gomory (1964) for one machine with one state variable.
 */
final class LeanBound {
  private static final double NM = 1e6;

  private final long kerf;
  private final long[] middle;
  private final long[] right;
  private final long[] left;
  private final int[] byRight;
  private final int[] byLeft;

  private LeanBound(long kerf, long[] middle, long[] right, long[] left) {
    this.kerf = kerf;
    this.middle = middle;
    this.right = right;
    this.left = left;
    this.byRight = sorted(right);
    this.byLeft = sorted(left);
  }

  /** From the outlines, between the arris and the least of their heights. */
  static LeanBound of(List<Profile> shapes, long kerf) {
    int n = shapes.size();
    double top = n == 0 ? 0 : Double.POSITIVE_INFINITY;
    for (Profile p : shapes) {
      top = Math.min(top, p.height());
    }
    long[] middle = new long[n];
    long[] right = new long[n];
    long[] left = new long[n];
    for (int t = 0; t < n; t++) {
      Profile p = shapes.get(t);
      double below = p.right(0) - p.left(0);
      double above = p.right(top) - p.left(top);
      middle[t] = (long) Math.floor((below + above) / 2 * NM - 1);
      right[t] = Math.round((p.right(top) - p.right(0)) * NM);
      left[t] = Math.round((p.left(top) - p.left(0)) * NM);
    }
    return new LeanBound(kerf, middle, right, left);
  }

  /** Types by a lean; the blank's end, which leans not at all, goes by the number of types. */
  private static int[] sorted(long[] lean) {
    int[] order = new int[lean.length + 1];
    for (int n = 0; n < order.length; n++) {
      int i = n;
      for (; i > 0 && at(lean, order[i - 1]) > at(lean, n); i--) {
        order[i] = order[i - 1];
      }
      order[i] = n;
    }
    return order;
  }

  private static long at(long[] lean, int t) {
    return t == lean.length ? 0 : lean[t];
  }

  /** No blank shorter than this, in nm, holds so many of each type. */
  long least(int[] counts) {
    long sum = 0 - kerf;
    long wedges = 0;
    int i = -1;
    int j = -1;
    int ofI = 0;
    int ofJ = 0;
    int edges = 1;
    for (int t = 0; t < counts.length; t++) {
      sum += counts[t] * (middle[t] + kerf);
      edges += counts[t];
    }
    while (edges > 0) {
      while (ofI == 0) {
        i++;
        ofI = byRight[i] == counts.length ? 1 : counts[byRight[i]];
      }
      while (ofJ == 0) {
        j++;
        ofJ = byLeft[j] == counts.length ? 1 : counts[byLeft[j]];
      }
      int n = Math.min(ofI, ofJ);
      wedges += n * Math.abs(at(right, byRight[i]) - at(left, byLeft[j]));
      ofI -= n;
      ofJ -= n;
      edges -= n;
    }
    return Math.max(0, sum + wedges / 2);
  }
}
