package headcourse.guards;

import headcourse.testing.FinishedPdf.Part;
import headcourse.testing.StrokedPaths;
import headcourse.testing.Tape;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Drawn lines as they are measured. */
final class Shape {
  private static final Pattern SCALE =
      Pattern.compile(
          "(full size)|(half size)|1:(\\d+)|((?:\\d+|\\d+ [⁰¹²³⁴⁵⁶⁷⁸⁹]+⁄\\S+|[⁰¹²³⁴⁵⁶⁷⁸⁹]+⁄\\S+)\") = 1'-0\"");

  private Shape() {}

  /** Paper over true size by the first scale in a text. */
  static double scale(String text) {
    Matcher m = SCALE.matcher(text);
    if (!m.find()) {
      throw new IllegalArgumentException("no scale: " + text);
    }
    return m.group(1) != null
        ? 1
        : m.group(2) != null
            ? 0.5
            : m.group(3) != null ? 1 / Double.parseDouble(m.group(3)) : Tape.read(m.group(4)) / 12;
  }

  static List<double[]> corners(Path2D path) {
    return StrokedPaths.vertices(path, false);
  }

  /** The first closed area drawn in a figure. */
  static Path2D area(Part figure) {
    return figure.paths().stream().filter(p -> corners(p).size() > 2).findFirst().orElseThrow();
  }

  /** The greatest distance of two corners. */
  static double across(List<double[]> corners) {
    double most = 0;
    for (double[] a : corners) {
      for (double[] b : corners) {
        most = Math.max(most, StrokedPaths.distance(a, b));
      }
    }
    return most;
  }

  /** Whether corners are those of a stone at a scale, upright and not mirrored. */
  static boolean same(List<double[]> drawn, List<double[]> stone, double scale) {
    double[] a = low(drawn);
    double[] b = low(stone);
    return drawn.size() == stone.size()
        && stone.stream()
            .allMatch(
                s ->
                    drawn.stream()
                        .anyMatch(
                            d ->
                                Math.hypot(
                                        (s[0] - b[0]) * scale - (d[0] - a[0]),
                                        (s[1] - b[1]) * scale - (d[1] - a[1]))
                                    < 0.1));
  }

  /** The lengths of the edges against the clock. */
  static List<Double> edges(List<double[]> corners) {
    double area = 0;
    int n = corners.size();
    for (int i = 0; i < n; i++) {
      double[] a = corners.get(i);
      double[] b = corners.get((i + 1) % n);
      area += a[0] * b[1] - a[1] * b[0];
    }
    List<Double> edges = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      int from = area > 0 ? i : n - i;
      int to = area > 0 ? i + 1 : n - i - 1;
      edges.add(StrokedPaths.distance(corners.get(from % n), corners.get(to % n)));
    }
    return edges;
  }

  /** Whether two rounds of edges are the same from some edge on. */
  static boolean round(List<Double> a, List<Double> b, double within) {
    int n = a.size();
    for (int shift = 0; shift < n && n == b.size(); shift++) {
      boolean all = true;
      for (int i = 0; i < n; i++) {
        all &= Math.abs(a.get(i) - b.get((i + shift) % n)) < within;
      }
      if (all) {
        return true;
      }
    }
    return false;
  }

  static Rectangle2D box(Path2D path) {
    return path.getBounds2D();
  }

  private static double[] low(List<double[]> corners) {
    return new double[] {
      corners.stream().mapToDouble(c -> c[0]).min().orElse(0),
      corners.stream().mapToDouble(c -> c[1]).min().orElse(0)
    };
  }
}
