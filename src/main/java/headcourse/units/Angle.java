package headcourse.units;

/**
 * A plane angle.
 *
 * @param radians the angle in radians, finite
 */
public record Angle(double radians) implements Comparable<Angle> {
  /** No angle. */
  public static final Angle ZERO = new Angle(0);

  /** Refuses what is not finite. */
  public Angle {
    if (!Double.isFinite(radians)) {
      throw new IllegalArgumentException("not an angle: " + radians);
    }
  }

  /** An angle of so many degrees. */
  public static Angle degrees(double degrees) {
    return new Angle(Math.toRadians(degrees));
  }

  /** The angle whose tangent is {@code offset / run}; the run is positive. */
  public static Angle ofRate(double offset, double run) {
    return new Angle(Math.atan2(offset, run));
  }

  /** This angle in degrees. */
  public double degrees() {
    return Math.toDegrees(radians);
  }

  /** The tangent. */
  public double tan() {
    return Math.tan(radians);
  }

  @Override
  public int compareTo(Angle other) {
    return Double.compare(radians, other.radians);
  }
}
