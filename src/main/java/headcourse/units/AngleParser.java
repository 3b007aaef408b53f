package headcourse.units;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads angles: degrees ({@code 12}, {@code 12°}, {@code 12.5 deg}) or rates ({@code 1/2 in 12},
 * {@code 1:24}, {@code 1/8 per foot}, {@code 10 mm per m}). A rate is the angle whose tangent it
 * is.
 */
public final class AngleParser {
  private static final Pattern DEGREES =
      Pattern.compile("([+-]?)\\s*(" + Ratio.PATTERN + ")\\s*(?:°|deg|degree|degrees)?");
  private static final Pattern IN =
      Pattern.compile("(.+?)\\s+in\\s+([^a-zA-Z]+?)(?:\\s+per\\s+(?:foot|ft)(?:\\s+of\\s+span)?)?");
  private static final Pattern TO = Pattern.compile("([^:]+):([^:]+)");
  private static final Pattern PER =
      Pattern.compile("(.+?)\\s*(?:per|/)\\s*(foot|ft|m|metre|meter)(?:\\s+of\\s+span)?");

  private AngleParser() {}

  /** Whether the text is written as a rate. */
  public static boolean isRate(String text) {
    try {
      String s = Notation.plain(text);
      return IN.matcher(s).matches() || TO.matcher(s).matches() || PER.matcher(s).matches();
    } catch (NotationException e) {
      return false;
    }
  }

  /**
   * Reads an angle between −360° and 360°.
   *
   * @param text as written
   * @param units what the bare lengths of a rate are in
   * @throws NotationException if it is none
   */
  public static Angle parse(String text, Units units) throws NotationException {
    String s = Notation.plain(text);
    Matcher m = DEGREES.matcher(s);
    if (m.matches()) {
      double d = Ratio.of(m.group(2)).value();
      if (d > 360) {
        throw new NotationException("more than a full turn");
      }
      return Angle.degrees(m.group(1).equals("-") && d != 0 ? -d : d);
    }
    m = IN.matcher(s);
    if (!m.matches()) {
      m = TO.matcher(s);
    }
    if (m.matches()) {
      return rate(LengthParser.parse(m.group(1), units), LengthParser.parse(m.group(2), units));
    }
    m = PER.matcher(s);
    if (m.matches()) {
      Length run = m.group(2).startsWith("f") ? Length.inches(12) : Length.mm(1000);
      Units bare = m.group(2).startsWith("f") ? Units.INCH : Units.MILLIMETRE;
      return rate(LengthParser.parse(m.group(1), bare), run);
    }
    throw new NotationException(
        "not an angle; write degrees as 12.5 or 12.5°, or a rate as 1/2 in 12 or 1:24");
  }

  private static Angle rate(Length offset, Length run) throws NotationException {
    if (!run.isPositive()) {
      throw new NotationException("a rate runs over a length of more than 0");
    }
    return Angle.ofRate(offset.picometres(), run.picometres());
  }
}
