package headcourse.geom;

import java.util.ArrayList;
import java.util.List;

/** Cuts paths at the sides of a box. */
public final class Clip {
  private Clip() {}

  /**
   * The runs of a path that lie within a box; straight edges stay exact, curves are first broken
   * into chords.
   *
   * @param path the path
   * @param box the box
   * @param tolerance how far a chord may lie off its curve
   */
  public static List<Path> toBox(Path path, Box box, double tolerance) {
    List<Path> runs = new ArrayList<>();
    List<Edge> run = new ArrayList<>();
    Point last = path.start();
    for (Edge e : path.edges()) {
      for (Point p : e.flattened(tolerance)) {
        Straight inside = segment(last, p, box);
        if (inside != null) {
          boolean joins =
              !run.isEmpty() && run.get(run.size() - 1).to().distance(inside.from()) < 1e-9;
          if (!joins && !run.isEmpty()) {
            runs.add(new Path(run, false));
            run = new ArrayList<>();
          }
          run.add(inside);
        }
        last = p;
      }
    }
    if (!run.isEmpty()) {
      runs.add(new Path(run, false));
    }
    return runs;
  }

  // Liang and Barsky's parametric clipping.
  private static Straight segment(Point a, Point b, Box box) {
    double dx = b.x() - a.x();
    double dy = b.y() - a.y();
    double[] p = {-dx, dx, -dy, dy};
    double[] q = {a.x() - box.minX(), box.maxX() - a.x(), a.y() - box.minY(), box.maxY() - a.y()};
    double t0 = 0;
    double t1 = 1;
    for (int i = 0; i < 4; i++) {
      if (p[i] == 0) {
        if (q[i] < 0) {
          return null;
        }
      } else if (p[i] < 0) {
        t0 = Math.max(t0, q[i] / p[i]);
      } else {
        t1 = Math.min(t1, q[i] / p[i]);
      }
    }
    if (t1 - t0 <= 1e-12) {
      return null;
    }
    Point from = t0 == 0 ? a : a.towards(b, t0);
    Point to = t1 == 1 ? b : a.towards(b, t1);
    return new Straight(from, to);
  }
}
