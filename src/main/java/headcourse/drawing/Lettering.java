package headcourse.drawing;

/**
 * How text is written.
 *
 * @param height height of capitals in mm on paper, from the ISO 3098 series: 2.5, 3.5, 5, 7, 10,
 *     14, 20
 * @param bold whether bold
 */
public record Lettering(double height, boolean bold) {
  /** The least that may be printed. */
  public static final double LEAST = 2.5;

  /** Notes. */
  public static final Lettering NOTE = new Lettering(2.5, false);

  /** Body text. */
  public static final Lettering BODY = new Lettering(3.5, false);

  /** Dimensions. */
  public static final Lettering DIMENSION = new Lettering(3.5, true);

  /** Marks. */
  public static final Lettering MARK = new Lettering(7, true);

  /** The same height, bold. */
  public Lettering inBold() {
    return new Lettering(height, true);
  }

  /** Raised and lowered digits over whole ones; the font's own measures. */
  private static final double SMALL_DIGITS = 0.559;

  private static final String RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹";
  private static final String LOWERED = "₀₁₂₃₄₅₆₇₈₉";

  /**
   * A text as it is written so high: where the small digits of fractions would be less than {@link
   * #LEAST} high, as in {@code 7 ⁷⁄₁₆"}, they are as large as the others, as in {@code 7 7/16"}.
   */
  public String written(String text) {
    int slash = height * SMALL_DIGITS >= LEAST ? -1 : text.indexOf('⁄');
    if (slash < 0) {
      return text;
    }
    StringBuilder whole = new StringBuilder(text);
    for (; slash >= 0; slash = text.indexOf('⁄', slash + 1)) {
      whole.setCharAt(slash, '/');
      for (int i = slash - 1; i >= 0 && RAISED.indexOf(text.charAt(i)) >= 0; i--) {
        whole.setCharAt(i, (char) ('0' + RAISED.indexOf(text.charAt(i))));
      }
      for (int i = slash + 1; i < text.length() && LOWERED.indexOf(text.charAt(i)) >= 0; i++) {
        whole.setCharAt(i, (char) ('0' + LOWERED.indexOf(text.charAt(i))));
      }
    }
    return whole.toString();
  }
}
