package headcourse.text;

/** What two languages say, in one line; a figure that both begin or end with is printed once. */
final class BilingualText {
  /** Longer sentences are easier to read whole, letters. */
  private static final int LONGEST = 44;

  private BilingualText() {}

  /**
   * Both, with a slash between: {@code mass / peso 5.8 kg}; once where they say the same.
   *
   * @param marked whether the second is marked as {@link SecondLanguage} does
   */
  static String of(String first, String second, boolean marked) {
    if (SecondLanguage.plain(first).equals(SecondLanguage.plain(second))) {
      return first;
    }
    int head = 0;
    int tail = 0;
    if (first.length() <= LONGEST && second.length() <= LONGEST) {
      head = figures(first, head(first, second));
      tail = tail(first, second, head);
    }
    String a = first.substring(head, first.length() - tail);
    String b = second.substring(head, second.length() - tail);
    if (a.isBlank() || b.isBlank() || figure(a) || figure(b)) {
      return first + " / " + mark(second, marked);
    }
    a = a.strip();
    a = tail > 0 && (a.endsWith(",") || a.endsWith(":")) ? a.substring(0, a.length() - 1) : a;
    String between = a + " / " + mark(b.strip(), marked);
    return first.substring(0, head) + between + first.substring(first.length() - tail);
  }

  private static String mark(String text, boolean marked) {
    return marked ? SecondLanguage.second(text) : text;
  }

  // How many letters both begin with, up to a space.
  private static int head(String a, String b) {
    int same = 0;
    for (int i = 0; i < Math.min(a.length(), b.length()) && a.charAt(i) == b.charAt(i); i++) {
      same = a.charAt(i) == ' ' ? i + 1 : same;
    }
    return same;
  }

  private static int figures(String text, int head) {
    return figure(text.substring(0, head)) ? head : 0;
  }

  private static int tail(String a, String b, int head) {
    int same = 0;
    int most = Math.min(a.length(), b.length()) - head;
    for (int i = 1; i <= most && a.charAt(a.length() - i) == b.charAt(b.length() - i); i++) {
      same = a.charAt(a.length() - i) == ' ' ? i : same;
    }
    return figure(a.substring(a.length() - same)) ? same : 0;
  }

  private static boolean figure(String text) {
    return text.chars().anyMatch(c -> Character.isDigit(c) || "⁰¹²³⁴⁵⁶⁷⁸⁹¼½¾".indexOf(c) >= 0);
  }
}
