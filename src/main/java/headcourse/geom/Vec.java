package headcourse.geom;

/**
 * A displacement in the plane, in millimetres.
 *
 * @param x to the right
 * @param y along the y axis
 */
public record Vec(double x, double y) {
  /** Refuses what is not finite. */
  public Vec {
    // x − x is nought for every finite x and for no other.
    if (!(x - x == 0 && y - y == 0)) {
      throw new IllegalArgumentException("not a displacement: " + x + ", " + y);
    }
  }

  /** The sum. */
  public Vec plus(Vec o) {
    return new Vec(x + o.x, y + o.y);
  }

  /** This displacement scaled. */
  public Vec times(double f) {
    return new Vec(x * f, y * f);
  }

  /** Its length. */
  public double length() {
    return Math.hypot(x, y);
  }

  /** The displacement of length one; undefined for nothing. */
  public Vec unit() {
    double l = length();
    return new Vec(x / l, y / l);
  }

  /** Turned a quarter turn from x towards y. */
  public Vec normal() {
    return new Vec(0 - y, x);
  }

  /** The scalar product. */
  public double dot(Vec o) {
    return x * o.x + y * o.y;
  }

  /** The z component of the vector product. */
  public double cross(Vec o) {
    return x * o.y - y * o.x;
  }

  /** The direction at an angle from x towards y, in radians. */
  public static Vec direction(double radians) {
    return new Vec(Math.cos(radians), Math.sin(radians));
  }

  /** The angle from x towards y, in radians, −π … π. */
  public double angle() {
    return Math.atan2(y, x);
  }
}
