package headcourse.sheet.bench;

import headcourse.bench.Piece;
import headcourse.drawing.LabelShape;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.Pen;
import headcourse.geom.Box;
import headcourse.layout.Side;
import headcourse.sheet.Board;
import headcourse.sheet.FitLine;
import headcourse.sheet.SheetContext;
import headcourse.sheet.TextFlow;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** The ticket's left column: which stone it is, how many, where it comes from, what was done. */
final class TicketSide {
  private static final double PAD = 2.2;
  private final SheetContext c;
  private final Ticket ticket;

  TicketSide(SheetContext c, Ticket ticket) {
    this.c = c;
    this.ticket = ticket;
  }

  void draw(Board board, Box box) {
    board.group(Role.HEADING, "", ticket.piece().mark(), b -> marks(b, box));
    board.group(Role.NOTES, "", "", b -> rest(b, box));
  }

  private void marks(Board b, Box box) {
    double mid = (box.minX() + box.maxX()) / 2;
    Piece p = ticket.piece();
    String opening = ticket.head().layout().opening().mark();
    b.text(mid, box.minY() + 5, c.say("ticket.opening"), Lettering.NOTE, Align.MIDDLE);
    b.text(mid, box.minY() + 13.5, opening, fit(opening, 7, box), Align.MIDDLE);
    b.text(mid, box.minY() + 31, p.stone().mark(), fit(p.stone().mark(), 14, box), Align.MIDDLE);
  }

  private static Lettering fit(String text, double height, Box box) {
    for (double h : new double[] {20, 14, 10, 7, 5, 3.5, 2.5}) {
      if (h <= height && LabelShape.width(text, new Lettering(h, true)) <= box.width() - 3) {
        return new Lettering(h, true);
      }
    }
    return new Lettering(Lettering.LEAST, true);
  }

  private void rest(Board b, Box box) {
    double x = box.minX() + PAD;
    double w = box.width() - 2 * PAD;
    double y = box.minY() + 35;
    y = TextFlow.paragraph(b, x, y, w, place(), Lettering.NOTE);
    int count = ticket.count(c.work());
    String cut = count == 1 ? c.say("ticket.cut-one") : c.say("ticket.cut-many", count);
    y = TextFlow.paragraph(b, x, y + 0.5, w, cut, new Lettering(3.5, true));
    b.line(box.minX(), y + 0.5, box.maxX(), y + 0.5, Pen.FINE);
    y += 3;
    y =
        TextFlow.paragraph(
            b, x, y, w, c.say("ticket.mass", mass(ticket.piece().massKg())), Lettering.NOTE);
    if (twoPersons(ticket.piece())) {
      y = TextFlow.paragraph(b, x, y, w, c.say("ticket.two-persons"), new Lettering(3.5, true));
    }
    String order =
        ticket.setOrders().stream().map(String::valueOf).collect(Collectors.joining(", "));
    y = limited(b, x, y, w, c.say("ticket.set-order", order), y + 9);
    String blanks =
        ticket.blanks().stream()
            .filter(s -> !s.isEmpty())
            .distinct()
            .collect(Collectors.joining(", "));
    if (!blanks.isEmpty()) {
      y = limited(b, x, y, w, c.say("ticket.from", blanks), y + 9);
    }
    new TicketView(c, ticket).draw(b, new Box(box.minX(), y, box.maxX(), box.maxY()));
  }

  // Long lists end in a dot-dot rather than run into what is below.
  private double limited(Board b, double x, double y, double w, String text, double limit) {
    List<String> lines = TextFlow.lines(text, w, Lettering.NOTE);
    int fit = Math.max(1, (int) Math.floor((limit - y) / (2.5 * TextFlow.LEADING)));
    double at = y;
    for (int i = 0; i < Math.min(fit, lines.size()); i++) {
      boolean more = i == fit - 1 && lines.size() > fit;
      String line = more ? lines.get(i) + " " + lines.get(i + 1) : lines.get(i);
      FitLine.draw(b, x, at + 2.5, w, line, Lettering.NOTE);
      at += 2.5 * TextFlow.LEADING;
    }
    return at;
  }

  private String place() {
    var s = ticket.piece().stone();
    return switch (s.role()) {
      case KEY -> c.say("ticket.role-key");
      case END -> c.say(s.side() == Side.LEFT ? "ticket.role-end-left" : "ticket.role-end-right");
      case STONE ->
          c.say(s.side() == Side.LEFT ? "ticket.role-left" : "ticket.role-right", s.index());
    };
  }

  private String mass(double kg) {
    return switch (c.job().units()) {
      case INCH -> String.format(Locale.ROOT, "%.1f lb", kg / 0.45359237);
      case MILLIMETRE -> String.format(Locale.ROOT, "%.1f kg", kg);
    };
  }

  private boolean twoPersons(Piece p) {
    return c.work().findings().stream()
        .anyMatch(f -> f.rule().equals("lifting") && p.mark().equals(f.stone()));
  }
}
