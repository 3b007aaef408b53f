package headcourse.sheet.fullsize;

import headcourse.geom.Arc;
import headcourse.geom.Box;
import headcourse.geom.Clip;
import headcourse.geom.Edge;
import headcourse.geom.EllipticArc;
import headcourse.geom.Path;
import headcourse.geom.Point;
import java.util.ArrayList;
import java.util.List;

/** What of an outline lies on a tile; arcs stay arcs, so that a tile's curve is the true one. */
final class TileClip {
  /** Steps in which a curve is searched for the tile's sides; no arc of a stone dips in between. */
  static final int STEPS = 256;

  private static final int HALVINGS = 60;

  /** Chords of other curves lie no farther off than this, mm. */
  private static final double CHORD = 0.01;

  private TileClip() {}

  /** The runs of a path within a box. */
  static List<Path> inside(Path path, Box box) {
    List<Path> runs = new ArrayList<>();
    List<Edge> run = new ArrayList<>();
    for (Edge edge : path.edges()) {
      for (Edge part : parts(edge, box)) {
        if (!run.isEmpty() && run.get(run.size() - 1).to().distance(part.from()) > 1e-6) {
          runs.add(new Path(run, false));
          run = new ArrayList<>();
        }
        run.add(part);
      }
    }
    if (!run.isEmpty()) {
      runs.add(new Path(run, false));
    }
    int last = runs.size() - 1;
    if (last > 0 && end(runs.get(last)).distance(runs.get(0).start()) < 1e-6) {
      // The outline's own start lies on the tile: one run, so that its corner is a corner.
      List<Edge> joined = new ArrayList<>(runs.remove(last).edges());
      joined.addAll(runs.remove(0).edges());
      runs.add(new Path(joined, false));
    }
    return runs;
  }

  private static Point end(Path run) {
    return run.edges().get(run.edges().size() - 1).to();
  }

  private static List<Edge> parts(Edge edge, Box box) {
    if (!(edge instanceof Arc) && !(edge instanceof EllipticArc)) {
      List<Edge> parts = new ArrayList<>();
      Clip.toBox(new Path(List.of(edge), false), box, CHORD).forEach(r -> parts.addAll(r.edges()));
      return parts;
    }
    List<Edge> parts = new ArrayList<>();
    double from = 0;
    boolean in = in(edge.at(0), box);
    for (int i = 1; i <= STEPS; i++) {
      double t = (double) i / STEPS;
      if (in(edge.at(t), box) != in) {
        double cross = crossing(edge, box, (double) (i - 1) / STEPS, t);
        if (in) {
          parts.add(part(edge, from, cross));
        }
        from = cross;
        in = !in;
      }
    }
    if (in) {
      parts.add(part(edge, from, 1));
    }
    return parts;
  }

  private static double crossing(Edge edge, Box box, double low, double high) {
    boolean first = in(edge.at(low), box);
    double a = low;
    double b = high;
    for (int i = 0; i < HALVINGS; i++) {
      double mid = (a + b) / 2;
      if (in(edge.at(mid), box) == first) {
        a = mid;
      } else {
        b = mid;
      }
    }
    return a;
  }

  private static boolean in(Point p, Box box) {
    return p.x() >= box.minX() && p.x() <= box.maxX() && p.y() >= box.minY() && p.y() <= box.maxY();
  }

  private static Edge part(Edge edge, double t0, double t1) {
    if (edge instanceof Arc a) {
      return new Arc(a.centre(), a.radius(), a.start() + a.sweep() * t0, a.sweep() * (t1 - t0));
    }
    EllipticArc e = (EllipticArc) edge;
    return new EllipticArc(
        e.centre(), e.rx(), e.ry(), e.turn(), e.start() + e.sweep() * t0, e.sweep() * (t1 - t0));
  }
}
