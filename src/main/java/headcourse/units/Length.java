package headcourse.units;

/**
 * A length, or a signed distance along a line, held as a whole number of picometres.
 *
 * <p>Every millimetre value with up to nine decimals and every inch value down to 1/512 in is exact
 * (1 in = 25 400 000 000 pm), so an inch job and its metric twin compare equal. The range is about
 * ±9 000 km; overflow throws {@link ArithmeticException}.
 *
 * @param picometres the length in picometres (10⁻¹² m)
 */
public record Length(long picometres) implements Comparable<Length> {
  /** Picometres in a millimetre. */
  public static final long PM_PER_MM = 1_000_000_000L;

  /** Picometres in an inch. */
  public static final long PM_PER_INCH = 25_400_000_000L;

  /** No length. */
  public static final Length ZERO = new Length(0);

  /**
   * A length in millimetres, rounded to the picometre.
   *
   * @param mm millimetres, finite
   * @throws IllegalArgumentException if {@code mm} is not finite or out of range
   */
  public static Length mm(double mm) {
    return rounded(mm * PM_PER_MM, mm, "mm");
  }

  /**
   * A length in inches, rounded to the picometre.
   *
   * @param inches inches, finite
   * @throws IllegalArgumentException if {@code inches} is not finite or out of range
   */
  public static Length inches(double inches) {
    return rounded(inches * PM_PER_INCH, inches, "in");
  }

  private static Length rounded(double pm, double given, String unit) {
    if (!(Math.abs(pm) < 9e18)) {
      throw new IllegalArgumentException("not a length: " + given + " " + unit);
    }
    return new Length(Math.round(pm));
  }

  /** This length in millimetres. */
  public double mm() {
    return (double) picometres / PM_PER_MM;
  }

  /** This length in inches. */
  public double inches() {
    return (double) picometres / PM_PER_INCH;
  }

  /** The sum. */
  public Length plus(Length other) {
    return new Length(Math.addExact(picometres, other.picometres));
  }

  /** The difference. */
  public Length minus(Length other) {
    return new Length(Math.subtractExact(picometres, other.picometres));
  }

  /** This length so many times over. */
  public Length times(long factor) {
    return new Length(Math.multiplyExact(picometres, factor));
  }

  /** Half of this length; an odd picometre is dropped. */
  public Length half() {
    return new Length(picometres / 2);
  }

  /** The same distance the other way. */
  public Length negated() {
    return new Length(Math.negateExact(picometres));
  }

  /** This length without its sign. */
  public Length abs() {
    return picometres < 0 ? negated() : this;
  }

  /** The greater of two lengths. */
  public Length max(Length other) {
    return compareTo(other) >= 0 ? this : other;
  }

  /** The lesser of two lengths. */
  public Length min(Length other) {
    return compareTo(other) <= 0 ? this : other;
  }

  /** Whether this is greater than zero. */
  public boolean isPositive() {
    return picometres > 0;
  }

  /** Whether this is zero. */
  public boolean isZero() {
    return picometres == 0;
  }

  @Override
  public int compareTo(Length other) {
    return Long.compare(picometres, other.picometres);
  }

  @Override
  public String toString() {
    return mm() + " mm";
  }
}
