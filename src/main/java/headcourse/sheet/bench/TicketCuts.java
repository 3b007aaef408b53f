package headcourse.sheet.bench;

import headcourse.bench.Notch;
import headcourse.bench.Piece;
import headcourse.bench.SawPass;
import headcourse.drawing.LabelShape;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.Pen;
import headcourse.geom.Box;
import headcourse.sheet.Board;
import headcourse.sheet.SheetContext;
import headcourse.sheet.TextFlow;
import headcourse.units.LengthFormat;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/** The ticket's work, step by step: notches, saw passes with how the piece lies, offsets. */
final class TicketCuts {
  private static final double PAD = 2;
  private final SheetContext c;
  private final Piece piece;
  private final TicketType type;

  TicketCuts(SheetContext c, Ticket ticket, TicketType type) {
    this.c = c;
    this.piece = ticket.piece();
    this.type = type;
  }

  double height(double width) {
    return flow(new Board(), 0, 0, width) + 0.5;
  }

  void draw(Board board, Box box) {
    board.group(Role.TABLE, "", "", b -> flow(b, box.minX(), box.minY(), box.width()));
  }

  private double flow(Board b, double left, double top, double width) {
    double x = left + PAD;
    double w = width - 2 * PAD;
    double y = notches(b, left, x, top, width);
    if (!piece.saw().isEmpty()) {
      y = saw(b, x, y, w);
    }
    double below = new TicketArris(c, piece, type).offsets(b, x, y + 2, w);
    if (below > y + 2) {
      b.line(left, y + 0.6, left + width, y + 0.6, Pen.FINE);
      y = below;
    }
    return y;
  }

  private double notches(Board b, double left, double x, double top, double width) {
    double y = top + 2;
    double w = width - 2 * PAD;
    LengthFormat f = c.format();
    Lettering bold = type.body().inBold();
    // Edges with slots at the same heights share a line.
    Map<String, Set<String>> edges = new LinkedHashMap<>();
    for (Notch n : piece.notches()) {
      String at =
          String.join(
              " + ",
              piece.notches().stream()
                  .filter(o -> o.edge() == n.edge())
                  .map(o -> f.tape(o.height()))
                  .toList());
      edges
          .computeIfAbsent(at, k -> new LinkedHashSet<>())
          .add(c.say("ticket.edge-short-" + n.edge().word()));
    }
    List<String> places = new ArrayList<>();
    for (var e : edges.entrySet()) {
      places.add(c.say("ticket.notch-edge", String.join(" + ", e.getValue()), e.getKey()));
    }
    String all = c.say("ticket.notch-up", String.join(", ", places));
    if (LabelShape.width(all, bold) <= w) {
      places = List.of(all);
    } else {
      places.replaceAll(p -> c.say("ticket.notch-up", p));
    }
    for (String text : places) {
      y = TextFlow.paragraph(b, x, y, w, text, bold);
    }
    List<String> told = new ArrayList<>();
    for (Notch n : piece.notches()) {
      String cut =
          c.say(
              "ticket.notch-figures",
              LengthFormat.degrees(n.slant()),
              f.tape(n.plunge()),
              f.tape(n.cover()));
      String screw =
          n.screw() == null
              ? c.say("ticket.no-screw")
              : c.say("ticket.screw", f.withUnit(n.screw()), f.withUnit(n.penetration()));
      if (!told.contains(cut + screw)) {
        told.add(cut + screw);
        y = TextFlow.paragraph(b, x, y, w, cut, type.note());
        y = TextFlow.paragraph(b, x, y, w, screw, type.note());
      }
    }
    if (!piece.notches().isEmpty()) {
      b.line(left, y, left + width, y, Pen.EDGE);
      y += 2;
    }
    return y;
  }

  private record Lie(SawPass.Lay lay, SawPass.Part part) {
    // Written out, as a record's own is put together at run time, which costs a short run dearly.
    @Override
    public boolean equals(Object other) {
      return other instanceof Lie l && lay == l.lay && part == l.part;
    }

    @Override
    public int hashCode() {
      return Objects.hash(lay, part);
    }
  }

  private double saw(Board b, double x, double top, double w) {
    Lettering head = type.body().inBold();
    List<String> words = c.words().each("ticket.saw");
    double beside = 2.5;
    double y = top;
    for (String word : words) {
      b.text(x, y + head.height(), word, head, Align.START);
      beside = Math.max(beside, LabelShape.width(word, head) + 2);
      y += head.height() * 1.5;
    }
    List<Lie> lies = piece.saw().stream().map(p -> new Lie(p.lay(), p.part())).distinct().toList();
    double cell = (w - beside) / 2;
    double at = top;
    for (int i = 0; i < lies.size(); i += 2) {
      double low = lie(b, x + beside, at, cell - 0.5, i, lies);
      if (i + 1 < lies.size()) {
        low = Math.max(low, lie(b, x + beside + cell, at, cell - 0.5, i + 1, lies));
      }
      at = low + 1;
    }
    y = Math.max(y, at);
    for (SawPass p : piece.saw()) {
      y = pass(b, x, y, w, p, letter(lies.indexOf(new Lie(p.lay(), p.part()))));
    }
    return y;
  }

  private static String letter(int i) {
    return Character.toString((char) ('A' + i));
  }

  private double lie(Board b, double x, double y, double w, int i, List<Lie> lies) {
    Lie lie = lies.get(i);
    double f = type.factor();
    LayPicture.draw(b, Box.of(x, y, 12 * f, 9.5 * f), piece, lie.lay, lie.part);
    Lettering bold = type.body().inBold();
    double at = x + 12.8 * f;
    b.text(at, y + bold.height(), letter(i), bold, Align.START);
    at += LabelShape.width(letter(i), bold) + 0.8;
    double low = y + 0.6;
    for (String key :
        List.of(
            "ticket.lay-" + lie.lay.word(),
            "ticket.part-" + lie.part.name().toLowerCase(Locale.ROOT))) {
      low = TextFlow.paragraph(b, at, low, x + w - at, c.say(key), type.note());
    }
    return Math.max(low, y + 10 * f);
  }

  // Number, lie, edge; depth and setting to the right, on a line of their own where they must.
  private double pass(Board b, double x, double top, double w, SawPass pass, String letter) {
    Lettering big = type.body().inBold();
    String edge = c.say("ticket.edge-short-" + pass.edge().word());
    String depth =
        c.say(
            pass.possible() ? "ticket.depth" : "ticket.not-possible",
            c.format().withUnit(pass.depth()));
    double y = top + big.height();
    double pitch = type.bodyPitch() - big.height();
    b.text(x, y, pass.number() + " " + letter, big, Align.START);
    double indent = LabelShape.width("0 M", big) + 1.6;
    String setting = setting(pass);
    double edgeWide = LabelShape.width(edge, type.note());
    double depthWide = LabelShape.width(depth, type.note());
    double wide = LabelShape.width(setting, big);
    if (indent + edgeWide + 2 + depthWide + 2.5 + wide <= w) {
      b.text(x + indent, y, edge, type.note(), Align.START);
      b.text(x + w, y, setting, big, Align.END);
      // Depths stand in a column where the longest usual setting leaves room.
      double column =
          Math.max(x + indent + edgeWide + 2, x + Math.min(w - wide - 2.5 - depthWide, w * 0.36));
      b.text(column, y, depth, type.note(), Align.START);
      return y + pitch;
    }
    y = TextFlow.paragraph(b, x + indent, top + 0.6, w - indent, edge + ": " + depth, type.note());
    return TextFlow.paragraph(b, x + indent, y, w - indent, setting, big);
  }

  private String setting(SawPass pass) {
    boolean fence = pass.mitre().radians() != 0;
    boolean tilt = pass.tilt().radians() != 0;
    String mitre = LengthFormat.degrees(pass.mitre());
    String blade = LengthFormat.degrees(pass.tilt());
    if (fence && tilt) {
      return c.say("ticket.both", mitre, blade);
    }
    return fence
        ? c.say("ticket.fence", mitre)
        : tilt ? c.say("ticket.tilt", blade) : c.say("ticket.square");
  }
}
