package headcourse.sheet.bench;

import headcourse.bench.Notch;
import headcourse.bench.Piece;
import headcourse.drawing.Board;
import headcourse.drawing.LabelShape;
import headcourse.drawing.Mark;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.Pen;
import headcourse.drawing.Shade;
import headcourse.drawing.TextFlow;
import headcourse.geom.Arc;
import headcourse.geom.Box;
import headcourse.geom.Clip;
import headcourse.geom.Edge;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Straight;
import headcourse.geom.Vec;
import headcourse.sheet.SheetContext;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * The ticket's notch: the slot at 1:1 as seen from above with the bed behind; beyond the bed, not
 * to scale, every layer that the screw passes and what it ends in, grey where it holds.
 */
final class TicketNotch {
  private static final double PAD = 2;

  /** A thicker bed than this is broken off, mm. */
  private static final double BED = 6.5;

  private final SheetContext c;
  private final Piece piece;
  private final TicketType type;

  private final String title;
  private final TicketStrips strips;

  /** How far below the panel's upper edge the figure begins, mm. */
  private final double top;

  /** A notch's panel of a width, mm. */
  TicketNotch(SheetContext c, Ticket ticket, TicketType type, double width) {
    this.c = c;
    this.piece = ticket.piece();
    this.type = type;
    this.strips =
        piece.notches().isEmpty() ? null : TicketStrips.of(c, piece.notches().get(0), type);
    this.title = c.say(piece.notches().isEmpty() ? "ticket.no-notch" : "ticket.notch");
    this.top = 2.4 + TextFlow.height(title, width - 2 * PAD, type.note());
  }

  private double bed() {
    double proud = Math.max(0, piece.stone().proud().mm());
    return c.job().wall().bed().mm() + proud;
  }

  private double shown() {
    return Math.min(bed(), BED);
  }

  double height() {
    if (piece.notches().isEmpty()) {
      return top;
    }
    double figure = strips.height() + shown() + piece.thickness().mm();
    return top + figure + type.edge().height() * 1.4 + 5.6;
  }

  void draw(Board board, Box box) {
    board.group(
        Role.NOTES,
        "",
        "",
        g ->
            TextFlow.paragraph(
                g, box.minX() + PAD, box.minY() + 2.4, box.width() - 2 * PAD, title, type.note()));
    if (!piece.notches().isEmpty()) {
      Notch n = piece.notches().get(0);
      board.group(
          Role.FIGURE,
          "",
          c.say("ticket.notch-alt", c.format().withUnit(n.mouth()), c.format().withUnit(n.run())),
          g -> figure(g, box, n));
    }
  }

  // Paper: x right from the edge into the stone, y down from the wall through the back to the face.
  private void figure(Board g, Box box, Notch n) {
    double t = piece.thickness().mm();
    double mouthWide = LabelShape.width(c.format().tape(n.mouth()), type.edge());
    double x0 = box.minX() + Math.max(13, mouthWide + 7.5);
    double wall = box.minY() + top + strips.height();
    double back = wall + shown();
    double wide = box.maxX() - 3 - x0;
    List<Point> body =
        List.of(
            new Point(x0, back),
            new Point(x0 + wide, back),
            new Point(x0 + wide + 1.2, back + t * 0.3),
            new Point(x0 + wide - 1.2, back + t * 0.7),
            new Point(x0 + wide, back + t),
            new Point(x0, back + t));
    g.outline(Path.polygon(body), Shade.STONE, Pen.CUT);
    if (bed() <= BED) {
      g.line(x0 - 5, wall, x0 + wide, wall, Pen.CUT);
    }
    Point mouth = new Point(x0, back + n.mouth().mm());
    Point far = new Point(x0 + n.run().mm(), back);
    g.outline(slot(mouth, far), Shade.WHITE, Pen.EDGE);
    screw(g, n, mouth, far, new Box(x0 - 5, wall, x0 + wide, back + t));
    strips.draw(g, n, new Box(x0 - 5, wall - strips.height(), x0 + wide, wall));
    var sizes = new TicketSection.Outer(g, type.edge());
    sizes.left(x0, back, mouth.y(), c.format().tape(n.mouth()));
    sizes.under(x0, far.x(), back + t, c.format().tape(n.run()));
    words(g, x0, wide, wall, back, t);
    hatch(g, x0, wide, wall, back);
  }

  private void words(Board g, double x0, double wide, double wall, double back, double t) {
    double h = type.note().height();
    word(g, x0 + wide - 2.4, back + t - 1.4, c.words().each("ticket.face-word").get(0));
    word(g, x0 + wide - 2.4, back + h + 1.4, c.words().each("ticket.back").get(0));
    String bed = c.words().each("ticket.bed", c.format().tape(Length.mm(bed()))).get(0);
    word(g, x0 + wide - 1.4, (wall + back + h) / 2, bed);
  }

  private void word(Board g, double x, double y, String text) {
    g.firstFree(List.of(new Mark.Label(new Point(x, y), text, type.note(), Align.END, 0)), 0.3);
  }

  // Dots of mortar in the bed, at places that only hang on the picture's own size.
  private static void hatch(Board g, double x0, double wide, double wall, double back) {
    int n = 0;
    for (double y = wall + 2; y < back - 1; y += 2.6) {
      for (double x = x0 + 1.5 + (n % 2) * 1.9; x < x0 + wide - 1; x += 3.8) {
        Point at = new Point(x, y);
        double r = 0.22;
        if (g.ink()
            .free(
                List.of(
                    new Point(x - r, y - r),
                    new Point(x + r, y - r),
                    new Point(x + r, y + r),
                    new Point(x - r, y + r)),
                0.5)) {
          g.fill(Path.circle(at, r), Shade.BLACK);
        }
      }
      n++;
    }
  }

  // The head lies wholly within the edge, so that a neighbour closes up to it.
  private void screw(Board g, Notch n, Point mouth, Point far, Box room) {
    Vec along = far.minus(mouth).unit();
    Vec across = along.normal();
    double head = c.job().fastener().head().mm() / 2;
    double shank = c.job().fastener().shank().mm() / 2;
    double sink = (Math.abs(across.x()) * head + 0.4) / Math.max(0.2, along.x());
    Point seat = mouth.plus(along.times(sink));
    double length = n.screw() == null ? n.mouth().mm() * 3 : n.screw().mm();
    Point tip = mouth.plus(along.times(length));
    for (double side : new double[] {shank, -shank}) {
      Path line = Path.through(seat.plus(across.times(side)), tip.plus(across.times(side)));
      Clip.toBox(line, room, 0.01).forEach(r -> g.stroke(r, Pen.EDGE));
    }
    g.line(seat.plus(across.times(head)), seat.plus(across.times(-head)), Pen.OUTLINE);
  }

  // The slot in section: the corner, and the blade's arc between mouth and run, bulging inwards.
  private Path slot(Point mouth, Point far) {
    double r = c.job().tools().grinder().blade().mm() / 2;
    double chord = mouth.distance(far);
    Vec along = far.minus(mouth).unit();
    // Into the stone, away from the corner: right and down on paper.
    Vec in = along.normal();
    double rise = Math.sqrt(Math.max(0, r * r - chord * chord / 4));
    Point centre = mouth.towards(far, 0.5).plus(in.times(-rise));
    double start = mouth.minus(centre).angle();
    double sweep = far.minus(centre).angle() - start;
    while (sweep > Math.PI) {
      sweep -= 2 * Math.PI;
    }
    while (sweep < -Math.PI) {
      sweep += 2 * Math.PI;
    }
    Point corner = new Point(mouth.x(), far.y());
    List<Edge> edges = new ArrayList<>();
    edges.add(new Straight(corner, mouth));
    edges.add(new Arc(centre, r, start, sweep));
    edges.add(new Straight(far, corner));
    return new Path(edges, true);
  }
}
