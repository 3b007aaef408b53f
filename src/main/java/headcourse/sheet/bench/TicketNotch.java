package headcourse.sheet.bench;

import headcourse.bench.Notch;
import headcourse.bench.Piece;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.Pen;
import headcourse.drawing.Shade;
import headcourse.geom.Arc;
import headcourse.geom.Box;
import headcourse.geom.Clip;
import headcourse.geom.Edge;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Straight;
import headcourse.geom.Vec;
import headcourse.sheet.Board;
import headcourse.sheet.Dimensions;
import headcourse.sheet.FitLine;
import headcourse.sheet.SheetContext;
import headcourse.units.LengthFormat;
import java.util.ArrayList;
import java.util.List;

/** The ticket's notch: the slot at 1:1 as seen from above, the screw in place, and its figures. */
final class TicketNotch {
  private static final Lettering SIZE = new Lettering(3.5, true);
  private final SheetContext c;
  private final Piece piece;

  TicketNotch(SheetContext c, Ticket ticket) {
    this.c = c;
    this.piece = ticket.piece();
  }

  void draw(Board board, Box box, Box text) {
    if (piece.notches().isEmpty()) {
      FitLine.draw(
          board,
          box.minX() + 2,
          box.minY() + 4.6,
          box.width() - 3.5,
          c.say("ticket.no-notch"),
          Lettering.NOTE);
      return;
    }
    Notch n = piece.notches().get(0);
    board.group(
        Role.FIGURE,
        "",
        c.say("ticket.notch-alt", c.format().withUnit(n.mouth()), c.format().withUnit(n.run())),
        g -> figure(g, box, n));
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
              c.say("ticket.notch"),
              Lettering.NOTE);
          figures(g, text, n);
        });
  }

  // Paper: x right from the edge into the stone, y down from the back to the face.
  private void figure(Board g, Box box, Notch n) {
    double t = piece.thickness().mm();
    double a = n.mouth().mm();
    double e = n.run().mm();
    double x0 = box.minX() + 13;
    double back = box.minY() + 15;
    double wide = Math.min(box.width() - 16, Math.max(e + 10, 24));
    List<Point> body =
        List.of(
            new Point(x0, back),
            new Point(x0 + wide, back),
            new Point(x0 + wide + 1.2, back + t * 0.3),
            new Point(x0 + wide - 1.2, back + t * 0.7),
            new Point(x0 + wide, back + t),
            new Point(x0, back + t));
    g.outline(Path.polygon(body), Shade.STONE, Pen.CUT);
    Point mouth = new Point(x0, back + a);
    Point far = new Point(x0 + e, back);
    g.outline(slot(mouth, far), Shade.WHITE, Pen.EDGE);
    Vec along = far.minus(mouth).unit();
    Point tip = mouth.plus(along.times(n.screw() == null ? n.mouth().mm() * 3 : n.screw().mm()));
    Box room = new Box(box.minX() + 1, box.minY() + 6.5, box.maxX() - 1, back + t);
    double shank = c.job().fastener().shank().mm() / 2;
    Vec side = along.normal().times(shank);
    for (Vec v : new Vec[] {side, side.times(-1)}) {
      Path line = Path.through(mouth.plus(v), tip.plus(v));
      Clip.toBox(line, room, 0.01).forEach(r -> g.stroke(r, Pen.EDGE));
    }
    Vec head = along.normal().times(c.job().fastener().head().mm() / 2);
    g.line(mouth.plus(head), mouth.plus(head.times(-1)), Pen.OUTLINE);
    Dimensions d = new Dimensions(g);
    d.aligned(new Point(x0, back), mouth, -4.5, c.format().tape(n.mouth()), SIZE);
    double below = back + t;
    d.aligned(new Point(x0, below), new Point(x0 + e, below), -6.6, c.format().tape(n.run()), SIZE);
    g.firstFree(
        List.of(
            note(x0 + wide - 1.6, back + 3.6, c.say("ticket.back")),
            note(x0 + wide - 1.6, back + t * 0.5, c.say("ticket.back"))),
        0.3);
    g.firstFree(List.of(note(x0 + wide - 2, back + t - 1.2, c.say("ticket.face-word"))), 0.3);
  }

  private static Mark.Label note(double x, double y, String text) {
    return new Mark.Label(new Point(x, y), text, Lettering.NOTE, Align.END, 0);
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

  private void figures(Board g, Box box, Notch n) {
    LengthFormat f = c.format();
    double x = box.minX() + 2;
    double w = box.width() - 4;
    String screw =
        n.screw() == null
            ? c.say("ticket.no-screw")
            : c.say("ticket.screw", f.withUnit(n.screw()), f.withUnit(n.penetration()));
    StringBuilder where = new StringBuilder();
    for (Notch each : piece.notches()) {
      where.append(where.isEmpty() ? "" : "; ");
      where.append(
          c.say(
              "ticket.notch-where",
              c.say("ticket.edge-short-" + each.edge().word()),
              f.tape(each.height())));
    }
    String cut =
        c.say(
            "ticket.notch-figures",
            LengthFormat.degrees(n.slant()),
            f.tape(n.plunge()),
            f.tape(n.cover()));
    FitLine.draw(g, x, box.minY() + 4.2, w, where.toString(), new Lettering(3.5, true));
    FitLine.draw(g, x, box.minY() + 8.5, w, cut, Lettering.NOTE);
    FitLine.draw(g, x, box.minY() + 12.6, w, screw, Lettering.NOTE);
  }
}
