package headcourse.layout.curved;

import headcourse.geom.Edge;
import headcourse.geom.EllipticArc;
import headcourse.geom.Point;
import headcourse.geom.Vec;
import java.util.ArrayList;
import java.util.List;

/**
 * A quarter of an ellipse with its axes along x and y, from the crown to the springing.
 *
 * <p>The place at eccentric angle u from the crown is (a sin u, b cos u); the curve moves at {@code
 * √(a² cos² u + b² sin² u)}, whose integral is the length along it. The integral is taken by
 * Gauss's rule of five points over 128 panels (relative error below 1e-12 for axes within 20 : 1)
 * and turned round by Newton's method. The parallel curve of an ellipse is no ellipse: it is given
 * as circular arcs through three of its own places, none farther from it than {@link #FIT}.
 */
final class EllipseRun implements Run {
  /**
   * How far an arc may stray from the parallel curve, mm: a hundredth of what a pencil can show.
   */
  static final double FIT = 1e-3;

  private static final int PANELS = 128;
  private static final double STEP = Math.PI / 2 / PANELS;
  private static final double[] NODES = {
    0, 0.5384693101056831, -0.5384693101056831, 0.9061798459386640, -0.9061798459386640
  };
  private static final double[] WEIGHTS = {
    0.5688888888888889,
    0.4786286704993665,
    0.4786286704993665,
    0.2369268850561891,
    0.2369268850561891
  };

  private final double a;
  private final double b;
  private final double[] lengths = new double[PANELS + 1];

  /**
   * A quarter ellipse about the origin.
   *
   * @param a semi-axis along x, positive
   * @param b semi-axis along y, positive
   */
  EllipseRun(double a, double b) {
    this.a = a;
    this.b = b;
    for (int i = 0; i < PANELS; i++) {
      lengths[i + 1] = lengths[i] + integral(i * STEP, (i + 1) * STEP);
    }
  }

  private double speed(double u) {
    double x = a * Math.cos(u);
    double y = b * Math.sin(u);
    return Math.sqrt(x * x + y * y);
  }

  private double integral(double u0, double u1) {
    double half = (u1 - u0) / 2;
    double sum = 0;
    for (int i = 0; i < NODES.length; i++) {
      sum += WEIGHTS[i] * speed((u0 + u1) / 2 + half * NODES[i]);
    }
    return sum * half;
  }

  /** The eccentric angle from the crown at a length. */
  private double angle(double s) {
    int lo = 0;
    int hi = PANELS;
    while (hi - lo > 1) {
      int mid = (lo + hi) >>> 1;
      if (lengths[mid] <= s) {
        lo = mid;
      } else {
        hi = mid;
      }
    }
    double base = lo * STEP;
    double u = base + (s - lengths[lo]) / (lengths[hi] - lengths[lo]) * STEP;
    for (int i = 0; i < 8; i++) {
      double step = (lengths[lo] + integral(base, u) - s) / speed(u);
      u -= step;
      // Newton's step squares the error: the next one would be lost in rounding.
      if (Math.abs(step) < 1e-10) {
        break;
      }
    }
    return u;
  }

  @Override
  public double length() {
    return lengths[PANELS];
  }

  @Override
  public Frame frame(double s) {
    double u = angle(s);
    double v = speed(u);
    double sin = Math.sin(u);
    double cos = Math.cos(u);
    return new Frame(
        new Point(a * sin, b * cos), new Vec(a * cos / v, -b * sin / v), a * b / (v * v * v));
  }

  @Override
  public Edge between(double s0, double s1) {
    double u0 = angle(s0);
    return new EllipticArc(Point.ORIGIN, a, b, 0, Math.PI / 2 - u0, u0 - angle(s1));
  }

  @Override
  public List<Edge> outside(double d, double s0, double s1) {
    List<Edge> edges = new ArrayList<>();
    fit(d, s0, s1, edges);
    return edges;
  }

  private Point outer(double d, double s) {
    return frame(s).outside(d);
  }

  private void fit(double d, double s0, double s1, List<Edge> edges) {
    double mid = (s0 + s1) / 2;
    ThreePoints arc = new ThreePoints(outer(d, s0), outer(d, mid), outer(d, s1));
    double off =
        Math.max(arc.distance(outer(d, (s0 + mid) / 2)), arc.distance(outer(d, (mid + s1) / 2)));
    if (off > FIT && s1 - s0 > 1e-3) {
      fit(d, s0, mid, edges);
      fit(d, mid, s1, edges);
    } else {
      edges.add(arc.edge());
    }
  }
}
