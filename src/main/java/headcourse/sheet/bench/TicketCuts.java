package headcourse.sheet.bench;

import headcourse.bench.ExposedEdge;
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
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/** The ticket's work, step by step: saw passes with how the piece lies, notches, edges to dress. */
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
    y = saw(b, x, y, w);
    if (!piece.exposed().isEmpty()) {
      y += 0.8;
      b.line(left, y, left + width, y, Pen.FINE);
      y = TextFlow.paragraph(b, x, y + 2, w, dress(), type.note());
    }
    return y;
  }

  private double notches(Board b, double left, double x, double top, double width) {
    double y = top + 2;
    double w = width - 2 * PAD;
    LengthFormat f = c.format();
    Lettering bold = type.body().inBold();
    List<String> edges = piece.notches().stream().map(n -> n.edge().word()).distinct().toList();
    for (String edge : edges) {
      List<Notch> here =
          piece.notches().stream().filter(n -> n.edge().word().equals(edge)).toList();
      String at = String.join(" + ", here.stream().map(n -> f.tape(n.height())).toList());
      String text = c.say("ticket.notch-where", c.say("ticket.edge-short-" + edge), at);
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
    double y = TextFlow.paragraph(b, x, top, w, c.say("ticket.saw"), head) - head.height() * 0.4;
    List<Lie> lies = piece.saw().stream().map(p -> new Lie(p.lay(), p.part())).distinct().toList();
    double cell = w / 2;
    for (int i = 0; i < lies.size(); i += 2) {
      double low = lie(b, x, y, cell - 2, i, lies);
      if (i + 1 < lies.size()) {
        low = Math.max(low, lie(b, x + cell, y, cell - 2, i + 1, lies));
      }
      y = low + 1;
    }
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
    LayPicture.draw(b, Box.of(x, y, 17 * f, 10 * f), piece, lie.lay, lie.part);
    String text =
        c.say("ticket.lay-" + lie.lay.word())
            + ", "
            + c.say("ticket.part-" + lie.part.name().toLowerCase(Locale.ROOT));
    Lettering bold = type.body().inBold();
    b.text(x + 18.5 * f, y + bold.height(), letter(i), bold, Align.START);
    double beside = 19.5 * f + LabelShape.width(letter(i), bold);
    double low = TextFlow.paragraph(b, x + beside, y + 0.6, w - beside, text, type.note());
    return Math.max(low, y + 11 * f);
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

  private String dress() {
    StringBuilder dress = new StringBuilder(c.say("ticket.dress"));
    String join = " ";
    for (ExposedEdge e : piece.exposed()) {
      dress
          .append(join)
          .append(
              c.say(
                  "ticket.dress-" + e.why().name().toLowerCase(Locale.ROOT),
                  c.say("ticket.edge-short-" + e.edge().word()),
                  c.format().withUnit(e.length())));
      join = "; ";
    }
    return dress.toString();
  }
}
