package headcourse.testing;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads printed lengths as a mason does, by rules of its own. */
public final class Tape {
  private static final String RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹";
  private static final String LOWERED = "₀₁₂₃₄₅₆₇₈₉";

  /** A length in feet and inches, in inches with a fraction, or in millimetres. */
  private static final String LENGTH =
      "(?:\\d+'-)?(?:\\d+(?: [⁰¹²³⁴⁵⁶⁷⁸⁹]+⁄[₀₁₂₃₄₅₆₇₈₉]+)?|[⁰¹²³⁴⁵⁶⁷⁸⁹]+⁄[₀₁₂₃₄₅₆₇₈₉]+)\"";

  private static final Pattern INCHES = Pattern.compile(LENGTH);
  private static final Pattern MILLIMETRES = Pattern.compile("\\d+(?:\\.\\d+)?");
  private static final Pattern WHOLE_DIGITS = Pattern.compile("(\\d+)/(\\d+)(?=\")");
  private static final Pattern FEET = Pattern.compile("(\\d+)'-(.*)");

  private Tape() {}

  /** A text with small fractions, which are printed in whole digits, as large ones are. */
  public static String raised(String text) {
    return WHOLE_DIGITS
        .matcher(text)
        .replaceAll(m -> in(RAISED, m.group(1)) + "⁄" + in(LOWERED, m.group(2)));
  }

  private static String in(String set, String digits) {
    StringBuilder out = new StringBuilder();
    digits.chars().forEach(c -> out.append(set.charAt(c - '0')));
    return out.toString();
  }

  /** A printed length in the units of the job: inches or millimetres. */
  public static double read(String text) {
    String t = text.replace("\"", "").replace(" mm", "").strip();
    Matcher feet = FEET.matcher(t);
    if (feet.matches()) {
      return 12 * Double.parseDouble(feet.group(1)) + read(feet.group(2));
    }
    double sum = 0;
    for (String part : t.split(" ")) {
      int slash = part.indexOf('⁄');
      int whole = part.indexOf('/');
      sum +=
          slash < 0 && whole < 0
              ? Double.parseDouble(part)
              : whole >= 0
                  ? Double.parseDouble(part.substring(0, whole))
                      / Double.parseDouble(part.substring(whole + 1))
                  : plain(part.substring(0, slash), RAISED)
                      / plain(part.substring(slash + 1), LOWERED);
    }
    return sum;
  }

  /** The same in millimetres. */
  public static double mm(String text) {
    return text.contains("\"") ? 25.4 * read(text) : read(text);
  }

  /** Whether a text is a length and nothing else, in inches or in bare millimetres. */
  public static boolean isLength(String text, boolean inch) {
    return (inch ? INCHES : MILLIMETRES).matcher(text.replace(" mm", "").strip()).matches();
  }

  /** All lengths in a text, mm, in order. */
  public static List<Double> all(String text, boolean inch) {
    List<Double> found = new ArrayList<>();
    Matcher m = (inch ? INCHES : MILLIMETRES).matcher(text);
    while (m.find()) {
      found.add(mm(m.group()));
    }
    return found;
  }

  private static double plain(String digits, String set) {
    double value = 0;
    for (char c : digits.toCharArray()) {
      int digit = set.indexOf(c);
      if (digit < 0) {
        throw new NumberFormatException("not a part of a fraction: " + digits);
      }
      value = 10 * value + digit;
    }
    return value;
  }
}
