package headcourse.sheet.bench;

import headcourse.drawing.LabelShape;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.Pen;
import headcourse.geom.Box;
import headcourse.geom.Path;
import headcourse.sheet.Board;
import headcourse.sheet.SheetContext;
import java.util.List;

/** The ticket's foot: boxes to tick as the stone goes from the saw to the wall. */
record TicketBoxes(SheetContext c) {
  private static final List<String> BOXES = List.of("cut", "notched", "fitted", "set");
  private static final double SQUARE = 3.8;

  void draw(Board board, Box box) {
    List<String> words = BOXES.stream().map(w -> c.say("ticket.box-" + w)).toList();
    double used = 0;
    for (String word : words) {
      used += SQUARE + 1.6 + LabelShape.width(word, Lettering.NOTE);
    }
    double gap = Math.max(1, (box.width() - 4.4 - used) / (words.size() - 1));
    board.group(
        Role.NOTES,
        "",
        "",
        b -> {
          double x = box.minX() + 2.2;
          double y = box.centre().y();
          for (String word : words) {
            b.stroke(Path.rect(x, y - SQUARE / 2, SQUARE, SQUARE), Pen.EDGE);
            x += SQUARE + 1.6;
            b.text(x, y + 1.25, word, Lettering.NOTE, Align.START);
            x += LabelShape.width(word, Lettering.NOTE) + gap;
          }
        });
  }
}
