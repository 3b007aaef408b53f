package headcourse.sheet.frame;

import headcourse.geom.Point;

/** {@code (x, y) ↦ (a·x + c·y + e, b·x + d·y + f)}, as SVG's {@code matrix(a b c d e f)}. */
record Affine(double a, double b, double c, double d, double e, double f) {
  static final Affine IDENTITY = new Affine(1, 0, 0, 1, 0, 0);

  Point apply(double x, double y) {
    return new Point(a * x + c * y + e, b * x + d * y + f);
  }

  /** The map that first does {@code inner}, then this. */
  Affine after(Affine inner) {
    return new Affine(
        a * inner.a + c * inner.b,
        b * inner.a + d * inner.b,
        a * inner.c + c * inner.d,
        b * inner.c + d * inner.d,
        a * inner.e + c * inner.f + e,
        b * inner.e + d * inner.f + f);
  }

  /** By how much areas grow, as a scale of lengths. */
  double scale() {
    return Math.sqrt(Math.abs(a * d - b * c));
  }

  /** Whether its numbers are such as a drawing on paper has. */
  boolean sane() {
    for (double v : new double[] {a, b, c, d, e, f}) {
      if (!(Math.abs(v) <= 1e5)) {
        return false;
      }
    }
    return true;
  }

  /** Whether it keeps shapes and does not mirror them, so that letters can be drawn under it. */
  boolean upright() {
    double size = Math.hypot(a, b);
    return size > 1e-9 && Math.abs(a - d) < 1e-6 * size && Math.abs(b + c) < 1e-6 * size;
  }
}
