package headcourse.render.pdf;

import headcourse.geom.Arc;
import headcourse.geom.Cubic;
import headcourse.geom.Edge;
import headcourse.geom.EllipticArc;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.text.Octets;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * A content stream in the making. Numbers are in paper millimetres, kept to four decimals, so that
 * what is written does not depend on how a float is rounded.
 */
final class Content {
  /** How far a Bézier may lie from the arc that it stands for, mm. */
  private static final double ARC_TOLERANCE = 0.002;

  private final Octets out = new Octets(16384);

  /** Words and their white space, to be put often. */
  static byte[] words(String ascii) {
    return ascii.getBytes(StandardCharsets.US_ASCII);
  }

  byte[] toBytes() {
    return out.toBytes();
  }

  /** Operators, names, or anything else as it is, with its white space. */
  Content put(byte[] words) {
    out.put(words);
    return this;
  }

  /** The same of what is put seldom. */
  Content put(String ascii) {
    out.put(ascii);
    return this;
  }

  /** An operator of one letter, that ends a line. */
  Content op(char operator) {
    out.put(operator).put('\n');
    return this;
  }

  Content number(double value) {
    out.number(value).put(' ');
    return this;
  }

  /** A number as it stands in a name or a word. */
  Content count(int n) {
    out.whole(n);
    return this;
  }

  /** A code of a text. */
  Content code(int code) {
    out.hex(code, 4);
    return this;
  }

  /** A factor, to eight decimals: with four it would be off by 0.02 mm over a metre. */
  Content exact(double factor) {
    long n = Math.round(Math.abs(factor) * 1e8);
    if (factor < 0) {
      out.put('-');
    }
    out.whole(n / 100_000_000).put('.').padded(n, 8).put(' ');
    return this;
  }

  Content point(Point p) {
    return point(p.x(), p.y());
  }

  private Content point(double x, double y) {
    out.number(x).put(' ').number(y).put(' ');
    return this;
  }

  /** The path as the current one, not painted yet. */
  Content path(Path path) {
    Point start = path.start();
    List<Edge> edges = path.edges();
    boolean closed = path.closed();
    point(start).op('m');
    int last = edges.size() - 1;
    for (int i = 0; i <= last; i++) {
      Edge e = edges.get(i);
      if (e instanceof Arc a) {
        arc(a.centre(), a.radius(), a.radius(), 0, a.start(), a.sweep());
      } else if (e instanceof EllipticArc a) {
        arc(a.centre(), a.rx(), a.ry(), a.turn(), a.start(), a.sweep());
      } else if (e instanceof Cubic c) {
        point(c.control1()).point(c.control2()).point(c.to()).op('c');
      } else if (!(closed && i == last && i > 0)) {
        // The last side of a polygon is drawn by closing it, so that its corner is mitred.
        point(e.to()).op('l');
      }
    }
    if (closed && edges.get(last).to().distance(start) < 1e-3) {
      op('h');
    }
    return this;
  }

  /**
   * Cubics along an elliptic arc. One of angle θ leaves the circle by R · 4/27 · sin⁶(θ/4) ÷
   * cos²(θ/4) (Goldapp, Approximation of circular arcs by cubic polynomials, 1991; from memory).
   */
  private void arc(Point c, double rx, double ry, double turn, double start, double sweep) {
    double radius = Math.max(rx, ry);
    int n = Math.max(1, (int) Math.ceil(Math.abs(sweep) / (Math.PI / 2) - 1e-9));
    while (deviation(radius, sweep / n) > ARC_TOLERANCE) {
      n++;
    }
    double step = sweep / n;
    double k = 4.0 / 3.0 * Math.tan(step / 4);
    // Its own axes; those of a circle are the paper's.
    double ux = turn == 0 ? 1 : Math.cos(turn);
    double uy = turn == 0 ? 0 : Math.sin(turn);
    double ca = Math.cos(start);
    double sa = Math.sin(start);
    for (int i = 1; i <= n; i++) {
      double b = start + step * i;
      double cb = Math.cos(b);
      double sb = Math.sin(b);
      on(c, ux, uy, rx * (ca - k * sa), ry * (sa + k * ca));
      on(c, ux, uy, rx * (cb + k * sb), ry * (sb - k * cb));
      on(c, ux, uy, rx * cb, ry * sb);
      op('c');
      ca = cb;
      sa = sb;
    }
  }

  static double deviation(double radius, double angle) {
    double s = Math.sin(angle / 4);
    double cos = Math.cos(angle / 4);
    return radius * 4 / 27 * Math.pow(s, 6) / (cos * cos);
  }

  private void on(Point c, double ux, double uy, double x, double y) {
    point(c.x() + ux * x - uy * y, c.y() + uy * x + ux * y);
  }
}
