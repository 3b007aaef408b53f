package headcourse.units;

import java.math.BigInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads lengths as a mason writes them: {@code 16'}, {@code 2' 4 1/2"}, {@code 2'-4 1/2"}, {@code 7
 * 15/16"}, {@code 190 mm}, {@code 1.2 m}, {@code 19 cm}, and bare numbers in the job's units. Exact
 * to the picometre; a fraction that is no whole number of picometres is rounded once, halves away
 * from zero.
 */
public final class LengthParser {
  private static final String N = "(" + Ratio.PATTERN + ")";
  private static final String INCH = "(?:\"|in\\.?|inch|inches)";
  private static final Pattern SIGN = Pattern.compile("([+-]?)\\s*(.*)");
  private static final Pattern FEET =
      Pattern.compile(
          N + "\\s*(?:'|ft\\.?|foot|feet)(?:\\s*-?\\s*" + N + "\\s*(?:" + INCH + ")?)?");
  private static final Pattern INCHES = Pattern.compile(N + "\\s*" + INCH);
  private static final Pattern METRIC = Pattern.compile(N + "\\s*(mm|cm|m)");
  private static final Pattern BARE = Pattern.compile(N);
  private static final BigInteger MOST = BigInteger.valueOf(1_000_000 * Length.PM_PER_MM);

  private LengthParser() {}

  /**
   * Reads a length.
   *
   * @param text as written
   * @param units what a bare number is in
   * @throws NotationException if it is no length, or longer than a kilometre
   */
  public static Length parse(String text, Units units) throws NotationException {
    String plain = Notation.plain(text);
    Matcher signed = SIGN.matcher(plain);
    if (!signed.matches()) {
      throw notLength(units);
    }
    BigInteger pm = size(signed.group(2), units).rounded();
    if (pm.compareTo(MOST) > 0) {
      throw new NotationException("longer than a kilometre");
    }
    return new Length(signed.group(1).equals("-") ? -pm.longValueExact() : pm.longValueExact());
  }

  private static Ratio size(String s, Units units) throws NotationException {
    Matcher m = FEET.matcher(s);
    if (m.matches()) {
      Ratio feet = Ratio.of(m.group(1)).times(12);
      Ratio inches = Ratio.of(m.group(2) == null ? "0" : m.group(2));
      if (m.group(2) != null && !inches.less(12)) {
        throw new NotationException("after feet there are fewer than 12 inches" + carried(m));
      }
      return feet.plus(inches).times(Length.PM_PER_INCH);
    }
    m = INCHES.matcher(s);
    if (m.matches()) {
      return Ratio.of(m.group(1)).times(Length.PM_PER_INCH);
    }
    m = METRIC.matcher(s);
    if (m.matches()) {
      long mm = m.group(2).equals("m") ? 1000 : m.group(2).equals("cm") ? 10 : 1;
      return Ratio.of(m.group(1)).times(mm * Length.PM_PER_MM);
    }
    m = BARE.matcher(s);
    if (m.matches()) {
      return Ratio.of(m.group(1))
          .times(units == Units.INCH ? Length.PM_PER_INCH : Length.PM_PER_MM);
    }
    Notation.comma(s);
    throw notLength(units);
  }

  /** What is meant by more inches than a foot has, where both are whole numbers. */
  private static String carried(Matcher m) {
    if (!(m.group(1) + m.group(2)).matches("[0-9]{1,8}")) {
      return "";
    }
    int inches = Integer.parseInt(m.group(2));
    return "; write "
        + (Integer.parseInt(m.group(1)) + inches / 12)
        + "'"
        + (inches % 12 == 0 ? "" : " " + inches % 12 + "\"");
  }

  private static NotationException notLength(Units units) {
    return new NotationException(
        units == Units.INCH
            ? "not a length; write it as 7 15/16, 2' 4 1/2\" or 190 mm"
            : "not a length; write it as 190, 1.2 m or 7 1/2\"");
  }
}
