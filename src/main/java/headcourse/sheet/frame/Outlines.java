package headcourse.sheet.frame;

import headcourse.geom.Cubic;
import headcourse.geom.Edge;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Straight;
import java.util.ArrayList;
import java.util.List;

/** Collects straight and cubic edges, mapped, into paths. */
final class Outlines {
  private final Affine map;
  private final List<Path> paths = new ArrayList<>();
  private List<Edge> edges = new ArrayList<>();
  private double startX;
  private double startY;
  private double x;
  private double y;

  Outlines(Affine map) {
    this.map = map;
  }

  double x() {
    return x;
  }

  double y() {
    return y;
  }

  void move(double toX, double toY) {
    end(false);
    startX = toX;
    startY = toY;
    x = toX;
    y = toY;
  }

  void line(double toX, double toY) {
    edges.add(new Straight(map.apply(x, y), map.apply(toX, toY)));
    x = toX;
    y = toY;
  }

  void cubic(double x1, double y1, double x2, double y2, double toX, double toY) {
    edges.add(
        new Cubic(map.apply(x, y), map.apply(x1, y1), map.apply(x2, y2), map.apply(toX, toY)));
    x = toX;
    y = toY;
  }

  void close() {
    if (Math.hypot(x - startX, y - startY) > 1e-9 && !edges.isEmpty()) {
      line(startX, startY);
    }
    end(true);
    x = startX;
    y = startY;
  }

  private void end(boolean closed) {
    if (!edges.isEmpty()) {
      paths.add(new Path(edges, closed));
      edges = new ArrayList<>();
    }
  }

  List<Path> finished() {
    end(false);
    return paths;
  }

  /** An arc about a centre, eccentric angles in radians, from where the pen is. */
  void arc(double cx, double cy, double rx, double ry, double turn, double from, double sweep) {
    int n = Math.max(1, (int) Math.ceil(Math.abs(sweep) / (Math.PI / 4) - 1e-9));
    double step = sweep / n;
    double k = 4.0 / 3.0 * Math.tan(step / 4);
    double c = Math.cos(turn);
    double s = Math.sin(turn);
    for (int i = 0; i < n; i++) {
      double a = from + step * i;
      double b = a + step;
      double[] p = {
        rx * (Math.cos(a) - k * Math.sin(a)), ry * (Math.sin(a) + k * Math.cos(a)),
        rx * (Math.cos(b) + k * Math.sin(b)), ry * (Math.sin(b) - k * Math.cos(b)),
        rx * Math.cos(b), ry * Math.sin(b)
      };
      for (int j = 0; j < 6; j += 2) {
        double px = p[j];
        p[j] = cx + c * px - s * p[j + 1];
        p[j + 1] = cy + s * px + c * p[j + 1];
      }
      cubic(p[0], p[1], p[2], p[3], p[4], p[5]);
    }
  }

  /**
   * One closed path that fills what several do: the others are reached over a bridge and left over
   * it again, so that holes stay holes.
   *
   * @param evenOdd whether the inside is told by counting crossings
   */
  static Path area(List<Path> paths, boolean evenOdd) {
    List<Edge> all = new ArrayList<>();
    Point home = paths.get(0).start();
    for (int i = 0; i < paths.size(); i++) {
      Path p = paths.get(i);
      List<Edge> ring = new ArrayList<>(p.edges());
      Point last = ring.get(ring.size() - 1).to();
      if (last.distance(p.start()) > 1e-9) {
        ring.add(new Straight(last, p.start()));
      }
      if (evenOdd && paths.size() > 1) {
        ring = turned(ring, nesting(paths, i) % 2 == 0);
      }
      Point start = ring.get(0).from();
      if (i > 0 && start.distance(home) > 1e-9) {
        ring.add(0, new Straight(home, start));
        ring.add(new Straight(start, home));
      }
      all.addAll(ring);
      if (i == 0) {
        home = start;
      }
    }
    return new Path(all, true);
  }

  /** The ring, running with a positive area or with a negative one. */
  private static List<Edge> turned(List<Edge> ring, boolean positive) {
    if (new Path(ring, true).area() > 0 == positive) {
      return ring;
    }
    List<Edge> back = new ArrayList<>();
    for (int i = ring.size() - 1; i >= 0; i--) {
      back.add(ring.get(i).reversed());
    }
    return back;
  }

  private static int nesting(List<Path> paths, int index) {
    Point p = paths.get(index).start();
    int depth = 0;
    for (int i = 0; i < paths.size(); i++) {
      if (i != index && inside(paths.get(i).vertices(0.05), p)) {
        depth++;
      }
    }
    return depth;
  }

  private static boolean inside(List<Point> ring, Point p) {
    boolean in = false;
    Point a = ring.get(ring.size() - 1);
    for (Point b : ring) {
      if (a.y() > p.y() != b.y() > p.y()
          && p.x() < a.x() + (p.y() - a.y()) / (b.y() - a.y()) * (b.x() - a.x())) {
        in = !in;
      }
      a = b;
    }
    return in;
  }
}
