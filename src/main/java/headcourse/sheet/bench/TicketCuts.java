package headcourse.sheet.bench;

import headcourse.bench.ExposedEdge;
import headcourse.bench.Piece;
import headcourse.bench.SawPass;
import headcourse.drawing.LabelShape;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Mark.Role;
import headcourse.geom.Box;
import headcourse.sheet.Board;
import headcourse.sheet.FitLine;
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
    double w = box.width() - 4;
    double limit = box.maxY() - 1;
    double x = box.minX() + 2;
    Lettering head = new Lettering(3.5, true);
    String saw = c.say("ticket.saw");
    b.text(x, box.minY() + 4.8, saw, head, Align.START);
    double beside = LabelShape.width(saw, head) + 3;
    FitLine.draw(
        b, x + beside, box.minY() + 4.8, w - beside, c.say("ticket.saw-how"), Lettering.NOTE);
    double y = box.minY() + 6.4;
    for (SawPass pass : piece.saw()) {
      y = pass(b, x, w, y, pass);
    }
    StringBuilder dress = new StringBuilder();
    for (ExposedEdge e : piece.exposed()) {
      dress.append(dress.isEmpty() ? c.say("ticket.dress") + " " : "; ");
      dress.append(
          c.say(
              "ticket.dress-" + e.why().name().toLowerCase(Locale.ROOT),
              c.say("ticket.edge-short-" + e.edge().word()),
              c.format().withUnit(e.length())));
    }
    y += 1;
    for (String line : TextFlow.lines(dress.toString(), w, Lettering.NOTE)) {
      if (y + 2.5 > limit) {
        break;
      }
      b.text(x, y + 2.5, line, Lettering.NOTE, Align.START);
      y += 2.5 * TextFlow.LEADING;
    }
  }

  // One line a pass where there is room: number, edge, how it lies, setting.
  private double pass(Board b, double x, double w, double top, SawPass pass) {
    Lettering big = new Lettering(3.5, true);
    String edge = c.say("ticket.edge-short-" + edge(pass));
    String setting = setting(pass);
    String how =
        c.say("ticket.lay-" + pass.lay().word())
            + ", "
            + c.say("ticket.part-" + pass.part().name().toLowerCase(Locale.ROOT))
            + ", "
            + c.say(
                pass.possible() ? "ticket.depth" : "ticket.not-possible",
                c.format().withUnit(pass.depth()));
    double y = top + 4.2;
    b.text(x, y, Integer.toString(pass.number()), big, Align.START);
    double at = x + 4;
    double edgeWide = LabelShape.width(edge, Lettering.NOTE);
    double wide = LabelShape.width(setting, big);
    double howWide = LabelShape.width(how, Lettering.NOTE);
    if (4 + edgeWide + 2 + wide <= w) {
      b.text(at, y, edge, Lettering.NOTE, Align.START);
      b.text(x + w, y, setting, big, Align.END);
    } else {
      FitLine.draw(b, at, y, w - 4, edge, Lettering.NOTE);
      y += 4.8;
      FitLine.draw(b, at, y, w - 4, setting, big);
      wide = w;
    }
    if (4 + edgeWide + 1.4 + howWide + 1.6 + wide <= w) {
      b.text(x + w - wide - 1.6 - howWide, y, how, Lettering.NOTE, Align.START);
      return y + 1.2;
    }
    return TextFlow.paragraph(b, at, y + 1.5, w - 4, how, Lettering.NOTE);
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

  private static String edge(SawPass pass) {
    return pass.edge().word();
  }
}
