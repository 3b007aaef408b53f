package headcourse.sheet;

import headcourse.drawing.Board;
import headcourse.drawing.LabelShape;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.text.Face;
import headcourse.text.Wrap;

/** One line of text in a given width: smaller where it is too long, cut short at the least size. */
public final class FitLine {
  private static final double[] HEIGHTS = {14, 10, 7, 5, 3.5, 2.5};

  private FitLine() {}

  /** Writes the line from a place on its base line. */
  public static void draw(
      Board board, double x, double y, double width, String text, Lettering lettering) {
    for (double h : HEIGHTS) {
      Lettering l = new Lettering(h, lettering.bold());
      if (h <= lettering.height() && LabelShape.width(text, l) <= width) {
        board.text(x, y, text, l, Align.START);
        return;
      }
    }
    Lettering least = new Lettering(Lettering.LEAST, lettering.bold());
    String cut = Wrap.shortened(text, Face.of(least.bold()), least.height(), width);
    board.text(x, y, cut, least, Align.START);
  }
}
