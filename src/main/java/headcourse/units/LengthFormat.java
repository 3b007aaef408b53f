package headcourse.units;

import java.math.BigDecimal;

/**
 * Writes lengths as a tape shows them: feet, inches and fractions, or millimetres; never a decimal
 * inch.
 *
 * @param units the job's units
 * @param grid the finest step that is printed; lengths off it are rounded to it, halves away from
 *     zero
 */
public record LengthFormat(Units units, Grid grid) {
  private static final String SUPER = "⁰¹²³⁴⁵⁶⁷⁸⁹";
  private static final String SUB = "₀₁₂₃₄₅₆₇₈₉";

  /** Inches and a fraction, as {@code 64 ¹⁄₈"}; or millimetres without a unit, as {@code 1629}. */
  public String tape(Length length) {
    return units == Units.INCH ? inches(length, true) + "\"" : millimetres(length);
  }

  /** Feet and inches, as {@code 16'-0"}, from a foot up; or millimetres without a unit. */
  public String building(Length length) {
    if (units != Units.INCH) {
      return millimetres(length);
    }
    Length rounded = grid.snap(length);
    long pm = Math.abs(rounded.picometres());
    long foot = 12 * Length.PM_PER_INCH;
    if (pm < foot) {
      return tape(length);
    }
    String sign = rounded.picometres() < 0 ? "-" : "";
    Length rest = new Length(pm % foot);
    String nought = rest.isZero() || rest.picometres() >= Length.PM_PER_INCH ? "" : "0 ";
    return sign + pm / foot + "'-" + nought + inches(rest, true) + "\"";
  }

  /** As {@link #tape} with the unit always said: {@code 64 ¹⁄₈"}, {@code 1629 mm}. */
  public String withUnit(Length length) {
    return units == Units.INCH ? tape(length) : millimetres(length) + " mm";
  }

  /**
   * Plain characters, as a job file has it: {@code 64 1/8}, {@code 1629}. Millimetres have all
   * their decimals, so that what is read again lies on the grid.
   */
  public String plain(Length length) {
    return units == Units.INCH
        ? inches(length, false)
        : BigDecimal.valueOf(grid.snap(length).picometres(), 9)
            .stripTrailingZeros()
            .toPlainString();
  }

  /** Plain characters with the unit: {@code 64 1/8"}, {@code 1629 mm}. */
  public String plainWithUnit(Length length) {
    return units == Units.INCH ? inches(length, false) + "\"" : millimetres(length) + " mm";
  }

  /**
   * A small length that nobody measures, as a tolerance is: {@code ¹⁄₉₆"} where it is a whole part
   * of an inch, else to 1/512 in; or to a hundredth of a millimetre, as {@code 0.26 mm}.
   */
  public String part(Length length) {
    if (units != Units.INCH) {
      return new LengthFormat(units, new Grid(Length.mm(0.01))).withUnit(length);
    }
    long pm = length.picometres();
    long n = pm <= 0 ? 0 : Math.round((double) Length.PM_PER_INCH / pm);
    return n > 1 && Math.abs(n * pm - Length.PM_PER_INCH) <= n
        ? SUPER.charAt(1) + "⁄" + digits(n, SUB) + "\""
        : new LengthFormat(units, new Grid(Length.inches(1 / 512.0))).withUnit(length);
  }

  private String inches(Length length, boolean stacked) {
    Length rounded = grid.snap(length);
    // Inch jobs print binary fractions; the denominator is the least that holds the value.
    long den = 1;
    long pm = Math.abs(rounded.picometres());
    while (den < 512 && (pm * den) % Length.PM_PER_INCH != 0) {
      den *= 2;
    }
    long num = Math.round((double) pm * den / Length.PM_PER_INCH);
    long whole = num / den;
    long rest = num % den;
    String sign = rounded.picometres() < 0 ? "-" : "";
    if (rest == 0) {
      return sign + whole;
    }
    String fraction = stacked ? digits(rest, SUPER) + "⁄" + digits(den, SUB) : rest + "/" + den;
    return sign + (whole == 0 ? "" : whole + " ") + fraction;
  }

  private static String digits(long n, String set) {
    StringBuilder s = new StringBuilder();
    for (char c : Long.toString(n).toCharArray()) {
      s.append(set.charAt(c - '0'));
    }
    return s.toString();
  }

  private String millimetres(Length length) {
    Length rounded = grid.snap(length);
    if (rounded.picometres() % Length.PM_PER_MM == 0) {
      return Long.toString(rounded.picometres() / Length.PM_PER_MM);
    }
    String s = Decimals.fixed(rounded.mm(), 3);
    int end = s.length();
    while (s.charAt(end - 1) == '0') {
      end--;
    }
    return s.substring(0, end);
  }

  /** An angle to a tenth of a degree, as {@code 6.3°}; never {@code -0.0°}. */
  public static String degrees(Angle angle) {
    String s = Decimals.fixed(angle.degrees(), 1) + "°";
    return s.equals("-0.0°") ? "0.0°" : s;
  }
}
