package headcourse.units;

import java.util.regex.Pattern;

/** Reads plain numbers: {@code 12}, {@code -0.5}, {@code 1 1/2}; no exponents, no names. */
public final class NumberParser {
  private static final Pattern NUMBER = Pattern.compile("([+-]?)\\s*(" + Ratio.PATTERN + ")");

  private NumberParser() {}

  /**
   * Reads a number.
   *
   * @throws NotationException if the text is none
   */
  public static double parse(String text) throws NotationException {
    var m = NUMBER.matcher(Notation.plain(text));
    if (!m.matches()) {
      Notation.comma(text.strip());
      throw new NotationException("not a number; write it as 12, 0.5 or 1/2");
    }
    double v = Ratio.of(m.group(2)).value();
    return m.group(1).equals("-") && v != 0 ? -v : v;
  }
}
