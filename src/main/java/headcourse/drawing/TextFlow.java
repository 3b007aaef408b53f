package headcourse.drawing;

import headcourse.drawing.Mark.Align;
import headcourse.text.Face;
import headcourse.text.Wrap;
import java.util.List;

/** Paragraphs set from the top down. */
public final class TextFlow {
  /** Distance of base lines over the height of capitals. */
  public static final double LEADING = 1.75;

  /** A blank that holds a number and what follows it together while lines are broken. */
  private static final char TIE = '\u00a0';

  private static final String[] UNITS = {"mm", "lb", "kg", "ft"};

  private TextFlow() {}

  /**
   * Writes a paragraph.
   *
   * @param top upper edge of its first line's capitals
   * @return upper edge for the next paragraph's capitals
   */
  public static double paragraph(
      Board board, double x, double top, double width, String text, Lettering lettering) {
    return paragraph(board, x, top, width, text, lettering, LEADING);
  }

  /** The same with another distance of base lines over the height of capitals. */
  public static double paragraph(
      Board board,
      double x,
      double top,
      double width,
      String text,
      Lettering lettering,
      double leading) {
    return paragraph(board, x, top, lines(text, width, lettering), lettering, leading);
  }

  /** Writes a paragraph whose lines are known; see above. */
  public static double paragraph(
      Board board, double x, double top, List<String> lines, Lettering lettering) {
    return paragraph(board, x, top, lines, lettering, LEADING);
  }

  private static double paragraph(
      Board board, double x, double top, List<String> lines, Lettering lettering, double leading) {
    double y = top;
    for (String line : lines) {
      board.text(x, y + lettering.height(), line, lettering, Align.START);
      y += lettering.height() * leading;
    }
    return y;
  }

  /** The lines a paragraph breaks into; never between a number and its fraction or unit. */
  public static List<String> lines(String text, double width, Lettering lettering) {
    String tied = tied(lettering.written(text));
    List<String> lines = Wrap.lines(tied, Face.of(lettering.bold()), lettering.height(), width);
    lines.replaceAll(line -> line.replace(TIE, ' '));
    return List.copyOf(lines);
  }

  /** The parts of a text that are never broken: words, and numbers with what belongs to them. */
  public static List<String> unbroken(String text) {
    return List.of(tied(text).split("[ \n]", -1));
  }

  private static String tied(String text) {
    StringBuilder tied = null;
    for (int i = text.indexOf(' ', 1); i > 0; i = text.indexOf(' ', i + 1)) {
      char before = text.charAt(i - 1);
      if ((digit(before) || before == '±') && belongs(text, i + 1)) {
        tied = tied == null ? new StringBuilder(text) : tied;
        tied.setCharAt(i, TIE);
      }
    }
    return tied == null ? text : tied.toString();
  }

  // Whether a digit, a raised digit or a unit of measure begins there.
  private static boolean belongs(String text, int at) {
    if (at == text.length()) {
      return false;
    }
    if (digit(text.charAt(at)) || "⁰¹²³⁴⁵⁶⁷⁸⁹".indexOf(text.charAt(at)) >= 0) {
      return true;
    }
    for (String unit : UNITS) {
      int end = at + unit.length();
      if (text.startsWith(unit, at)
          && (end == text.length()
              || text.charAt(end) != '_' && !Character.isLetterOrDigit(text.charAt(end)))) {
        return true;
      }
    }
    return false;
  }

  private static boolean digit(char c) {
    return c >= '0' && c <= '9';
  }

  /** The height it takes, from its first capitals to the next paragraph's. */
  public static double height(String text, double width, Lettering lettering) {
    return lines(text, width, lettering).size() * lettering.height() * LEADING;
  }
}
