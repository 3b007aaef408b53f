package headcourse.render.pdf;

import headcourse.geom.Arc;
import headcourse.geom.Cubic;
import headcourse.geom.Edge;
import headcourse.geom.EllipticArc;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Vec;
import java.util.Arrays;

/**
 * A content stream in the making. Numbers are in paper millimetres, kept to four decimals, so that
 * what is written does not depend on how a float is rounded.
 */
final class Content {
  /** How far a Bézier may lie from the arc that it stands for, mm. */
  private static final double ARC_TOLERANCE = 0.002;

  private byte[] bytes = new byte[16384];
  private int size;

  byte[] toBytes() {
    return Arrays.copyOf(bytes, size);
  }

  private void put(int b) {
    if (size == bytes.length) {
      bytes = Arrays.copyOf(bytes, size * 2);
    }
    bytes[size++] = (byte) b;
  }

  /** An operator, a name, or anything else in ASCII, and the white space after it. */
  Content word(String ascii) {
    for (int i = 0; i < ascii.length(); i++) {
      put(ascii.charAt(i));
    }
    put(' ');
    return this;
  }

  /** An operator that ends a line. */
  Content op(String operator) {
    word(operator);
    bytes[size - 1] = '\n';
    return this;
  }

  Content number(double value) {
    long n = Math.round(value * 10000);
    if (n < 0) {
      put('-');
      n = -n;
    }
    digits(n / 10000);
    int rest = (int) (n % 10000);
    if (rest != 0) {
      put('.');
      for (int unit = 1000; rest != 0; unit /= 10) {
        put('0' + rest / unit);
        rest %= unit;
      }
    }
    put(' ');
    return this;
  }

  private void digits(long n) {
    if (n >= 10) {
      digits(n / 10);
    }
    put('0' + (int) (n % 10));
  }

  /** A factor, to eight decimals: with four it would be off by 0.02 mm over a metre. */
  Content exact(double factor) {
    long n = Math.round(Math.abs(factor) * 1e8);
    String decimals = Long.toString(100_000_000 + n % 100_000_000).substring(1);
    return word((factor < 0 ? "-" : "") + n / 100_000_000 + "." + decimals);
  }

  Content point(Point p) {
    return number(p.x()).number(p.y());
  }

  /** The path as the current one, not painted yet. */
  Content path(Path path) {
    point(path.start()).op("m");
    Point at = path.start();
    int last = path.edges().size() - 1;
    for (int i = 0; i <= last; i++) {
      Edge e = path.edges().get(i);
      if (e instanceof Arc a) {
        arc(a.centre(), a.radius(), a.radius(), 0, a.start(), a.sweep());
      } else if (e instanceof EllipticArc a) {
        arc(a.centre(), a.rx(), a.ry(), a.turn(), a.start(), a.sweep());
      } else if (e instanceof Cubic c) {
        point(c.control1()).point(c.control2()).point(c.to()).op("c");
      } else if (!(path.closed() && i == last && i > 0)) {
        // The last side of a polygon is drawn by closing it, so that its corner is mitred.
        point(e.to()).op("l");
      }
      at = e.to();
    }
    if (path.closed() && at.distance(path.start()) < 1e-3) {
      op("h");
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
    Vec u = Vec.direction(turn);
    Vec v = u.normal();
    for (int i = 0; i < n; i++) {
      double a = start + step * i;
      double b = start + step * (i + 1);
      double ca = Math.cos(a);
      double sa = Math.sin(a);
      double cb = Math.cos(b);
      double sb = Math.sin(b);
      on(c, u, v, rx * (ca - k * sa), ry * (sa + k * ca));
      on(c, u, v, rx * (cb + k * sb), ry * (sb - k * cb));
      on(c, u, v, rx * cb, ry * sb);
      op("c");
    }
  }

  static double deviation(double radius, double angle) {
    double s = Math.sin(angle / 4);
    double cos = Math.cos(angle / 4);
    return radius * 4 / 27 * Math.pow(s, 6) / (cos * cos);
  }

  private void on(Point c, Vec u, Vec v, double x, double y) {
    point(c.plus(u.times(x)).plus(v.times(y)));
  }
}
