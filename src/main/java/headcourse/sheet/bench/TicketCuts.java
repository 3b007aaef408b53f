package headcourse.sheet.bench;

import headcourse.bench.ExposedEdge;
import headcourse.bench.Piece;
import headcourse.bench.SawPass;
import headcourse.drawing.LabelShape;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Mark.Role;
import headcourse.geom.Box;
import headcourse.layout.Side;
import headcourse.sheet.Board;
import headcourse.sheet.SheetContext;
import headcourse.sheet.TextFlow;
import headcourse.units.LengthFormat;
import java.util.Locale;

/** The ticket's saw settings, pass by pass, and the edges to be dressed. */
final class TicketCuts {
  private final SheetContext c;
  private final Piece piece;

  TicketCuts(SheetContext c, Ticket ticket) {
    this.c = c;
    this.piece = ticket.piece();
  }

  void draw(Board board, Box box) {
    board.group(Role.TABLE, "", "", b -> all(b, box));
  }

  // Two columns, filled one after the other; the dressing follows the last pass.
  private void all(Board b, Box box) {
    double w = box.width() / 2 - 4;
    double limit = box.maxY() - 1;
    double x = box.minX() + 2;
    b.text(x, box.minY() + 4.8, c.say("ticket.saw"), new Lettering(3.5, true), Align.START);
    double top = box.minY() + 7.5;
    double y = top;
    boolean second = false;
    for (SawPass pass : piece.saw()) {
      if (!second && y + height(w, pass) > limit) {
        second = true;
        x = box.minX() + box.width() / 2 + 2;
        y = top;
      }
      y = pass(b, x, w, y, pass);
    }
    for (ExposedEdge e : piece.exposed()) {
      String text =
          c.say(
              "ticket.dress-" + e.why().name().toLowerCase(Locale.ROOT),
              c.say("ticket.edge-short-" + e.edge().word()),
              c.format().withUnit(e.length()));
      double h = TextFlow.height(text, w, Lettering.NOTE);
      if (!second && y + h > limit) {
        second = true;
        x = box.minX() + box.width() / 2 + 2;
        y = top;
      }
      if (y + h > limit + 1.8) {
        break;
      }
      y = TextFlow.paragraph(b, x, y, w, text, Lettering.NOTE);
    }
  }

  private double height(double w, SawPass pass) {
    return pass(new Board(), 0, w, 0, pass);
  }

  private double pass(Board b, double x, double w, double top, SawPass pass) {
    b.text(x, top + 3.5, Integer.toString(pass.number()), new Lettering(3.5, true), Align.START);
    String edge = c.say("ticket.edge-" + edge(pass));
    boolean square = pass.mitre().radians() == 0 && pass.tilt().radians() == 0;
    Lettering big = new Lettering(3.5, true);
    String setting =
        square
            ? c.say("ticket.square")
            : pass.tilt().radians() == 0
                ? c.say("ticket.fence", LengthFormat.degrees(pass.mitre()))
                : pass.mitre().radians() == 0
                    ? c.say("ticket.tilt", LengthFormat.degrees(pass.tilt()))
                    : c.say(
                        "ticket.both",
                        LengthFormat.degrees(pass.mitre()),
                        LengthFormat.degrees(pass.tilt()));
    double room = w - 5;
    double wide = LabelShape.width(setting, big);
    double y = top + 3.5;
    if (LabelShape.width(edge, Lettering.NOTE) + 2 + wide <= room) {
      b.text(x + 5, y, edge, Lettering.NOTE, Align.START);
      b.text(x + w, y, setting, big, Align.END);
    } else {
      FitLine.draw(b, x + 5, y, room, edge, Lettering.NOTE);
      y += 5;
      FitLine.draw(b, x + 5, y, room, setting, big);
    }
    String how =
        c.say("ticket.lay-" + pass.lay().word())
            + ", "
            + c.say("ticket.part-" + pass.part().name().toLowerCase(Locale.ROOT))
            + ", "
            + (pass.possible()
                ? c.say("ticket.depth", c.format().withUnit(pass.depth()))
                : c.say("ticket.not-possible", c.format().withUnit(pass.depth())));
    return TextFlow.paragraph(b, x + 5, y + 1.5, room, how, Lettering.NOTE) + 0.8;
  }

  private String edge(SawPass pass) {
    Side side = piece.stone().side();
    return switch (pass.edge()) {
      case INNER -> "key-side";
      case OUTER -> side == Side.CENTRE ? "right" : "outer";
      case LEFT -> "left";
      case RIGHT -> "right";
      case TOP -> "top";
      case SOFFIT -> "soffit";
    };
  }
}
