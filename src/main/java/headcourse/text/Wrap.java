package headcourse.text;

import java.util.ArrayList;
import java.util.List;

/** Breaks a text into lines that are no wider than a given width. */
public final class Wrap {
  private final Face face;
  private final double capHeight;
  private final double width;
  private final double space;
  private final List<String> lines = new ArrayList<>();

  private Wrap(Face face, double capHeight, double width) {
    this.face = face;
    this.capHeight = capHeight;
    this.width = width;
    this.space = face.width(" ", capHeight);
  }

  /**
   * The lines of a text. Breaks at spaces and where the text itself has a line end; a word that is
   * wider than a line is broken between letters.
   *
   * @param text any text
   * @param face what it is set in
   * @param capHeight height of capitals, mm
   * @param width of a line, mm, positive
   * @return at least one line, which may be empty
   */
  public static List<String> lines(String text, Face face, double capHeight, double width) {
    Wrap wrap = new Wrap(face, capHeight, width);
    int from = 0;
    while (from <= text.length()) {
      int end = text.indexOf('\n', from);
      end = end < 0 ? text.length() : end;
      wrap.paragraph(text.substring(from, end));
      from = end + 1;
    }
    SecondLanguage.balance(wrap.lines);
    return wrap.lines;
  }

  /** The text cut short with an ellipsis so that it is no wider than a width, mm. */
  public static String shortened(String text, Face face, double capHeight, double width) {
    if (face.width(text, capHeight) <= width) {
      return text;
    }
    double room = width - face.width("…", capHeight);
    int end = new Wrap(face, capHeight, room).fitting(text.toCharArray(), 0, text.length());
    List<String> cut = new ArrayList<>(List.of(text.substring(0, end).stripTrailing() + "…"));
    SecondLanguage.balance(cut);
    return cut.get(0);
  }

  // A line is a stretch of the text as it stands, so its words have to be one space apart.
  private void paragraph(String text) {
    int before = lines.size();
    char[] letters = text.toCharArray();
    int line = 0;
    int end = 0;
    double used = 0;
    for (int at = 0; at < letters.length; at = end + 1) {
      end = at;
      while (end < letters.length && letters[end] != ' ') {
        end++;
      }
      if (end == at) {
        lines.subList(before, lines.size()).clear();
        paragraph(text.strip().replaceAll(" +", " "));
        return;
      }
      double w = face.width(letters, at, end, capHeight);
      if (at > line && used + space + w > width) {
        lines.add(text.substring(line, at - 1));
        line = at;
        used = 0;
      }
      while (w > width && Character.codePointCount(letters, line, end - line) > 1) {
        int one = line + Character.charCount(Character.codePointAt(letters, line, end));
        int cut = Math.max(one, fitting(letters, line, end));
        lines.add(text.substring(line, cut));
        line = cut;
        w = face.width(letters, line, end, capHeight);
      }
      used = at > line ? used + space + w : w;
    }
    lines.add(text.substring(line, end));
  }

  /** Where what fits into a line ends. */
  private int fitting(char[] letters, int from, int end) {
    double used = 0;
    int at = from;
    while (at < end) {
      int next = at + Character.charCount(Character.codePointAt(letters, at, end));
      used += face.width(letters, at, next, capHeight);
      if (used > width) {
        break;
      }
      at = next;
    }
    return at;
  }
}
