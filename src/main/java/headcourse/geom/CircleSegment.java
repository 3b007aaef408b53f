package headcourse.geom;

/**
 * The piece of a circle between an arc and its chord. Symbols: R radius, θ angle at the centre, c
 * chord, h height (rise), s arc. Any two that determine it give the others: {@code R = (c²/4 +
 * h²)/2h}, {@code c = 2R sin(θ/2)}, {@code h = R(1 − cos(θ/2))}, {@code s = Rθ}, area {@code R²(θ −
 * sin θ)/2} (elementary geometry).
 *
 * @param radius R, positive, mm
 * @param angle θ, 0 … 2π, radians
 */
public record CircleSegment(double radius, double angle) {
  /** Refuses what is no segment. */
  public CircleSegment {
    if (!(radius > 0) || !Double.isFinite(radius) || !(angle >= 0) || !(angle <= 2 * Math.PI)) {
      throw new IllegalArgumentException("not a segment: R " + radius + ", angle " + angle);
    }
  }

  /** From a chord and the height of the arc above it, both positive. */
  public static CircleSegment ofChordAndHeight(double chord, double height) {
    double half = chord / 2;
    double radius = (half * half + height * height) / (2 * height);
    return new CircleSegment(radius, 4 * Math.atan2(height, half));
  }

  /** From a chord and a radius of at least half of it; the lesser of the two segments. */
  public static CircleSegment ofChordAndRadius(double chord, double radius) {
    return new CircleSegment(radius, 2 * Math.asin(chord / (2 * radius)));
  }

  /** The chord. */
  public double chord() {
    return 2 * radius * Math.sin(angle / 2);
  }

  /** The height of the arc above the chord. */
  public double height() {
    // 1 − cos loses its digits for flat arcs; 2 sin² of the quarter angle does not.
    double s = Math.sin(angle / 4);
    return 2 * radius * s * s;
  }

  /** The length of the arc. */
  public double arc() {
    return radius * angle;
  }

  /** The area between arc and chord. */
  public double area() {
    return radius * radius * (angle - Math.sin(angle)) / 2;
  }
}
