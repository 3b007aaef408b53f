package headcourse.geom;

/**
 * A place in the plane, in millimetres.
 *
 * @param x to the right
 * @param y up in model space, down on paper
 */
public record Point(double x, double y) {
  /** The origin. */
  public static final Point ORIGIN = new Point(0, 0);

  /** Refuses what is not finite; minus zero becomes zero. */
  public Point {
    // x − x is nought for every finite x and for no other.
    if (!(x - x == 0 && y - y == 0)) {
      throw new IllegalArgumentException("not a point: " + x + ", " + y);
    }
    x += 0.0;
    y += 0.0;
  }

  /** This place moved. */
  public Point plus(Vec v) {
    return new Point(x + v.x(), y + v.y());
  }

  /** The displacement from {@code other} to here. */
  public Vec minus(Point other) {
    return new Vec(x - other.x, y - other.y);
  }

  /** The distance to another place. */
  public double distance(Point other) {
    return Math.hypot(x - other.x, y - other.y);
  }

  /** The place a fraction of the way to another. */
  public Point towards(Point other, double fraction) {
    return new Point(x + (other.x - x) * fraction, y + (other.y - y) * fraction);
  }

  /** The place mirrored in the vertical axis. */
  public Point mirrored() {
    return new Point(0 - x, y);
  }
}
