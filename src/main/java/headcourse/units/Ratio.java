package headcourse.units;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** An exact number that is not negative, as typed: {@code 7}, {@code 7.5}, {@code 7 15/16}. */
record Ratio(BigInteger num, BigInteger den) {
  /** A pattern without groups that finds what {@link #of} reads. */
  static final String PATTERN =
      "(?:[0-9]{1,12}(?:\\s+|-)[0-9]{1,6}/[0-9]{1,6}|[0-9]{1,6}/[0-9]{1,6}"
          + "|[0-9]{1,12}(?:\\.[0-9]{1,15})?|\\.[0-9]{1,15})";

  private static final Pattern MIXED =
      Pattern.compile("(?:([0-9]{1,12})(?:\\s+|-))?([0-9]{1,6})/([0-9]{1,6})");

  static Ratio of(String text) throws NotationException {
    Matcher m = MIXED.matcher(text);
    if (!m.matches()) {
      BigDecimal d = new BigDecimal(text);
      int scale = Math.max(0, d.scale());
      return new Ratio(d.movePointRight(scale).toBigIntegerExact(), BigInteger.TEN.pow(scale));
    }
    BigInteger den = new BigInteger(m.group(3));
    BigInteger num = new BigInteger(m.group(2));
    if (den.signum() == 0) {
      throw new NotationException("a fraction can't have 0 below the line");
    }
    if (m.group(1) == null) {
      return new Ratio(num, den);
    }
    if (num.compareTo(den) >= 0) {
      throw new NotationException("after a whole number the fraction must be less than 1");
    }
    return new Ratio(new BigInteger(m.group(1)).multiply(den).add(num), den);
  }

  Ratio times(long factor) {
    return new Ratio(num.multiply(BigInteger.valueOf(factor)), den);
  }

  Ratio plus(Ratio o) {
    return new Ratio(num.multiply(o.den).add(o.num.multiply(den)), den.multiply(o.den));
  }

  boolean less(long whole) {
    return num.compareTo(den.multiply(BigInteger.valueOf(whole))) < 0;
  }

  /** The nearest whole number, halves up. */
  BigInteger rounded() {
    BigInteger two = BigInteger.TWO;
    return num.multiply(two).add(den).divide(den.multiply(two));
  }

  double value() {
    return new BigDecimal(num)
        .divide(new BigDecimal(den), java.math.MathContext.DECIMAL64)
        .doubleValue();
  }
}
