package headcourse.stock.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * How close parts may lie along a blank, in nanometres. A node is a type of part in one of the ways
 * it may lie; the nodes of a type follow each other.
 */
public final class Nesting {
  /** Rounding of geometry never decides whether a stone fits. */
  public static final long SLACK = 64;

  private static final double NM = 1e6;
  private static final double SAME_MM = 1e-3;

  final int types;
  final long kerf;

  /** Type of each node. */
  public final int[] typeOf;

  /** Whether a node lies end for end. */
  public final boolean[] turned;

  /** By type: its first node; and at last the number of nodes. */
  final int[] firstNode;

  /** Length of each node along the blank. */
  final long[] extent;

  /** Least distance from the left end of one node to the left end of one right of it. */
  final long[][] distance;

  /** Whether all parts are square, so that their sequence doesn't matter. */
  final boolean square;

  /**
   * By measure and type: what parts take of a blank that are side by side, a kerf with each; so
   * they never exceed the usable length and one kerf. A measure is a height, or the mean of some.
   */
  final long[][] widths;

  /** Bounds by how edges lean, at some heights; none where all are square. */
  final List<LeanBound> leans;

  /** How far parts reach at some heights. */
  final Skyline skyline;

  /** By type: the most that a part adds to the length of those before it. */
  private final long[] longest;

  /**
   * Parts of any outline.
   *
   * @param turnable by part: whether it may lie end for end
   */
  public Nesting(List<Profile> shapes, List<Boolean> turnable, double kerfMm) {
    types = shapes.size();
    kerf = Math.round(kerfMm * NM);
    square = shapes.stream().allMatch(Profile::square);
    List<Profile> nodes = new ArrayList<>();
    firstNode = new int[types + 1];
    for (int t = 0; t < types; t++) {
      nodes.add(shapes.get(t));
      if (turnable.get(t) && !shapes.get(t).square()) {
        nodes.add(shapes.get(t).turned());
      }
      firstNode[t + 1] = nodes.size();
    }
    int n = nodes.size();
    typeOf = new int[n];
    for (int t = 0; t < types; t++) {
      Arrays.fill(typeOf, firstNode[t], firstNode[t + 1], t);
    }
    turned = new boolean[n];
    extent = new long[n];
    distance = new long[n][n];
    longest = new long[types];
    for (int i = 0; i < n; i++) {
      turned[i] = i > firstNode[typeOf[i]];
      extent[i] = Math.round(nodes.get(i).extent() * NM);
      for (int j = 0; j < n; j++) {
        distance[i][j] = Math.round(nodes.get(i).distanceTo(nodes.get(j), kerfMm) * NM);
      }
    }
    for (int t = 0; t < types; t++) {
      int node = firstNode[t];
      longest[t] = Math.max(extent[node] + kerf, Arrays.stream(distance[node]).max().orElse(0));
    }
    List<Double> tops = square ? List.of() : tops(shapes);
    leans = tops.stream().map(y -> LeanBound.of(shapes, turnable, kerf, y)).toList();
    skyline = Skyline.of(nodes, typeOf, types, tops, kerf);
    widths = widths();
  }

  /** The heights of parts: the least, the greatest, and that in the middle. */
  private static List<Double> tops(List<Profile> shapes) {
    List<Double> all = shapes.stream().map(Profile::height).sorted().toList();
    List<Double> tops = new ArrayList<>();
    for (double y : List.of(all.get(0), all.get(all.size() / 2), all.get(all.size() - 1))) {
      if (tops.stream().noneMatch(o -> Math.abs(o - y) < SAME_MM)) {
        tops.add(y);
      }
    }
    return tops;
  }

  private long[][] widths() {
    if (square) {
      return new long[][] {
        IntStream.of(firstNode).limit(types).mapToLong(i -> extent[i] + kerf).toArray()
      };
    }
    return Stream.concat(Arrays.stream(skyline.width()), leans.stream().map(LeanBound::means))
        .toArray(long[][]::new);
  }

  /** The types that there are any of. */
  static int[] present(int[] counts) {
    int n = 0;
    int[] present = new int[counts.length];
    for (int t = 0; t < counts.length; t++) {
      if (counts[t] > 0) {
        present[n++] = t;
      }
    }
    return Arrays.copyOf(present, n);
  }

  /** No blank shorter than this holds so many of each type. */
  long leastLength(int[] counts) {
    int[] present = present(counts);
    long most = 0 - kerf;
    for (int t = 0; square && t < types; t++) {
      most += counts[t] * widths[0][t];
    }
    for (LeanBound lean : leans) {
      most = Math.max(most, lean.least(present, counts));
    }
    return Math.max(0, most - SLACK / 2);
  }

  /** What {@link #leastLength} takes for so many different types, in operations. */
  long work(int present) {
    return types + (long) present * (4L + 10L * leans.size());
  }

  /** In any sequence they take no more than this. */
  long mostLength(int[] present, int[] counts) {
    long sum = 0 - kerf;
    for (int t : present) {
      sum += counts[t] * longest[t];
    }
    return sum;
  }

  /** Where each node of a sequence begins, packed to the left. */
  public long[] starts(int[] order) {
    long[] at = new long[order.length];
    for (int j = 1; j < at.length; j++) {
      for (int i = 0; i < j; i++) {
        at[j] = Math.max(at[j], at[i] + distance[order[i]][order[j]]);
      }
    }
    return at;
  }

  /** Length that a sequence takes. */
  long length(int[] order) {
    long[] at = starts(order);
    long end = 0;
    for (int j = 0; j < at.length; j++) {
      end = Math.max(end, at[j] + extent[order[j]]);
    }
    return end;
  }
}
