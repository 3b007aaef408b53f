package headcourse.geom;

/**
 * A map of the plane that keeps shapes: uniform scale, optional flip of y, rotation, then a move.
 *
 * <p>{@code p ↦ (a·x − s·b·y + dx, b·x + s·a·y + dy)} with s = −1 where flipped.
 *
 * @param a scale times cosine
 * @param b scale times sine
 * @param flip whether y is turned over first
 * @param dx move along x
 * @param dy move along y
 */
public record Similarity(double a, double b, boolean flip, double dx, double dy) {
  /** The map that changes nothing. */
  public static final Similarity IDENTITY = new Similarity(1, 0, false, 0, 0);

  /** A move. */
  public static Similarity move(double dx, double dy) {
    return new Similarity(1, 0, false, dx, dy);
  }

  /** From model space (y up) to paper (y down): scale, with the model's origin put at a place. */
  public static Similarity toPaper(double scale, Point originOnPaper) {
    return new Similarity(scale, 0, true, originOnPaper.x(), originOnPaper.y());
  }

  /** A turn about the origin, from x towards y, in radians. */
  public static Similarity turn(double radians) {
    return new Similarity(Math.cos(radians), Math.sin(radians), false, 0, 0);
  }

  /** The mirror image in the y axis. */
  public static Similarity mirrorX() {
    return new Similarity(-1, 0, true, 0, 0);
  }

  /** The place mapped. */
  public Point apply(Point p) {
    double y = flip ? -p.y() : p.y();
    return new Point(a * p.x() - b * y + dx, b * p.x() + a * y + dy);
  }

  /** The displacement mapped. */
  public Vec apply(Vec v) {
    double y = flip ? -v.y() : v.y();
    return new Vec(a * v.x() - b * y, b * v.x() + a * y);
  }

  /** An angle from x towards y, mapped. */
  public double applyAngle(double radians) {
    return (flip ? -radians : radians) + Math.atan2(b, a);
  }

  /** The scale. */
  public double scale() {
    return Math.hypot(a, b);
  }

  /** This map, then another. */
  public Similarity then(Similarity next) {
    double nb = next.flip ? -1 : 1;
    // The linear part of next applied to this one's columns; a flip conjugates the rotation.
    double na = next.a * a - next.b * nb * b;
    double nbb = next.b * a + next.a * nb * b;
    Point d = next.apply(new Point(dx, dy));
    return new Similarity(na, nbb, flip != next.flip, d.x(), d.y());
  }
}
