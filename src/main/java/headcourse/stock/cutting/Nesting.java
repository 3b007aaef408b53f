package headcourse.stock.cutting;

import java.util.List;

/**
 * How close parts may lie along a blank, in nanometres.
 *
 * <p>A node is a type of part in one of the ways it may lie. At any height the parts on a blank lie
 * side by side with at least a kerf between them; so at each of a few heights their widths there,
 * with a kerf each, and what the end parts leave over there, never exceed the usable length and one
 * kerf. That is what {@link #weight} bounds with.
 */
public final class Nesting {
  /** Rounding of geometry never decides whether a stone fits. */
  public static final long SLACK = 64;

  private static final double NM = 1e6;
  private static final double[] HEIGHTS = {0, 0.25, 0.5, 0.75, 1};

  final int types;
  final long kerf;

  /** Type of each node. */
  public final int[] typeOf;

  /** Whether a node lies end for end. */
  public final boolean[] turned;

  /** Length of each node along the blank. */
  final long[] extent;

  /** Least distance from the left end of one node to the left end of one right of it. */
  final long[][] distance;

  /** By type and height: width there and a kerf. */
  final long[][] weight;

  /** By type and height: the least that is lost there left of the part where it lies first. */
  final long[][] lead;

  /** By type and height: the least that is lost there right of the part where it lies last. */
  final long[][] tail;

  /** Whether all parts are square, so that their order doesn't matter. */
  final boolean square;

  /** Bounds by how edges lean, at some heights; none where all are square. */
  final List<LeanBound> leans;

  /** How far parts reach at some heights. */
  final Fronts fronts;

  private Nesting(
      int types,
      long kerf,
      int[] typeOf,
      boolean[] turned,
      long[] extent,
      long[][] distance,
      long[][][] slices,
      List<LeanBound> leans,
      Fronts fronts,
      boolean square) {
    this.leans = leans;
    this.fronts = fronts;
    this.types = types;
    this.kerf = kerf;
    this.typeOf = typeOf;
    this.turned = turned;
    this.extent = extent;
    this.distance = distance;
    this.weight = slices[0];
    this.lead = slices[1];
    this.tail = slices[2];
    this.square = square;
  }

  /** Parts with square ends. */
  static Nesting ofLengths(long[] lengths, long kerf) {
    int n = lengths.length;
    int[] typeOf = new int[n];
    long[][] distance = new long[n][n];
    long[][][] slices = new long[3][n][1];
    for (int i = 0; i < n; i++) {
      typeOf[i] = i;
      slices[0][i][0] = lengths[i] + kerf;
      for (int j = 0; j < n; j++) {
        distance[i][j] = lengths[i] + kerf;
      }
    }
    return new Nesting(
        n,
        kerf,
        typeOf,
        new boolean[n],
        lengths.clone(),
        distance,
        slices,
        List.of(),
        Fronts.none(n),
        true);
  }

  /** Parts of any outline. */
  public static Nesting of(List<Profile> shapes, List<Boolean> turnable, double kerfMm) {
    int n = shapes.size();
    List<Node> nodes = new java.util.ArrayList<>();
    boolean square = true;
    for (int t = 0; t < n; t++) {
      Profile p = shapes.get(t);
      boolean plain = plain(p);
      square &= plain;
      nodes.add(new Node(t, p, false));
      if (turnable.get(t) && !plain) {
        nodes.add(new Node(t, p.turned(), true));
      }
    }
    int m = nodes.size();
    int[] typeOf = new int[m];
    boolean[] turned = new boolean[m];
    long[] extent = new long[m];
    long[][] distance = new long[m][m];
    for (int i = 0; i < m; i++) {
      Node a = nodes.get(i);
      typeOf[i] = a.type;
      turned[i] = a.turned;
      extent[i] = Math.round(a.shape.extent() * NM);
      for (int j = 0; j < m; j++) {
        distance[i][j] = Math.round(a.shape.distanceTo(nodes.get(j).shape, kerfMm) * NM);
      }
    }
    long kerf = Math.round(kerfMm * NM);
    List<LeanBound> leans =
        square
            ? List.of()
            : tops(shapes).stream().map(y -> LeanBound.of(shapes, turnable, kerf, y)).toList();
    List<Profile> lying = nodes.stream().map(Node::shape).toList();
    Fronts fronts = square ? Fronts.none(n) : Fronts.of(lying, typeOf, n, tops(shapes), kerf);
    return new Nesting(
        n, kerf, typeOf, turned, extent, distance, slices(n, nodes, kerf), leans, fronts, square);
  }

  /** The heights of parts: the least, the greatest, and that in the middle. */
  private static List<Double> tops(List<Profile> shapes) {
    List<Double> all = shapes.stream().map(Profile::height).sorted().toList();
    List<Double> tops = new java.util.ArrayList<>();
    for (double y : List.of(all.get(0), all.get(all.size() / 2), all.get(all.size() - 1))) {
      if (tops.stream().noneMatch(o -> Math.abs(o - y) < 1e-3)) {
        tops.add(y);
      }
    }
    return tops;
  }

  private record Node(int type, Profile shape, boolean turned) {}

  private static boolean plain(Profile p) {
    double w = p.extent();
    double h = p.height();
    return p.vertices().stream()
        .allMatch(v -> (v.x() < 1e-6 || v.x() > w - 1e-6) && (v.y() < 1e-6 || v.y() > h - 1e-6));
  }

  private static long[][][] slices(int types, List<Node> nodes, long kerf) {
    double top = nodes.stream().mapToDouble(n -> n.shape.height()).min().orElse(0);
    int s = HEIGHTS.length;
    long[][][] out = new long[3][types][s + 1];
    for (long[][] of : out) {
      for (long[] row : of) {
        java.util.Arrays.fill(row, Long.MAX_VALUE);
      }
    }
    for (Node n : nodes) {
      double[] mean = new double[3];
      for (int i = 0; i < s; i++) {
        double y = HEIGHTS[i] * top;
        double left = n.shape.left(y);
        double right = n.shape.right(y);
        double[] at = {right - left, left, n.shape.extent() - right};
        for (int k = 0; k < 3; k++) {
          lower(out[k][n.type], i, at[k], k == 0 ? kerf : 0);
          // Trapezium rule: any fixed mean of the heights is a bound too.
          mean[k] += at[k] * (i == 0 || i == s - 1 ? 0.125 : 0.25);
        }
      }
      for (int k = 0; k < 3; k++) {
        lower(out[k][n.type], s, mean[k], k == 0 ? kerf : 0);
      }
    }
    return out;
  }

  private static void lower(long[] row, int i, double mm, long kerf) {
    row[i] = Math.min(row[i], (long) Math.floor(mm * NM - 0.01) + kerf);
  }

  /** Number of heights bounded at. */
  int heights() {
    return types == 0 ? 0 : weight[0].length;
  }

  /** The types that there are any of. */
  static int[] present(int[] counts) {
    int n = 0;
    for (int c : counts) {
      n += c > 0 ? 1 : 0;
    }
    int[] present = new int[n];
    for (int t = counts.length - 1; n > 0; t--) {
      if (counts[t] > 0) {
        present[--n] = t;
      }
    }
    return present;
  }

  /** No blank shorter than this holds so many of each type. */
  long leastLength(int[] counts) {
    int[] present = present(counts);
    if (present.length == 0) {
      return 0;
    }
    long most = 0;
    for (int h = 0; h < heights(); h++) {
      long sum = -kerf;
      long first = Long.MAX_VALUE;
      long last = Long.MAX_VALUE;
      for (int t : present) {
        sum += counts[t] * weight[t][h];
        first = Math.min(first, lead[t][h]);
        last = Math.min(last, tail[t][h]);
      }
      most = Math.max(most, sum + first + last);
    }
    for (LeanBound lean : leans) {
      most = Math.max(most, lean.least(present, counts));
    }
    return Math.max(0, most - SLACK / 2);
  }
}
