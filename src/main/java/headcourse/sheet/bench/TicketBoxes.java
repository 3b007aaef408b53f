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
  private static final double LINE = 4;

  void draw(Board board, Box box) {
    List<List<String>> words = BOXES.stream().map(w -> c.words().each("ticket.box-" + w)).toList();
    double used = 0;
    for (List<String> word : words) {
      used += SQUARE + 1.6 + widest(word);
    }
    double gap = Math.max(1, (box.width() - 4.4 - used) / (words.size() - 1));
    board.group(
        Role.NOTES,
        "",
        "",
        b -> {
          double x = box.minX() + 2.2;
          double y = box.centre().y();
          for (List<String> word : words) {
            b.stroke(Path.rect(x, y - SQUARE / 2, SQUARE, SQUARE), Pen.EDGE);
            x += SQUARE + 1.6;
            double line = y + 1.25 - (word.size() - 1) * LINE / 2;
            for (String each : word) {
              b.text(x, line, each, Lettering.NOTE, Align.START);
              line += LINE;
            }
            x += widest(word) + gap;
          }
        });
  }

  private static double widest(List<String> word) {
    return word.stream().mapToDouble(w -> LabelShape.width(w, Lettering.NOTE)).max().orElse(0);
  }
}
