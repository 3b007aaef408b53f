package headcourse.sheet.elevation;

import headcourse.drawing.Board;
import headcourse.drawing.LabelShape;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Pen;
import headcourse.drawing.Shade;
import headcourse.drawing.TextFlow;
import headcourse.geom.Path;
import headcourse.sheet.Scale;
import headcourse.text.Words;
import headcourse.units.Grid;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
import headcourse.units.Units;

/** A bar of a known length on paper, so that a copy that was shrunk gives itself away. */
public final class ScaleBar {
  private static final double HEIGHT = 1.6;

  private ScaleBar() {}

  /**
   * Draws a bar of two inches or 50 mm with what it stands for, and the words beside it.
   *
   * @param y its upper edge
   * @param room width that bar and words may take
   * @return lower edge
   */
  public static double draw(
      Board board, Words words, Units units, Scale scale, double x, double y, double room) {
    Length paper = paper(units);
    String says = bar(board, units, scale, x, y);
    LengthFormat format = format(units);
    String text = words.say("wall.scale-bar", says, format.withUnit(paper));
    Lettering small = Lettering.NOTE;
    double beside = room - paper.mm() - 3;
    if (LabelShape.width(text, small) <= beside) {
      board.text(x + paper.mm() + 3, y + HEIGHT / 2 + 1.25, text, small, Align.START);
      return y + HEIGHT + 1;
    }
    return TextFlow.paragraph(board, x, y + HEIGHT + 1.5, room, text, small);
  }

  /** The same with the two lengths alone beside the bar, where several drawings share a sheet. */
  public static void brief(Board board, Words words, Units units, Scale scale, double x, double y) {
    String says = bar(board, units, scale, x, y);
    Length paper = paper(units);
    String text = words.say("contractor.scale-brief", says, format(units).withUnit(paper));
    board.text(x + paper.mm() + 3, y + HEIGHT / 2 + 1.25, text, Lettering.NOTE, Align.START);
  }

  private static Length paper(Units units) {
    return units == Units.INCH ? Length.inches(2) : Length.mm(50);
  }

  private static LengthFormat format(Units units) {
    return new LengthFormat(
        units, new Grid(units == Units.INCH ? Length.inches(0.25) : Length.mm(1)));
  }

  // The bar itself; what it stands for.
  private static String bar(Board board, Units units, Scale scale, double x, double y) {
    Length paper = paper(units);
    Length real = paper.times(scale.reduction());
    double step = paper.mm() / 4;
    for (int i = 0; i < 4; i++) {
      if (i % 2 == 0) {
        board.fill(Path.rect(x + i * step, y, step, HEIGHT), Shade.BLACK);
      }
    }
    board.stroke(Path.rect(x, y, paper.mm(), HEIGHT), Pen.DIMENSION);
    return units == Units.INCH ? format(units).building(real) : format(units).withUnit(real);
  }
}
