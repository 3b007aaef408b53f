package headcourse.sheet.choose;

import headcourse.choose.Choice;
import headcourse.drawing.Board;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.Pen;
import headcourse.drawing.TextFlow;
import headcourse.geom.Path;
import headcourse.sheet.Scale;
import java.util.List;

/** One choice: its letter and a box to tick, the picture, and what is to be said of it. */
final class ChoiceCell {
  /** What letter and box take on the left, mm. */
  static final double LETTER = 15;

  private static final double BOX = 6;
  private static final double AIR = 2;

  /** Between letter and box: some letters reach below their line, mm. */
  private static final double BELOW = 3.4;

  private static final Lettering BIG = new Lettering(10, true);

  private final Choice choice;
  private final ChoicePicture picture;
  private final List<String> seen;
  private final List<String> more;

  ChoiceCell(Choice choice, ChoiceText text, Scale scale, double width) {
    this.choice = choice;
    this.picture = new ChoicePicture(choice, scale);
    double room = width - LETTER;
    this.seen = TextFlow.lines(text.seen(choice), room, Lettering.NOTE.inBold());
    String rest =
        String.join(
            ". ",
            text.bond(choice),
            text.blanks(choice),
            text.lands(choice),
            text.amounts(choice) + ".");
    this.more = TextFlow.lines(rest, room, Lettering.NOTE);
  }

  Choice choice() {
    return choice;
  }

  double height() {
    double words = (seen.size() + more.size()) * Lettering.LEAST * TextFlow.LEADING;
    return Math.max(BIG.height() + BELOW + BOX, picture.height() + AIR + words);
  }

  void draw(Board board, double x, double y, String title) {
    board.text(x, y + BIG.height(), choice.letter(), BIG, Align.START);
    board.group(
        Role.TABLE,
        "",
        "",
        b -> b.stroke(Path.rect(x, y + BIG.height() + BELOW, BOX, BOX), Pen.EDGE));
    board.group(
        Role.FIGURE, "choice-" + choice.letter(), title, b -> picture.draw(b, x + LETTER, y));
    double at = y + picture.height() + AIR;
    at = TextFlow.paragraph(board, x + LETTER, at, seen, Lettering.NOTE.inBold());
    TextFlow.paragraph(board, x + LETTER, at, more, Lettering.NOTE);
  }
}
