package headcourse.text;

import java.util.ArrayList;
import java.util.List;

/**
 * Marks, inside a text, of words in the second language of its document. They take no room and are
 * not printed; whoever writes a text out takes it apart with {@link #runs}.
 */
public final class SecondLanguage {
  /** Of no meaning to anyone else: from Unicode's private use area. */
  private static final char OPEN = '\uE0E0';

  private static final char CLOSE = '\uE0E1';

  private SecondLanguage() {}

  /**
   * A part of a text in one language.
   *
   * @param text without marks
   * @param second whether it is in the second language
   */
  public record Run(String text, boolean second) {}

  /** A text marked as one in the second language. */
  static String second(String text) {
    return OPEN + plain(text) + CLOSE;
  }

  /** Whether a character is such a mark. */
  static boolean marks(int character) {
    return character == OPEN || character == CLOSE;
  }

  /** A text without its marks. */
  public static String plain(String text) {
    if (text.indexOf(OPEN) < 0 && text.indexOf(CLOSE) < 0) {
      return text;
    }
    return text.replace(String.valueOf(OPEN), "").replace(String.valueOf(CLOSE), "");
  }

  /** The parts of a text, none of them empty. */
  public static List<Run> runs(String text) {
    if (text.indexOf(OPEN) < 0 && text.indexOf(CLOSE) < 0) {
      return text.isEmpty() ? List.of() : List.of(new Run(text, false));
    }
    List<Run> runs = new ArrayList<>();
    boolean second = false;
    int from = 0;
    for (int i = 0; i <= text.length(); i++) {
      if (i == text.length() || marks(text.charAt(i))) {
        if (i > from) {
          runs.add(new Run(text.substring(from, i), second));
        }
        second = i < text.length() && text.charAt(i) == OPEN;
        from = i + 1;
      }
    }
    return runs;
  }

  /** Marks each line of a broken text by itself; a line may begin or end amid marked words. */
  static void balance(List<String> lines) {
    boolean open = false;
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i);
      int opens = line.lastIndexOf(OPEN);
      int closes = line.lastIndexOf(CLOSE);
      boolean still = opens < 0 && closes < 0 ? open : opens > closes;
      if (open || still) {
        lines.set(i, (open ? OPEN : "") + line + (still ? CLOSE : ""));
      }
      open = still;
    }
  }
}
