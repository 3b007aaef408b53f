package headcourse.units;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Brings the many ways to type feet, inches, degrees and fractions to plain characters. */
final class Notation {
  private static final String SUPER = "⁰¹²³⁴⁵⁶⁷⁸⁹";
  private static final String SUB = "₀₁₂₃₄₅₆₇₈₉";
  private static final String VULGAR = "½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞";
  private static final String[] FRACTIONS = {
    "1/2", "1/3", "2/3", "1/4", "3/4", "1/5", "2/5", "3/5", "4/5", "1/6", "5/6", "1/8", "3/8",
    "5/8", "7/8"
  };

  /** Longer texts are no single value. */
  private static final int MOST = 80;

  private static final Pattern COMMA =
      Pattern.compile("[+-]?\\s*([0-9]{1,12}),([0-9]{1,6})(\\s*[a-z\"'°]*)");

  private Notation() {}

  static String plain(String text) throws NotationException {
    if (text.length() > MOST) {
      throw new NotationException("too long for one value");
    }
    StringBuilder s = new StringBuilder();
    char before = ' ';
    for (char c : text.toCharArray()) {
      int vulgar = VULGAR.indexOf(c);
      int high = SUPER.indexOf(c);
      if (vulgar >= 0) {
        s.append(' ').append(FRACTIONS[vulgar]);
      } else if (high >= 0) {
        // In "64¹⁄₈" the raised digits begin the fraction.
        s.append(SUPER.indexOf(before) < 0 ? " " : "").append(high);
      } else if (SUB.indexOf(c) >= 0) {
        s.append(SUB.indexOf(c));
      } else {
        s.append(one(c));
      }
      before = c;
    }
    return s.toString().replace("''", "\"").strip().replaceAll("-\\s+(?=\\d+/)", "-");
  }

  /** Refuses a decimal comma with the point that belongs there. */
  static void comma(String text) throws NotationException {
    Matcher m = COMMA.matcher(text);
    if (m.matches()) {
      throw new NotationException(
          "decimals are written with a point, as " + m.group(1) + "." + m.group(2));
    }
  }

  private static char one(char c) {
    return switch (c) {
      case '′', '’', '‘', '´', 'ʹ' -> '\'';
      case '″', '”', '“', 'ʺ' -> '"';
      case '⁄', '∕' -> '/';
      case '−', '–', '‐', '‑' -> '-';
      case '\u00a0', '\u2009', '\u202f', '\u2007', '\t' -> ' ';
      case 'º', '˚' -> '°';
      default -> c;
    };
  }
}
