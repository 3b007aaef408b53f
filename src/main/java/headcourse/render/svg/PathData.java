package headcourse.render.svg;

import headcourse.geom.Arc;
import headcourse.geom.Cubic;
import headcourse.geom.Edge;
import headcourse.geom.EllipticArc;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.text.Utf8Buffer;
import java.util.List;

/** The {@code d} of a path. */
record PathData(Utf8Buffer out) {
  void put(Path path) {
    List<Edge> edges = path.edges();
    boolean closed = path.closed();
    out.put('M');
    point(path.start());
    int last = edges.size() - 1;
    for (int i = 0; i <= last; i++) {
      Edge e = edges.get(i);
      if (e instanceof Arc a) {
        arc(e, a.radius(), a.radius(), 0, a.sweep());
      } else if (e instanceof EllipticArc a) {
        arc(e, a.rx(), a.ry(), a.turn(), a.sweep());
      } else if (e instanceof Cubic c) {
        out.put('C');
        point(c.control1());
        out.put(' ');
        point(c.control2());
        out.put(' ');
        point(c.to());
      } else if (!(closed && i == last && i > 0)) {
        out.put('L');
        point(e.to());
      }
    }
    if (closed) {
      out.put('Z');
    }
  }

  private void point(Point p) {
    out.number(p.x()).put(' ').number(p.y());
  }

  /** In parts below half a turn, since the end of a whole turn is its start. */
  private void arc(Edge edge, double rx, double ry, double turn, double sweep) {
    int parts = Math.max(1, (int) Math.ceil(Math.abs(sweep) / (0.99 * Math.PI)));
    for (int i = 1; i <= parts; i++) {
      out.put('A').number(rx).put(' ').number(ry).put(' ').number(Math.toDegrees(turn));
      out.put(' ').put('0').put(' ').put(sweep > 0 ? '1' : '0').put(' ');
      point(edge.at((double) i / parts));
    }
  }
}
