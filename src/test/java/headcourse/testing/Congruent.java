package headcourse.testing;

import java.util.ArrayList;
import java.util.List;

/** Whether two figures of straight edges, y up, are one figure moved and turned. */
public final class Congruent {
  private Congruent() {}

  /**
   * How far the second may be turned against the first, in degrees, several where a figure is
   * regular; none where they are different figures, or mirror images.
   *
   * @param within how far one may stand off the other, mm
   */
  public static List<Double> turns(List<double[]> a, List<double[]> b, double within) {
    List<double[]> from = counterClockwise(a);
    List<double[]> to = counterClockwise(b);
    int i = longest(from);
    double[] p = from.get(i);
    double[] q = from.get((i + 1) % from.size());
    double length = StrokedPaths.distance(p, q);
    List<Double> turns = new ArrayList<>();
    for (int j = 0; j < to.size(); j++) {
      double[] r = to.get(j);
      double[] s = to.get((j + 1) % to.size());
      if (Math.abs(StrokedPaths.distance(r, s) - length) > within) {
        continue;
      }
      double turn = angle(r, s) - angle(p, q);
      List<double[]> moved = from.stream().map(v -> moved(v, p, r, turn)).toList();
      if (on(moved, to, within) && on(to, moved, within)) {
        turns.add(Math.IEEEremainder(Math.toDegrees(turn), 360));
      }
    }
    return turns;
  }

  /** A figure's mirror image. */
  public static List<double[]> mirrored(List<double[]> figure) {
    return figure.stream().map(v -> new double[] {-v[0], v[1]}).toList();
  }

  /** A figure and its mirror image on the other side of one of its edges, as one figure. */
  public static List<double[]> unfolded(List<double[]> figure, int edge) {
    int n = figure.size();
    double[] a = figure.get(edge);
    double[] b = figure.get((edge + 1) % n);
    double turn = angle(a, b);
    List<double[]> whole = new ArrayList<>();
    for (int i = 1; i <= n; i++) {
      whole.add(figure.get((edge + i) % n));
    }
    for (int i = n - 1; i > 1; i--) {
      double[] v = moved(figure.get((edge + i) % n), a, new double[] {0, 0}, -turn);
      whole.add(moved(new double[] {v[0], -v[1]}, new double[] {0, 0}, a, turn));
    }
    return whole;
  }

  private static double[] moved(double[] v, double[] from, double[] to, double turn) {
    double x = v[0] - from[0];
    double y = v[1] - from[1];
    double c = Math.cos(turn);
    double s = Math.sin(turn);
    return new double[] {to[0] + x * c - y * s, to[1] + x * s + y * c};
  }

  private static double angle(double[] from, double[] to) {
    return Math.atan2(to[1] - from[1], to[0] - from[0]);
  }

  private static int longest(List<double[]> figure) {
    int best = 0;
    double most = 0;
    for (int i = 0; i < figure.size(); i++) {
      double d = StrokedPaths.distance(figure.get(i), figure.get((i + 1) % figure.size()));
      if (d > most) {
        most = d;
        best = i;
      }
    }
    return best;
  }

  private static boolean on(List<double[]> places, List<double[]> figure, double within) {
    return places.stream().allMatch(v -> off(v, figure) <= within);
  }

  private static double off(double[] v, List<double[]> figure) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < figure.size(); i++) {
      double[] a = figure.get(i);
      double[] b = figure.get((i + 1) % figure.size());
      double dx = b[0] - a[0];
      double dy = b[1] - a[1];
      double t = ((v[0] - a[0]) * dx + (v[1] - a[1]) * dy) / Math.max(1e-12, dx * dx + dy * dy);
      t = Math.max(0, Math.min(1, t));
      least = Math.min(least, Math.hypot(a[0] + t * dx - v[0], a[1] + t * dy - v[1]));
    }
    return least;
  }

  private static List<double[]> counterClockwise(List<double[]> figure) {
    double area = 0;
    for (int i = 0; i < figure.size(); i++) {
      double[] a = figure.get(i);
      double[] b = figure.get((i + 1) % figure.size());
      area += a[0] * b[1] - a[1] * b[0];
    }
    List<double[]> round = new ArrayList<>(figure);
    if (area < 0) {
      java.util.Collections.reverse(round);
    }
    return round;
  }
}
