package headcourse.sheet.bench;

import headcourse.bench.Piece;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.Pen;
import headcourse.drawing.Shade;
import headcourse.geom.Box;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.sheet.Board;
import headcourse.sheet.Dimensions;
import headcourse.sheet.FitLine;
import headcourse.sheet.Scale;
import headcourse.sheet.SheetContext;
import headcourse.sheet.TextFlow;
import java.util.ArrayList;
import java.util.List;

/** The ticket's section through the L, broken off above, with return and relief. */
final class TicketSection {
  private static final Lettering SIZE = new Lettering(3.5, true);
  private final SheetContext c;
  private final Piece piece;

  TicketSection(SheetContext c, Ticket ticket) {
    this.c = c;
    this.piece = ticket.piece();
  }

  void draw(Board board, Box box) {
    double t = piece.thickness().mm();
    double s = piece.returnDepth().isPositive() ? piece.returnDepth().mm() : t;
    double roomW = box.width() - 20;
    double roomH = box.height() - 28 - TextFlow.height(relief(), box.width() - 4, Lettering.NOTE);
    // The leg is shown up to twice the return; what matters is at the corner.
    double shown = Math.min(piece.stone().height().mm(), Math.max(2.2 * t, 1.3 * s));
    Scale scale = Scale.largest(c.job().units(), s, shown, roomW, roomH);
    double k = scale.factor();
    // The narrow thickness is lettered to its right, so the figure sits left of the middle.
    double right = Math.max(box.minX() + 4 + s * k, box.maxX() - 18);
    double bottom = box.minY() + 15.5 + roomH;
    double top = bottom - shown * k;
    boolean broken = shown < piece.stone().height().mm();
    board.group(
        Role.FIGURE,
        "",
        c.say("ticket.section-alt", c.format().withUnit(piece.thickness())),
        g -> {
          Path outline = outline(right, bottom, top, t * k, s * k, broken);
          g.outline(outline, Shade.KEY, Pen.CUT);
          Dimensions d = new Dimensions(g);
          d.aligned(
              new Point(right - t * k, top),
              new Point(right, top),
              4,
              c.format().tape(piece.thickness()),
              SIZE);
          if (piece.returnDepth().isPositive()) {
            d.aligned(
                new Point(right - s * k, bottom),
                new Point(right, bottom),
                -7.5,
                c.format().tape(piece.returnDepth()),
                SIZE);
          }
          g.firstFree(
              List.of(
                  new headcourse.drawing.Mark.Label(
                      new Point(right + 3.6, bottom - 2),
                      c.say("ticket.face-word"),
                      Lettering.NOTE,
                      Align.START,
                      90)),
              0.2);
        });
    board.group(
        Role.NOTES,
        "",
        "",
        g -> {
          FitLine.draw(
              g,
              box.minX() + 2,
              box.minY() + 4.6,
              box.width() - 3.5,
              c.say("ticket.section", scale.name()),
              Lettering.NOTE);
          double y = box.maxY() - 3 - TextFlow.height(relief(), box.width() - 4, Lettering.NOTE);
          TextFlow.paragraph(g, box.minX() + 2, y + 1.4, box.width() - 4, relief(), Lettering.NOTE);
        });
  }

  private String relief() {
    if (!piece.returnDepth().isPositive()) {
      return c.say("ticket.no-return");
    }
    return piece.relief().isPositive()
        ? c.say("ticket.relief", c.format().withUnit(piece.relief()))
        : c.say("ticket.no-relief");
  }

  // Seen from the left end: face to the right, back to the left, the return running back below.
  private static Path outline(
      double right, double bottom, double top, double t, double s, boolean broken) {
    List<Point> p = new ArrayList<>();
    p.add(new Point(right - s, bottom));
    p.add(new Point(right, bottom));
    p.add(new Point(right, top));
    if (broken) {
      p.add(new Point(right - t * 0.4, top));
      p.add(new Point(right - t * 0.47, top - t * 0.14));
      p.add(new Point(right - t * 0.57, top + t * 0.14));
      p.add(new Point(right - t * 0.64, top));
    }
    p.add(new Point(right - t, top));
    if (s > t) {
      p.add(new Point(right - t, bottom - t));
      p.add(new Point(right - s, bottom - t));
    }
    return Path.polygon(p);
  }
}
