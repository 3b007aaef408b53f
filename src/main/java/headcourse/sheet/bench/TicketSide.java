package headcourse.sheet.bench;

import headcourse.bench.Piece;
import headcourse.drawing.Board;
import headcourse.drawing.LabelShape;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.Pen;
import headcourse.drawing.TextFlow;
import headcourse.geom.Box;
import headcourse.geom.Path;
import headcourse.layout.Side;
import headcourse.sheet.Amounts;
import headcourse.sheet.MarkRuns;
import headcourse.sheet.SheetContext;
import java.util.List;

/** The ticket's left column: which stone it is, how many, where it comes from, what it weighs. */
final class TicketSide {
  /** The least width, for the words over opening and number side by side, mm. */
  static final double LEAST = 32;

  private static final double PAD = 2.2;

  /** A smaller view does not tell left from right, mm. */
  private static final double VIEW = 25;

  private final SheetContext c;
  private final Ticket ticket;
  private final TicketType type;

  TicketSide(SheetContext c, Ticket ticket, TicketType type) {
    this.c = c;
    this.ticket = ticket;
    this.type = type;
  }

  double height(double width) {
    return rest(new Board(), 0, 0, width) + VIEW * type.factor();
  }

  void draw(Board board, Box box) {
    board.group(Role.HEADING, "", ticket.piece().mark(), b -> marks(b, box));
    double[] y = {0};
    board.group(Role.NOTES, "", "", b -> y[0] = rest(b, box.minX(), box.minY(), box.width()));
    new TicketView(c, ticket, type).draw(board, new Box(box.minX(), y[0], box.maxX(), box.maxY()));
  }

  private double opening() {
    return 5 + 8.5 * type.factor();
  }

  private double big() {
    return opening() + type.mark().height() + 3.5;
  }

  private void marks(Board b, Box box) {
    double mid = (box.minX() + box.maxX()) / 2;
    Piece p = ticket.piece();
    String opening = ticket.head().layout().opening().mark();
    double h = 7 * type.factor();
    // Opening and mark on the left, the ticket's number on the right in a frame of its own.
    String number = Integer.toString(ticket.number());
    Lettering numeral = fit(number, h, box.width() * 0.45, true);
    double wide = Math.max(LabelShape.width(number, numeral), 5 * type.factor()) + 3;
    double edge = box.maxX() - 1.5 - wide;
    double room = edge - box.minX() - 2;
    double over = box.minX() + 1 + room / 2;
    text(
        b,
        c.words().each("ticket.opening").get(0),
        over,
        box.minY() + 5,
        Lettering.LEAST,
        room,
        false);
    text(b, opening, over, box.minY() + opening(), h, room, true);
    String own = p.stone().mark();
    text(b, own, mid, box.minY() + big(), type.mark().height(), box.width() - 3, true);
    text(
        b,
        c.words().each("ticket.number").get(0),
        edge + wide / 2,
        box.minY() + 5,
        Lettering.LEAST,
        wide + 2,
        false);
    b.text(edge + wide / 2, box.minY() + opening(), number, numeral, Align.MIDDLE);
    b.stroke(Path.rect(edge, box.minY() + 6.2, wide, opening() - 6.2 + 1.6), Pen.EDGE);
  }

  private static void text(
      Board b, String text, double x, double y, double height, double room, boolean bold) {
    b.text(x, y, text, fit(text, height, room, bold), Align.MIDDLE);
  }

  private static Lettering fit(String text, double height, double room, boolean bold) {
    for (double h : new double[] {20, 14, 10, 7, 5, 3.5, 2.5}) {
      if (h <= height && LabelShape.width(text, new Lettering(h, bold)) <= room) {
        return new Lettering(h, bold);
      }
    }
    return new Lettering(Lettering.LEAST, bold);
  }

  private double rest(Board b, double left, double top, double width) {
    double x = left + PAD;
    double w = width - 2 * PAD;
    double y = top + big() + 4;
    y = type.paragraph(b, x, y, w, place(), type.note());
    Lettering bold = type.body().inBold();
    Lettering count = LabelShape.width(cut(), bold) > w ? type.note().inBold() : bold;
    y = type.paragraph(b, x, y + 0.5, w, cut(), count);
    double closer = type.leading() < TextFlow.LEADING ? 0 : 0.5;
    List<Piece> changed = ticket.pieces().stream().filter(this::changed).toList();
    if (!changed.isEmpty()) {
      String which =
          changed.size() == ticket.pieces().size()
              ? c.say("ticket.changed")
              : c.say("ticket.changed-some", MarkRuns.of(changed));
      y = type.paragraph(b, x, y - closer, w, which, type.body().inBold());
    }
    if (ticket.pieces().size() > 1) {
      String alike = MarkRuns.of(ticket.pieces());
      y = type.paragraph(b, x, y - closer, w, alike, type.note().inBold());
    }
    b.line(left, y, left + width, y, Pen.FINE);
    y += 2.5;
    String mass = new Amounts(c.job().units()).mass(ticket.piece().mass().kg());
    y = type.paragraph(b, x, y, w, c.weighs("ticket.mass", mass), type.note().inBold());
    if (twoPersons(ticket.piece())) {
      y = type.paragraph(b, x, y, w, c.say("ticket.two-persons"), type.body().inBold());
    }
    String order = MarkRuns.of(ticket.setOrders());
    y = type.paragraph(b, x, y, w, c.say("ticket.set-order", order), type.note());
    if (ticket.blanks().size() == 1) {
      y = type.paragraph(b, x, y, w, ticket.from(c), type.note().inBold());
    }
    return y;
  }

  private String cut() {
    if (ticket.piece().stone().fitted()) {
      return c.say("ticket.cut-already");
    }
    int count = ticket.count(c.work());
    return count == 1 ? c.say("ticket.cut-one") : c.say("ticket.cut-many", count);
  }

  /** Whether a ticket printed before stones were fitted is wrong. */
  private boolean changed(Piece p) {
    return c.work().heads().stream()
        .filter(h -> !h.layout().asBuilt().changes().isEmpty() && h.pieces().contains(p))
        .flatMap(h -> h.layout().asBuilt().changes().stream())
        .anyMatch(s -> s.kind().ticketChanges() && s.mark().equals(p.stone().mark()));
  }

  private String place() {
    var s = ticket.piece().stone();
    return switch (s.role()) {
      case KEY -> c.say("ticket.role-key");
      case END -> c.say(s.side() == Side.LEFT ? "ticket.role-end-left" : "ticket.role-end-right");
      case STONE ->
          c.say(
              (s.side() == Side.LEFT ? "ticket.role-left" : "ticket.role-right")
                  + (c.keyed(ticket.piece()) ? "" : "-keyless"),
              s.index());
    };
  }

  private boolean twoPersons(Piece p) {
    return c.work().findings().stream()
        .anyMatch(f -> f.rule().equals("lifting") && p.mark().equals(f.stone()));
  }
}
