package headcourse.sheet.bench;

import headcourse.bench.ExposedEdge;
import headcourse.bench.Piece;
import headcourse.bench.SawPass;
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

  private void all(Board b, Box box) {
    double x = box.minX() + 2;
    double w = box.width() - 4;
    b.text(x, box.minY() + 4.8, c.say("ticket.saw"), new Lettering(3.5, true), Align.START);
    double y = box.minY() + 8.2;
    double limit = box.maxY() - 2;
    for (SawPass pass : piece.saw()) {
      if (y + 8 > limit) {
        break;
      }
      y = pass(b, x, w, y, pass);
    }
    for (ExposedEdge e : piece.exposed()) {
      String text =
          c.say(
              "ticket.dress-" + e.why().name().toLowerCase(Locale.ROOT),
              c.say("ticket.edge-short-" + e.edge().word()),
              c.format().withUnit(e.length()));
      if (y + TextFlow.height(text, w, Lettering.NOTE) > limit) {
        break;
      }
      y = TextFlow.paragraph(b, x, y, w, text, Lettering.NOTE);
    }
  }

  private double pass(Board b, double x, double w, double top, SawPass pass) {
    b.text(x, top + 3.5, Integer.toString(pass.number()), new Lettering(3.5, true), Align.START);
    String edge = c.say("ticket.edge-" + edge(pass));
    b.text(x + 5, top + 3.5, edge, Lettering.NOTE, Align.START);
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
    b.text(x + w, top + 3.5, setting, big, Align.END);
    String how =
        c.say("ticket.lay-" + pass.lay().word())
            + ", "
            + c.say("ticket.part-" + pass.part().name().toLowerCase(Locale.ROOT))
            + ", "
            + (pass.possible()
                ? c.say("ticket.depth", c.format().withUnit(pass.depth()))
                : c.say("ticket.not-possible", c.format().withUnit(pass.depth())));
    return TextFlow.paragraph(b, x + 5, top + 5, w - 5, how, Lettering.NOTE) + 0.8;
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
