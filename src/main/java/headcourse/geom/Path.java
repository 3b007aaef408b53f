package headcourse.geom;

import java.util.ArrayList;
import java.util.List;

/**
 * Edges end to end.
 *
 * @param edges at least one; each begins where the one before ends
 * @param closed whether the last returns to the first's start
 */
public record Path(List<Edge> edges, boolean closed) {
  /** Copies the edges. */
  public Path {
    edges = List.copyOf(edges);
    if (edges.isEmpty()) {
      throw new IllegalArgumentException("a path has at least one edge");
    }
  }

  /** An open path through places. */
  public static Path through(Point... points) {
    return polyline(List.of(points), false);
  }

  /** A closed polygon. */
  public static Path polygon(List<Point> points) {
    return polyline(points, true);
  }

  /** A closed polygon. */
  public static Path polygon(Point... points) {
    return polyline(List.of(points), true);
  }

  /** A rectangle with its sides along the axes. */
  public static Path rect(double x, double y, double width, double height) {
    return polygon(
        new Point(x, y),
        new Point(x + width, y),
        new Point(x + width, y + height),
        new Point(x, y + height));
  }

  /** A full circle. */
  public static Path circle(Point centre, double radius) {
    return new Path(
        List.of(new Arc(centre, radius, 0, Math.PI), new Arc(centre, radius, Math.PI, Math.PI)),
        true);
  }

  private static Path polyline(List<Point> points, boolean closed) {
    List<Edge> edges = new ArrayList<>();
    for (int i = 0; i + 1 < points.size(); i++) {
      edges.add(new Straight(points.get(i), points.get(i + 1)));
    }
    if (closed) {
      edges.add(new Straight(points.get(points.size() - 1), points.get(0)));
    }
    return new Path(edges, closed);
  }

  /** Where it begins. */
  public Point start() {
    return edges.get(0).from();
  }

  /** The path mapped. */
  public Path transformed(Similarity map) {
    List<Edge> mapped = new ArrayList<>(edges.size());
    for (Edge e : edges) {
      mapped.add(e.transformed(map));
    }
    return new Path(mapped, closed);
  }

  /** Its vertices, curves flattened; a closed path does not repeat its start. */
  public List<Point> vertices(double tolerance) {
    List<Point> points = new ArrayList<>();
    points.add(start());
    for (Edge e : edges) {
      if (e instanceof Straight s) {
        points.add(s.to());
      } else {
        points.addAll(e.flattened(tolerance));
      }
    }
    if (closed && points.size() > 1) {
      points.remove(points.size() - 1);
    }
    return points;
  }

  /** Signed area of a closed path, positive where it turns from x towards y; exact for arcs. */
  public double area() {
    double sum = 0;
    for (Edge e : edges) {
      sum += e.crossIntegral();
    }
    return sum / 2;
  }

  /** The least box around it, curves flattened to {@link Tolerance#SAME} of their true extent. */
  public Box bounds() {
    return Box.around(vertices(1e-3));
  }
}
