package headcourse.sheet.bench;

import headcourse.bench.Anchor;
import headcourse.bench.EdgeName;
import headcourse.bench.Notch;
import headcourse.bench.Piece;
import headcourse.drawing.Board;
import headcourse.drawing.LabelShape;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Role;
import headcourse.geom.Box;
import headcourse.sheet.Holds;
import headcourse.sheet.SheetContext;
import headcourse.text.Words;
import headcourse.units.LengthFormat;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What is said of a ticket's notches: where on which edge, how deep, and the screw. */
final class TicketCuts {
  private static final double PAD = 2;
  private final SheetContext c;
  private final Ticket ticket;
  private final Piece piece;
  private final TicketType type;
  private final boolean aside;

  TicketCuts(SheetContext c, Ticket ticket, TicketType type, boolean aside) {
    this.aside = aside;
    this.c = c;
    this.ticket = ticket;
    this.piece = ticket.piece();
    this.type = type;
  }

  /** Nothing without a notch. */
  double height(double width) {
    return piece.notches().isEmpty() ? 0 : flow(new Board(), 0, 0, width) + 0.5;
  }

  void draw(Board board, Box box) {
    if (!piece.notches().isEmpty()) {
      board.group(Role.NOTES, "", "", b -> flow(b, box.minX(), box.minY(), box.width()));
    }
  }

  private double flow(Board b, double left, double top, double width) {
    double x = left + PAD;
    double y = top + 2;
    double w = width - 2 * PAD;
    Lettering bold = type.edge();
    for (String text : c.words().each(words -> places(words, w))) {
      y = type.paragraph(b, x, y, w, text, y > top + 2 ? type.note().inBold() : bold);
    }
    if (!aside) {
      for (String note : notes()) {
        y = type.paragraph(b, x, y, w, note, type.note());
      }
    }
    return y;
  }

  /** How each kind of slot is cut, and its screw; elsewhere on the ticket where {@code aside}. */
  List<String> notes() {
    LengthFormat f = c.format();
    List<String> told = new ArrayList<>();
    for (Notch n : piece.notches()) {
      told.add(
          c.say(
              "ticket.notch-figures",
              LengthFormat.degrees(n.slant()),
              f.tape(n.plunge()),
              f.tape(n.cover())));
      told.add(c.say(words -> screw(words, n.anchor())));
    }
    return told.stream().distinct().toList();
  }

  private String screw(Words words, Anchor a) {
    return a.screw() == null
        ? Holds.none(words, a)
        : words.say("ticket.screw", Holds.screw(c, words, a), Holds.hold(c, words, a));
  }

  // Edges with slots at the same heights are told of together; all on one line where they fit.
  private String places(Words words, double width) {
    Map<String, Set<EdgeName>> edges = new LinkedHashMap<>();
    for (Notch n : piece.notches()) {
      String at =
          piece.notches().stream()
              .filter(o -> o.edge() == n.edge())
              .map(o -> c.format().tape(o.height()))
              .reduce((a, b) -> words.say("ticket.and", a, b))
              .orElseThrow();
      edges.computeIfAbsent(at, k -> new LinkedHashSet<>()).add(n.edge());
    }
    List<String> each = new ArrayList<>();
    edges.forEach((at, names) -> each.add(place(words, names, at)));
    String all = words.say("ticket.notch-up", String.join(", ", each));
    if (LabelShape.width(all, type.edge()) <= width) {
      return all;
    }
    each.replaceAll(p -> words.say("ticket.notch-up", p));
    return String.join("\n", each);
  }

  private String place(Words words, Set<EdgeName> edges, String at) {
    List<String> names = edges.stream().map(e -> ticket.edge(c, words, e)).toList();
    String all = names.size() == 2 ? words.say("ticket.edge-both") : String.join(", ", names);
    return words.say("ticket.notch-edge", all, at);
  }
}
