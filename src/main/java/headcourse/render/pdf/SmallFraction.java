package headcourse.render.pdf;

import java.util.regex.Pattern;

/** Fractions set in small digits, and how one types them. */
final class SmallFraction {
  private static final String RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹";
  private static final String LOWERED = "₀₁₂₃₄₅₆₇₈₉";
  private static final String WHOLE = "½¼¾⅛⅜⅝⅞";
  private static final String[] TYPED = {"1/2", "1/4", "3/4", "1/8", "3/8", "5/8", "7/8"};

  /** One of them. */
  static final Pattern IN_TEXT =
      Pattern.compile("[" + RAISED + "]+⁄[" + LOWERED + "]+|[" + WHOLE + "]");

  private SmallFraction() {}

  /** As it is typed: {@code 7/16}. */
  static String typed(String fraction) {
    int whole = WHOLE.indexOf(fraction);
    if (whole >= 0) {
      return TYPED[whole];
    }
    StringBuilder out = new StringBuilder();
    for (char c : fraction.toCharArray()) {
      int raised = RAISED.indexOf(c);
      int digit = raised >= 0 ? raised : LOWERED.indexOf(c);
      out.append(digit >= 0 ? (char) ('0' + digit) : '/');
    }
    return out.toString();
  }
}
