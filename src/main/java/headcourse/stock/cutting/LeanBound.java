package headcourse.stock.cutting;

import headcourse.geom.Point;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * Least length of parts on one blank by how their edges lean.
 *
 * <p>Between two heights, neighbours whose facing edges lean differently leave a wedge of half the
 * difference in their middle; the ends of the blank lean not at all. Going from left to right over
 * the blank and back to its left end is a round trip over leans, in which each part leads from its
 * left lean to its right one, and each wedge from a right lean to a left one. At any lean between
 * the least and the greatest it goes up as often as down, and at least once; what the parts don't
 * do of that the wedges must. For parts that lie one way this is the bound of Gilmore and Gomory
 * (1964) for one machine with one state variable.
 */
final class LeanBound {
  private static final double NM = 1e6;
  private static final double SAME = 1e-6;

  private final long kerf;
  private final long[] middle;
  private final int[] leftAt;
  private final int[] rightAt;
  private final boolean[] turnable;

  /** By type: whether it keeps nothing else from leaning. */
  private final boolean[] loose;

  /** All leans, and that of the blank's ends, from the least to the greatest. */
  private final long[] leans;

  private final int upright;

  private LeanBound(
      long kerf, long[] middle, long[] right, long[] left, boolean[] turnable, boolean[] loose) {
    this.loose = loose;
    this.kerf = kerf;
    this.middle = middle;
    this.turnable = turnable;
    long[] all = Arrays.copyOf(right, right.length + left.length + 1);
    System.arraycopy(left, 0, all, right.length, left.length);
    this.leans = Arrays.stream(all).sorted().distinct().toArray();
    this.upright = Arrays.binarySearch(leans, 0);
    this.leftAt = Arrays.stream(left).mapToInt(l -> Arrays.binarySearch(leans, l)).toArray();
    this.rightAt = Arrays.stream(right).mapToInt(l -> Arrays.binarySearch(leans, l)).toArray();
  }

  /**
   * From the outlines, between the arris and a height. Parts that don't reach it count for nothing,
   * and those that lean otherwise when they are turned only for their least width.
   */
  static LeanBound of(List<Profile> shapes, List<Boolean> turnable, long kerf, double top) {
    int n = shapes.size();
    long[] middle = new long[n];
    long[] right = new long[n];
    long[] left = new long[n];
    boolean[] turns = new boolean[n];
    boolean[] loose = new boolean[n];
    for (int t = 0; t < n; t++) {
      Profile p = shapes.get(t);
      if (p.height() < top - SAME) {
        loose[t] = true;
        middle[t] = 0 - kerf;
        continue;
      }
      middle[t] = middle(p, top);
      right[t] = Math.round((p.right(top) - p.right(0)) * NM);
      left[t] = Math.round((p.left(top) - p.left(0)) * NM);
      if (turnable.get(t)) {
        Profile q = p.turned();
        turns[t] = true;
        middle[t] = Math.min(middle[t], middle(q, top));
        boolean swapped =
            Math.abs((q.right(top) - q.right(0)) * NM - left[t]) < 2
                && Math.abs((q.left(top) - q.left(0)) * NM - right[t]) < 2;
        if (!swapped) {
          loose[t] = true;
          middle[t] = Math.min(narrowest(p, top), narrowest(q, top));
          right[t] = 0;
          left[t] = 0;
        }
      }
    }
    return new LeanBound(kerf, middle, right, left, turns, loose);
  }

  private static long middle(Profile p, double top) {
    double below = p.right(0) - p.left(0);
    double above = p.right(top) - p.left(top);
    return (long) Math.floor((below + above) / 2 * NM - 1);
  }

  /** The width is least at a corner, or at an end of the height. */
  private static long narrowest(Profile p, double top) {
    DoubleStream corners = p.vertices().stream().mapToDouble(Point::y).filter(y -> y <= top);
    double least =
        DoubleStream.concat(DoubleStream.of(0, top), corners)
            .map(y -> p.right(y) - p.left(y))
            .min()
            .getAsDouble();
    return (long) Math.floor(least * NM - 1);
  }

  /** By type: its width in the middle of the heights, and a kerf. */
  long[] means() {
    return Arrays.stream(middle).map(m -> m + kerf).toArray();
  }

  /** How far a type leans to the left at most, no more than upright. */
  long low(int t) {
    return leans[Math.min(upright, Math.min(leftAt[t], rightAt[t]))];
  }

  /** How far a type leans to the right at most, no less than upright. */
  long high(int t) {
    return leans[Math.max(upright, Math.max(leftAt[t], rightAt[t]))];
  }

  /**
   * What a part of a type takes at least beside others that lean from {@code low} to {@code high},
   * a kerf with it: that difference must be added once for all on the blank.
   */
  long inner(int t) {
    long lean = Math.abs(leans[rightAt[t]] - leans[leftAt[t]]);
    return Math.max(1, middle[t] - (lean + 1) / 2 + kerf);
  }

  /**
   * No blank shorter than this, in nm, holds so many of each type.
   *
   * @param present the types that there are any of
   */
  long least(int[] present, int[] counts) {
    long sum = 0 - kerf;
    long[] ends = new long[2 * present.length + 1];
    int n = 1;
    ends[0] = end(upright, present.length, 0);
    for (int i = 0; i < present.length; i++) {
      int t = present[i];
      sum += counts[t] * (middle[t] + kerf);
      if (!loose[t] && leftAt[t] != rightAt[t]) {
        n = insert(ends, n, end(Math.min(leftAt[t], rightAt[t]), i, 0));
        n = insert(ends, n, end(Math.max(leftAt[t], rightAt[t]), i, 1));
      } else if (!loose[t]) {
        n = insert(ends, n, end(leftAt[t], present.length, 0));
      }
    }
    return Math.max(0, sum + wedges(ends, n, present, counts) / 2);
  }

  /** A lean where the leans of a type begin or end; in the order of leans. */
  private static long end(int lean, int index, int last) {
    return (long) lean << 32 | (long) index << 1 | last;
  }

  private static int insert(long[] ends, int n, long end) {
    int j = n - 1;
    for (; j >= 0 && ends[j] > end; j--) {
      ends[j + 1] = ends[j];
    }
    ends[j + 1] = end;
    return n + 1;
  }

  /** How far wedges go up and down from the least lean to the greatest. */
  private long wedges(long[] ends, int n, int[] present, int[] counts) {
    long wedges = 0;
    int ups = 0;
    int turns = 0;
    int crossing = 0;
    for (int i = 0; i + 1 < n; i++) {
      int index = (int) (ends[i] & 0xffffffffL) >> 1;
      if (index < present.length) {
        int t = present[index];
        int c = (ends[i] & 1) == 0 ? counts[t] : 0 - counts[t];
        crossing += c;
        if (turnable[t]) {
          turns += c;
        } else {
          ups += leftAt[t] < rightAt[t] ? c : 0 - c;
        }
      }
      int from = (int) (ends[i] >> 32);
      int to = (int) (ends[i + 1] >> 32);
      if (from < to) {
        int one = Math.abs(ups);
        int need = crossing == 0 ? 2 : turns >= one ? (turns - one) & 1 : one - turns;
        wedges += need * (leans[to] - leans[from]);
      }
    }
    return wedges;
  }
}
