package headcourse.sheet;

import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.text.Face;
import headcourse.text.Wrap;
import java.util.List;

/** Paragraphs set from the top down. */
public final class TextFlow {
  /** Distance of base lines over the height of capitals. */
  public static final double LEADING = 1.75;

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

  /** The lines a paragraph breaks into. */
  public static List<String> lines(String text, double width, Lettering lettering) {
    return Wrap.lines(text, Face.of(lettering.bold()), lettering.height(), width);
  }

  /** The height it takes, from its first capitals to the next paragraph's. */
  public static double height(String text, double width, Lettering lettering) {
    return lines(text, width, lettering).size() * lettering.height() * LEADING;
  }
}
