package headcourse.sheet.bench;

import headcourse.bench.Piece;
import headcourse.drawing.Board;
import headcourse.drawing.LabelShape;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.Pen;
import headcourse.geom.Box;
import headcourse.geom.Path;
import headcourse.sheet.SheetContext;
import java.util.ArrayList;
import java.util.List;

/**
 * The ticket's foot: boxes to tick as the stone goes from the saw to the wall.
 *
 * @param type the ticket's lettering
 * @param words what stands beside each box
 * @param widths of the words, mm
 * @param perRow how many boxes stand in a row
 */
record TicketBoxes(TicketType type, List<List<String>> words, double[] widths, int perRow) {
  private static final double PAD = 2.2;
  private static final double LEAST_GAP = 2.5;

  /** The boxes of a ticket, for a strip of a width, mm. */
  static TicketBoxes of(SheetContext c, Ticket ticket, TicketType type, double width) {
    List<List<String>> words = words(c, ticket.piece());
    double[] widths = new double[words.size()];
    double widest = 0;
    double all = 0;
    for (int i = 0; i < widths.length; i++) {
      for (String w : words.get(i)) {
        widths[i] = Math.max(widths[i], LabelShape.width(w, type.note()));
      }
      widest = Math.max(widest, widths[i]);
      all += lead(type) + widths[i] + LEAST_GAP;
    }
    double pitch = lead(type) + widest + LEAST_GAP;
    double room = width - 2 * PAD + LEAST_GAP;
    // How many to a row: as many as the widest allows, where not all fit as they are.
    int most = Math.max(1, Math.min(widths.length, (int) Math.floor(room / pitch)));
    return new TicketBoxes(type, words, widths, all <= room ? widths.length : most);
  }

  private static List<List<String>> words(SheetContext c, Piece piece) {
    List<String> boxes = new ArrayList<>(List.of("cut"));
    if (!piece.notches().isEmpty()) {
      boxes.add("notched");
    }
    if (!piece.exposed().isEmpty()) {
      boxes.add("dressed");
    }
    boxes.addAll(List.of("fitted", "set"));
    return boxes.stream().map(w -> c.words().each("ticket.box-" + w)).toList();
  }

  private static double square(TicketType type) {
    return type.note().height() * 1.5;
  }

  private static double lead(TicketType type) {
    return square(type) + 1.6;
  }

  private double rowHeight() {
    int lines = 1;
    for (List<String> w : words) {
      lines = Math.max(lines, w.size());
    }
    return Math.max(square(type), lines * type.note().height() * 1.6) + 3;
  }

  double height() {
    return rowHeight() * ((words.size() + perRow - 1) / perRow);
  }

  void draw(Board board, Box box) {
    boolean one = perRow >= words.size();
    double lead = lead(type);
    double row = rowHeight();
    double used = 0;
    for (double w : widths) {
      used += lead + w;
    }
    double gap = (box.width() - 2 * PAD - used) / Math.max(1, words.size() - 1);
    board.group(
        Role.NOTES,
        "",
        "",
        b -> {
          double x = box.minX() + PAD;
          double y = box.minY() + row / 2;
          for (int i = 0; i < words.size(); i++) {
            if (!one) {
              x = box.minX() + PAD + (i % perRow) * (box.width() - 2 * PAD + LEAST_GAP) / perRow;
              y = box.minY() + (i / perRow + 0.5) * row;
            }
            one(b, words.get(i), x, y);
            x += lead + widths[i] + gap;
          }
        });
  }

  private void one(Board b, List<String> word, double x, double y) {
    double square = square(type);
    b.stroke(Path.rect(x, y - square / 2, square, square), Pen.EDGE);
    double h = type.note().height();
    double line = y + h / 2 - (word.size() - 1) * h * 0.8;
    for (String each : word) {
      b.text(x + lead(type), line, each, type.note(), Align.START);
      line += h * 1.6;
    }
  }
}
