package headcourse.drawing;

import headcourse.geom.Arc;
import headcourse.geom.Box;
import headcourse.geom.Edge;
import headcourse.geom.Overlap;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Straight;
import headcourse.geom.Tolerance;
import java.util.ArrayList;
import java.util.List;

/** A line on a page, as thick as its pen; curves are flattened when somebody comes near. */
final class LineShape extends MarkShape {
  private static final double LEAST = 1e-9;

  private final Path path;
  private final double half;
  private List<Point> places;

  private LineShape(Path path, double half) {
    super(around(path).grown(half + Tolerance.SAME));
    this.path = path;
    this.half = half;
  }

  static LineShape of(Mark.Stroke stroke) {
    return new LineShape(stroke.path(), stroke.pen().width() / 2);
  }

  private static Box around(Path path) {
    List<Point> reach = new ArrayList<>();
    reach.add(path.start());
    for (Edge e : path.edges()) {
      if (e instanceof Arc arc) {
        double bulge = arc.radius() * (1 - Math.cos(arc.sweep() / 2));
        for (Point end : List.of(arc.from(), arc.to())) {
          reach.add(new Point(end.x() - bulge, end.y() - bulge));
          reach.add(new Point(end.x() + bulge, end.y() + bulge));
        }
      } else {
        add(reach, e);
      }
    }
    return Box.around(reach);
  }

  private static void add(List<Point> places, Edge edge) {
    if (edge instanceof Straight s) {
      places.add(s.to());
    } else {
      places.addAll(edge.flattened(Tolerance.PAPER));
    }
  }

  private List<Point> places() {
    if (places == null) {
      places = new ArrayList<>();
      places.add(path.start());
      for (Edge e : path.edges()) {
        add(places, e);
      }
    }
    return places;
  }

  @Override
  boolean touches(List<Point> quad, Box around, double margin) {
    List<Point> p = places();
    double reach = half + LEAST;
    double left = around.minX() - reach;
    double right = around.maxX() + reach;
    double upper = around.minY() - reach;
    double lower = around.maxY() + reach;
    Point a = p.get(0);
    for (int i = 1; i < p.size(); i++) {
      Point b = p.get(i);
      boolean beside = a.x() <= left && b.x() <= left || a.x() >= right && b.x() >= right;
      boolean past = a.y() <= upper && b.y() <= upper || a.y() >= lower && b.y() >= lower;
      if (!beside && !past && Overlap.deeper(quad, List.of(a, b), -margin - half)) {
        return true;
      }
      a = b;
    }
    return false;
  }
}
