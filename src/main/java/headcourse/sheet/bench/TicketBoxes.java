package headcourse.sheet.bench;

import headcourse.drawing.LabelShape;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.Pen;
import headcourse.geom.Box;
import headcourse.geom.Path;
import headcourse.sheet.Board;
import headcourse.sheet.SheetContext;
import java.util.ArrayList;
import java.util.List;

/** The ticket's foot: boxes to tick as the stone goes from the saw to the wall. */
record TicketBoxes(SheetContext c, Ticket ticket, TicketType type) {
  private static final double PAD = 2.2;
  private static final double LEAST_GAP = 2.5;

  private List<List<String>> words() {
    List<String> boxes = new ArrayList<>(List.of("cut"));
    if (!ticket.piece().notches().isEmpty()) {
      boxes.add("notched");
    }
    if (!ticket.piece().exposed().isEmpty()) {
      boxes.add("dressed");
    }
    boxes.addAll(List.of("fitted", "set"));
    return boxes.stream().map(w -> c.words().each("ticket.box-" + w)).toList();
  }

  private double square() {
    return type.note().height() * 1.5;
  }

  private double lead() {
    return square() + 1.6;
  }

  // How many to a row: as many as the widest allows.
  private int perRow(double width) {
    int n = words().size();
    double widest = words().stream().mapToDouble(this::widest).max().orElse(0);
    double pitch = lead() + widest + LEAST_GAP;
    double room = width - 2 * PAD + LEAST_GAP;
    int most = Math.max(1, Math.min(n, (int) Math.floor(room / pitch)));
    double all = words().stream().mapToDouble(w -> lead() + widest(w) + LEAST_GAP).sum();
    return all <= room ? n : most;
  }

  private double rowHeight() {
    int lines = words().stream().mapToInt(List::size).max().orElse(1);
    return Math.max(square(), lines * type.note().height() * 1.6) + 3;
  }

  double height(double width) {
    int per = perRow(width);
    return rowHeight() * ((words().size() + per - 1) / per);
  }

  void draw(Board board, Box box) {
    List<List<String>> words = words();
    int per = perRow(box.width());
    boolean one = per >= words.size();
    double used = words.stream().mapToDouble(w -> lead() + widest(w)).sum();
    double gap = (box.width() - 2 * PAD - used) / Math.max(1, words.size() - 1);
    board.group(
        Role.NOTES,
        "",
        "",
        b -> {
          double x = box.minX() + PAD;
          double y = box.minY() + rowHeight() / 2;
          for (int i = 0; i < words.size(); i++) {
            if (!one) {
              x = box.minX() + PAD + (i % per) * (box.width() - 2 * PAD + LEAST_GAP) / per;
              y = box.minY() + (i / per + 0.5) * rowHeight();
            }
            one(b, words.get(i), x, y);
            x += lead() + widest(words.get(i)) + gap;
          }
        });
  }

  private void one(Board b, List<String> word, double x, double y) {
    b.stroke(Path.rect(x, y - square() / 2, square(), square()), Pen.EDGE);
    double h = type.note().height();
    double line = y + h / 2 - (word.size() - 1) * h * 0.8;
    for (String each : word) {
      b.text(x + lead(), line, each, type.note(), Align.START);
      line += h * 1.6;
    }
  }

  private double widest(List<String> word) {
    return word.stream().mapToDouble(w -> LabelShape.width(w, type.note())).max().orElse(0);
  }
}
