package headcourse.stock;

import headcourse.geom.Point;
import java.util.Arrays;
import java.util.List;

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
    double least = Math.min(p.right(0) - p.left(0), p.right(top) - p.left(top));
    for (Point v : p.vertices()) {
      if (v.y() <= top) {
        least = Math.min(least, p.right(v.y()) - p.left(v.y()));
      }
    }
    return (long) Math.floor(least * NM - 1);
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

  /** No blank shorter than this, in nm, holds so many of each type. */
  long least(int[] counts) {
    return least(Nesting.present(counts), counts);
  }

  /**
   * The same.
   *
   * @param present the types that there are any of
   */
  long least(int[] present, int[] counts) {
    long sum = 0 - kerf;
    int[] at = new int[2 * present.length + 1];
    int n = 1;
    at[0] = upright;
    for (int t : present) {
      sum += counts[t] * (middle[t] + kerf);
      if (!loose[t]) {
        at[n++] = leftAt[t];
        at[n++] = rightAt[t];
      }
    }
    Arrays.sort(at, 0, n);
    long wedges = 0;
    for (int i = 0; i + 1 < n; i++) {
      if (at[i] < at[i + 1]) {
        wedges += wedges(present, counts, at[i]) * (leans[at[i + 1]] - leans[at[i]]);
      }
    }
    return Math.max(0, sum + wedges / 2);
  }

  /** How often wedges go up or down at a lean. */
  private long wedges(int[] present, int[] counts, int lean) {
    int ups = 0;
    int turns = 0;
    int crossing = 0;
    for (int t : present) {
      if (loose[t] || lean < Math.min(leftAt[t], rightAt[t])) {
        continue;
      }
      if (lean < Math.max(leftAt[t], rightAt[t])) {
        int c = counts[t];
        crossing += c;
        if (turnable[t]) {
          turns += c;
        } else {
          ups += leftAt[t] < rightAt[t] ? c : -c;
        }
      }
    }
    int one = Math.abs(ups);
    return crossing == 0 ? 2 : turns >= one ? (turns - one) & 1 : one - turns;
  }
}
