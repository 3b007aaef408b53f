package headcourse.geom;

/**
 * How far a path reaches along a direction, mm from the origin; exact for arcs.
 *
 * @param from the least
 * @param to the greatest
 */
public record Extent(double from, double to) {
  /** The extent of a path along a unit direction. */
  public static Extent along(Path path, Vec direction) {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (Edge edge : path.edges()) {
      Harmonic arc = Harmonic.of(edge, direction);
      if (arc != null) {
        for (double t : arc.turning()) {
          double d = reach(edge.at(t), direction);
          least = Math.min(least, d);
          most = Math.max(most, d);
        }
      }
      double a = reach(edge.from(), direction);
      double b = reach(edge.to(), direction);
      least = Math.min(least, Math.min(a, b));
      most = Math.max(most, Math.max(a, b));
    }
    return new Extent(least, most);
  }

  private static double reach(Point p, Vec n) {
    return p.x() * n.x() + p.y() * n.y();
  }

  /** Its length. */
  public double length() {
    return to - from;
  }
}
