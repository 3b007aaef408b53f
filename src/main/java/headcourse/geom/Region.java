package headcourse.geom;

/**
 * Area and centroid of a plane figure.
 *
 * @param area mm², positive for a path that turns from x towards y
 * @param centroid its centre of area; for nothing, a place on the path
 */
public record Region(double area, Point centroid) {
  // Gauss and Legendre's five points on −1 … 1 (Abramowitz and Stegun, table 25.4).
  private static final double[] AT = {
    0, 0.5384693101056831, -0.5384693101056831, 0.9061798459386640, -0.9061798459386640
  };
  private static final double[] WEIGHT = {
    0.5688888888888889,
    0.4786286704993665,
    0.4786286704993665,
    0.2369268850561891,
    0.2369268850561891
  };

  /** Panels no wider than this many radians integrate an arc to the last digits of a double. */
  private static final double PANEL = 0.2;

  /**
   * The figure within a closed path, by Green's theorem: {@code A = ½∮(x dy − y dx)}, {@code ∫x dA
   * = ½∮x² dy}, {@code ∫y dA = −½∮y² dx}.
   */
  public static Region within(Path path) {
    Point origin = path.start();
    double[] sums = new double[3];
    for (Edge edge : path.edges()) {
      Edge near = edge.transformed(Similarity.move(-origin.x(), -origin.y()));
      if (Harmonic.of(near, new Vec(1, 0)) != null) {
        curved(near, sums);
      } else {
        Point last = near.from();
        for (Point p : near.flattened(Tolerance.PAPER)) {
          straight(last, p, sums);
          last = p;
        }
      }
    }
    double area = sums[0];
    return Math.abs(area) < 1e-9
        ? new Region(area, origin)
        : new Region(area, origin.plus(new Vec(sums[1] / area, sums[2] / area)));
  }

  private static void straight(Point a, Point b, double[] sums) {
    double dx = b.x() - a.x();
    double dy = b.y() - a.y();
    sums[0] += (a.x() * dy - a.y() * dx) / 2;
    sums[1] += dy * (a.x() * a.x() + a.x() * b.x() + b.x() * b.x()) / 6;
    sums[2] -= dx * (a.y() * a.y() + a.y() * b.y() + b.y() * b.y()) / 6;
  }

  private static void curved(Edge edge, double[] sums) {
    Harmonic hx = Harmonic.of(edge, new Vec(1, 0));
    Harmonic hy = Harmonic.of(edge, new Vec(0, 1));
    int panels = Math.max(1, (int) Math.ceil(Math.abs(hx.sweep()) / PANEL));
    double half = hx.sweep() / panels / 2;
    for (int i = 0; i < panels; i++) {
      double mid = hx.start() + half * (2 * i + 1);
      for (int k = 0; k < AT.length; k++) {
        double cos = Math.cos(mid + half * AT[k]);
        double sin = Math.sin(mid + half * AT[k]);
        double x = hx.d() + hx.a() * cos + hx.b() * sin;
        double y = hy.d() + hy.a() * cos + hy.b() * sin;
        double dx = (hx.b() * cos - hx.a() * sin) * half * WEIGHT[k];
        double dy = (hy.b() * cos - hy.a() * sin) * half * WEIGHT[k];
        sums[0] += (x * dy - y * dx) / 2;
        sums[1] += x * x * dy / 2;
        sums[2] -= y * y * dx / 2;
      }
    }
  }
}
