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
 * Boxes to tick as the stone goes from the saw to the wall, as many to a row as fit.
 *
 * @param type the ticket's lettering
 * @param rows what stands beside each box, row by row, in each language
 */
record TicketBoxes(TicketType type, List<List<List<String>>> rows) {
  private static final double PAD = 2.2;
  private static final double LEAST_GAP = 2;

  /** The boxes of a ticket, for a strip of a width, mm. */
  static TicketBoxes of(SheetContext c, Ticket ticket, TicketType type, double width) {
    List<List<List<String>>> rows = new ArrayList<>();
    double used = Double.POSITIVE_INFINITY;
    for (List<String> word : words(c, ticket.piece())) {
      double w = lead(type) + width(word, type);
      if (used + LEAST_GAP + w > width - 2 * PAD) {
        rows.add(new ArrayList<>());
        used = -LEAST_GAP;
      }
      used += LEAST_GAP + w;
      rows.get(rows.size() - 1).add(word);
    }
    return new TicketBoxes(type, rows);
  }

  private static double width(List<String> word, TicketType type) {
    return word.stream().mapToDouble(w -> LabelShape.width(w, type.note())).max().orElse(0);
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
    return type.note().height() * 1.35;
  }

  private static double lead(TicketType type) {
    return square(type) + 1.2;
  }

  private double rowHeight(List<List<String>> row) {
    int lines = row.stream().mapToInt(List::size).max().orElse(1);
    return Math.max(square(type), lines * type.note().height() * 1.6) + 2.4;
  }

  double height() {
    return rows.stream().mapToDouble(this::rowHeight).sum() + 0.6;
  }

  void draw(Board board, Box box) {
    board.group(Role.NOTES, "", "", b -> draw(b, box.minX() + PAD, box.minY() + 0.3));
  }

  private void draw(Board b, double left, double top) {
    double y = top;
    for (List<List<String>> row : rows) {
      double x = left;
      for (List<String> word : row) {
        one(b, word, x, y + rowHeight(row) / 2);
        x += lead(type) + width(word, type) + LEAST_GAP;
      }
      y += rowHeight(row);
    }
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
