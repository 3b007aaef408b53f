package headcourse.text;

import java.util.ArrayList;
import java.util.List;

/** Breaks a text into lines that are no wider than a given width. */
public final class Wrap {
  private Wrap() {}

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
    List<String> lines = new ArrayList<>();
    int from = 0;
    while (from <= text.length()) {
      int end = text.indexOf('\n', from);
      end = end < 0 ? text.length() : end;
      paragraph(lines, text.substring(from, end), face, capHeight, width);
      from = end + 1;
    }
    return lines;
  }

  /** The text cut short with an ellipsis so that it is no wider than a width, mm. */
  public static String shortened(String text, Face face, double capHeight, double width) {
    if (face.width(text, capHeight) <= width) {
      return text;
    }
    int end = fitting(text, face, capHeight, width - face.width("…", capHeight));
    return text.substring(0, end).stripTrailing() + "…";
  }

  private static void paragraph(
      List<String> lines, String text, Face face, double capHeight, double width) {
    double space = face.width(" ", capHeight);
    StringBuilder line = new StringBuilder();
    double used = 0;
    int at = 0;
    while (at < text.length()) {
      int end = text.indexOf(' ', at);
      end = end < 0 ? text.length() : end;
      String word = text.substring(at, end);
      at = end + 1;
      if (word.isEmpty()) {
        continue;
      }
      double w = face.width(word, capHeight);
      if (line.length() > 0 && used + space + w > width) {
        lines.add(line.toString());
        line.setLength(0);
        used = 0;
      }
      while (w > width && word.codePointCount(0, word.length()) > 1) {
        int cut = Math.max(word.offsetByCodePoints(0, 1), fitting(word, face, capHeight, width));
        lines.add(word.substring(0, cut));
        word = word.substring(cut);
        w = face.width(word, capHeight);
      }
      if (line.length() > 0) {
        line.append(' ');
        used += space;
      }
      line.append(word);
      used += w;
    }
    lines.add(line.toString());
  }

  /** How many chars from the start fit into a width. */
  private static int fitting(String text, Face face, double capHeight, double width) {
    double used = 0;
    int at = 0;
    while (at < text.length()) {
      int next = text.offsetByCodePoints(at, 1);
      used += face.width(text.substring(at, next), capHeight);
      if (used > width) {
        break;
      }
      at = next;
    }
    return at;
  }
}
