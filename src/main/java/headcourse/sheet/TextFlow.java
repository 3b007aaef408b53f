package headcourse.sheet;

import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.text.Face;
import headcourse.text.Wrap;
import java.util.List;
import java.util.regex.Pattern;

/** Paragraphs set from the top down. */
public final class TextFlow {
  /** Distance of base lines over the height of capitals. */
  public static final double LEADING = 1.75;

  /** A blank that holds a number and what follows it together while lines are broken. */
  private static final String TIE = "\u00a0";

  private static final Pattern NUMBER =
      Pattern.compile("(\\d|±) (?=[⁰¹²³⁴⁵⁶⁷⁸⁹]|mm\\b|lb\\b|kg\\b|ft\\b|\\d)");

  private TextFlow() {}

  /**
   * Writes a paragraph.
   *
   * @param top upper edge of its first line's capitals
   * @return upper edge for the next paragraph's capitals
   */
  public static double paragraph(
      Board board, double x, double top, double width, String text, Lettering lettering) {
    double y = top;
    for (String line : lines(text, width, lettering)) {
      board.text(x, y + lettering.height(), line, lettering, Align.START);
      y += lettering.height() * LEADING;
    }
    return y;
  }

  /** The lines a paragraph breaks into; never between a number and its fraction or unit. */
  public static List<String> lines(String text, double width, Lettering lettering) {
    String tied = NUMBER.matcher(text).replaceAll("$1" + TIE);
    return Wrap.lines(tied, Face.of(lettering.bold()), lettering.height(), width).stream()
        .map(l -> l.replace(TIE, " "))
        .toList();
  }

  /** The height it takes, from its first capitals to the next paragraph's. */
  public static double height(String text, double width, Lettering lettering) {
    return lines(text, width, lettering).size() * lettering.height() * LEADING;
  }
}
