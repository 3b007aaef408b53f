package headcourse.units;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Writes numbers with a fixed count of decimals, halves away from zero, as {@link
 * java.util.Formatter} does with the root locale; without its start-up, which a short run feels.
 */
public final class Decimals {
  private static final long[] TENS = {1, 10, 100, 1000, 10_000};

  private Decimals() {}

  /**
   * A number in plain digits, as {@code 12.50}; a negative one keeps its sign, even if only noughts
   * are left.
   *
   * @param value finite
   * @param places decimals, 0 to 4
   */
  public static String fixed(double value, int places) {
    double size = Math.abs(value) * TENS[places];
    double whole = Math.rint(size);
    if (!(size < 1e9) || Math.abs(size - whole) > 0.499_999) {
      // Huge, or so near the middle of two that the exact digits decide.
      return new BigDecimal(Double.toString(value))
          .setScale(places, RoundingMode.HALF_UP)
          .toPlainString();
    }
    long n = (long) whole;
    StringBuilder s = new StringBuilder();
    s.append(Double.compare(value, 0) < 0 ? "-" : "").append(n / TENS[places]);
    if (places > 0) {
      String rest = Long.toString(n % TENS[places]);
      s.append('.').append("0".repeat(places - rest.length())).append(rest);
    }
    return s.toString();
  }

  /** A whole number with its thousands set apart, as {@code 9,991}. */
  public static String grouped(int number) {
    String digits = Integer.toString(Math.abs(number));
    StringBuilder s = new StringBuilder(number < 0 ? "-" : "");
    for (int i = 0; i < digits.length(); i++) {
      s.append(i > 0 && (digits.length() - i) % 3 == 0 ? "," : "").append(digits.charAt(i));
    }
    return s.toString();
  }
}
