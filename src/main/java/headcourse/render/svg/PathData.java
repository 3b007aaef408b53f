package headcourse.render.svg;

import headcourse.geom.Arc;
import headcourse.geom.Cubic;
import headcourse.geom.Edge;
import headcourse.geom.EllipticArc;
import headcourse.geom.Path;

/** The {@code d} of a path. */
final class PathData {
  private final Figures out = new Figures();

  private PathData() {}

  static Figures of(Path path) {
    PathData d = new PathData();
    d.out.put('M');
    d.out.point(path.start());
    int last = path.edges().size() - 1;
    for (int i = 0; i <= last; i++) {
      Edge e = path.edges().get(i);
      if (e instanceof Arc a) {
        d.arc(e, a.radius(), a.radius(), 0, a.sweep());
      } else if (e instanceof EllipticArc a) {
        d.arc(e, a.rx(), a.ry(), a.turn(), a.sweep());
      } else if (e instanceof Cubic c) {
        d.out.put('C');
        d.out.point(c.control1());
        d.out.put(' ');
        d.out.point(c.control2());
        d.out.put(' ');
        d.out.point(c.to());
      } else if (!(path.closed() && i == last && i > 0)) {
        d.out.put('L');
        d.out.point(e.to());
      }
    }
    if (path.closed()) {
      d.out.put('Z');
    }
    return d.out;
  }

  /** In parts below half a turn, since the end of a whole turn is its start. */
  private void arc(Edge edge, double rx, double ry, double turn, double sweep) {
    int parts = Math.max(1, (int) Math.ceil(Math.abs(sweep) / (0.99 * Math.PI)));
    for (int i = 1; i <= parts; i++) {
      out.put('A').number(rx).put(' ').number(ry).put(' ').number(Math.toDegrees(turn));
      out.put(' ').put('0').put(' ').put(sweep > 0 ? '1' : '0').put(' ');
      out.point(edge.at((double) i / parts));
    }
  }
}
