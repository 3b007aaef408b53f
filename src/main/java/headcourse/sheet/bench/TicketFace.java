package headcourse.sheet.bench;

import headcourse.bench.Notch;
import headcourse.bench.Piece;
import headcourse.bench.Rake;
import headcourse.drawing.LabelShape;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.Pen;
import headcourse.drawing.Shade;
import headcourse.geom.Box;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Similarity;
import headcourse.geom.Vec;
import headcourse.layout.Side;
import headcourse.sheet.Board;
import headcourse.sheet.Dimensions;
import headcourse.sheet.FitLine;
import headcourse.sheet.Scale;
import headcourse.sheet.SheetContext;
import headcourse.units.LengthFormat;
import java.util.ArrayList;
import java.util.List;

/** The ticket's face: the outline to scale with every size that the saw and the rule need. */
final class TicketFace {
  private static final Lettering SIZE = new Lettering(5, true);
  private static final Lettering EDGE = new Lettering(3.5, true);
  private static final double SIDE = 12;
  private final SheetContext c;
  private final Piece piece;
  private final Ticket ticket;

  TicketFace(SheetContext c, Ticket ticket) {
    this.c = c;
    this.ticket = ticket;
    this.piece = ticket.piece();
  }

  void draw(Board board, Box box) {
    double foot = rakesHeight();
    Box room =
        new Box(box.minX() + SIDE, box.minY() + 20, box.maxX() - SIDE, box.maxY() - foot - 20);
    Path path = piece.stone().outline();
    Box b = path.bounds();
    Scale scale =
        Scale.largest(c.job().units(), b.width(), b.height(), room.width(), room.height());
    Point middle = b.centre();
    Similarity view =
        Similarity.toPaper(
            scale.factor(),
            new Point(
                room.centre().x() - middle.x() * scale.factor(),
                room.centre().y() + middle.y() * scale.factor()));
    board.group(
        Role.FIGURE,
        "",
        c.say(
            "ticket.face-alt",
            piece.mark(),
            c.format().withUnit(piece.stone().bottom()),
            c.format().withUnit(piece.stone().top()),
            c.format().withUnit(piece.stone().height())),
        g -> {
          board(g, view, path);
          sizes(g, view);
          inside(g, view);
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
              box.width() - 4,
              c.say("ticket.face", scale.name()),
              Lettering.NOTE);
          alike(g, box);
          keySide(g, box, box.maxY() - foot - 3.4);
          rakes(g, box, box.maxY() - foot);
        });
  }

  private void board(Board g, Similarity view, Path path) {
    g.outline(path.transformed(view), Shade.STONE, Pen.OUTLINE);
  }

  private Point corner(int i) {
    // Corners: 0 lower left, 1 lower right, 2 upper right, 3 upper left.
    var s = piece.stone();
    var soffit = s.edges(headcourse.layout.FaceEdge.Where.SOFFIT);
    var top = s.edges(headcourse.layout.FaceEdge.Where.TOP);
    return switch (i) {
      case 0 -> soffit.get(0).from();
      case 1 -> soffit.get(soffit.size() - 1).to();
      case 2 -> top.get(0).from();
      default -> top.get(top.size() - 1).to();
    };
  }

  private void sizes(Board g, Similarity view) {
    Dimensions d = new Dimensions(g);
    Point ll = view.apply(corner(0));
    Point lr = view.apply(corner(1));
    Point ur = view.apply(corner(2));
    Point ul = view.apply(corner(3));
    LengthFormat f = c.format();
    String bottom = f.tape(piece.stone().bottom());
    String top = f.tape(piece.stone().top());
    d.aligned(ll, lr, -8.5, bottom, fitting(bottom, ll, lr));
    d.aligned(ul, ur, 6, top, fitting(top, ul, ur));
    d.aligned(ll, ul, 5.5, f.tape(piece.leftEdge()), EDGE);
    d.aligned(lr, ur, -8, f.tape(piece.rightEdge()), EDGE);
  }

  private void alike(Board g, Box box) {
    if (ticket.pieces().size() > 1) {
      String marks =
          String.join(", ", ticket.pieces().stream().map(p -> p.stone().mark()).toList());
      FitLine.draw(
          g, box.minX() + 2, box.minY() + 9, box.width() - 4, marks, new Lettering(2.5, true));
    }
  }

  private static Lettering fitting(String text, Point a, Point b) {
    for (Lettering l : new Lettering[] {SIZE, EDGE}) {
      if (LabelShape.width(text, l) + 2.8 <= a.distance(b)) {
        return l;
      }
    }
    return new Lettering(Lettering.LEAST, true);
  }

  private void inside(Board g, Similarity view) {
    Point ll = view.apply(corner(0));
    Point lr = view.apply(corner(1));
    Point ur = view.apply(corner(2));
    Point ul = view.apply(corner(3));
    g.line(ll, ur, new Pen(0.18, Pen.Pattern.DASHED));
    g.line(ul, lr, new Pen(0.18, Pen.Pattern.DASHED));
    for (Notch n : piece.notches()) {
      notch(g, view.apply(n.at()), n);
    }
    diagonal(g, ll, ur, c.format().tape(piece.diagonalRising()));
    diagonal(g, ul, lr, c.format().tape(piece.diagonalFalling()));
    up(g, ll, lr, ur, ul);
  }

  private void notch(Board g, Point at, Notch n) {
    boolean left =
        n.edge() == headcourse.bench.EdgeName.LEFT
            || (piece.stone().side() == Side.LEFT) == (n.edge() == headcourse.bench.EdgeName.OUTER)
                && n.edge() != headcourse.bench.EdgeName.RIGHT;
    double sign = left ? 1 : -1;
    g.stroke(
        Path.through(
            new Point(at.x(), at.y() - 1.2),
            new Point(at.x() + sign * 4, at.y()),
            new Point(at.x(), at.y() + 1.2)),
        new Pen(0.35, Pen.Pattern.SOLID));
    g.firstFree(
        List.of(
            new Mark.Label(
                new Point(at.x() + sign * 5, at.y() + 1.2),
                c.say("ticket.notch-short"),
                Lettering.NOTE,
                left ? Align.START : Align.END,
                0)),
        0.3);
  }

  private void diagonal(Board g, Point a, Point b, String text) {
    Vec along = b.minus(a).unit();
    Vec normal = along.normal();
    double degrees = Math.toDegrees(Math.atan2(-along.y(), along.x()));
    if (degrees > 90) {
      degrees -= 180;
    } else if (degrees <= -90) {
      degrees += 180;
    }
    List<Mark.Label> tries = new ArrayList<>();
    for (double t : new double[] {0.24, 0.3, 0.7, 0.76, 0.36, 0.64, 0.18, 0.82}) {
      Point on = a.towards(b, t);
      double rad = Math.toRadians(degrees);
      double above = 0.7;
      tries.add(label(on, rad, -above, text, degrees));
      tries.add(label(on, rad, above + LabelShape.above(text, Lettering.NOTE), text, degrees));
    }
    if (!g.firstFree(tries, 0.25) && normal.length() > 0) {
      loose.add(text);
    }
  }

  private final List<String> loose = new ArrayList<>();

  private static Mark.Label label(Point on, double rad, double down, String text, double degrees) {
    Point at = new Point(on.x() + Math.sin(rad) * down, on.y() + Math.cos(rad) * down);
    return new Mark.Label(at, text, Lettering.NOTE, Align.MIDDLE, degrees);
  }

  private void up(Board g, Point ll, Point lr, Point ur, Point ul) {
    double x = (ll.x() + lr.x() + ur.x() + ul.x()) / 4;
    double top = Math.max(ul.y(), ur.y());
    double h = Math.max(ll.y(), lr.y()) - top;
    double length = Math.min(9, h * 0.22);
    Point tip = new Point(x, top + h * 0.06 + 1);
    Point tail = new Point(x, tip.y() + length);
    double head = Math.min(2.4, length / 2);
    g.line(tail, tip.plus(new Vec(0, head * 0.8)), Pen.EDGE);
    g.fill(
        Path.polygon(
            tip,
            new Point(tip.x() + head * 0.4, tip.y() + head),
            new Point(tip.x() - head * 0.4, tip.y() + head)),
        Shade.BLACK);
    g.firstFree(
        List.of(
            new Mark.Label(
                new Point(x + 1.6, tail.y()), c.say("ticket.up"), Lettering.NOTE, Align.START, 0),
            new Mark.Label(
                new Point(x - 1.6, tail.y()), c.say("ticket.up"), Lettering.NOTE, Align.END, 0)),
        0.2);
  }

  private void keySide(Board g, Box box, double y) {
    Side side = piece.stone().side();
    if (side == Side.CENTRE) {
      return;
    }
    boolean left = side == Side.LEFT;
    String word = c.say("ticket.key-side");
    String text = left ? word + " →" : "← " + word;
    Lettering l = new Lettering(3.5, true);
    if (LabelShape.width(text, l) > box.width() - 4) {
      l = new Lettering(Lettering.LEAST, true);
    }
    g.text(left ? box.maxX() - 2 : box.minX() + 2, y, text, l, left ? Align.END : Align.START);
  }

  private static double rakesHeight() {
    return 16.6;
  }

  private void rakes(Board g, Box box, double top) {
    g.line(box.minX(), top, box.maxX(), top, Pen.FINE);
    Side side = piece.stone().side();
    String left = side == Side.CENTRE ? "left" : side == Side.LEFT ? "outer" : "key-side";
    String right = side == Side.CENTRE ? "right" : side == Side.RIGHT ? "outer" : "key-side";
    rake(g, box, top + 4.8, left, piece.left());
    rake(g, box, top + 9.8, right, piece.right());
    g.line(box.minX(), box.maxY() - 5.2, box.maxX(), box.maxY() - 5.2, Pen.FINE);
    String height = c.say("ticket.height", c.format().withUnit(piece.stone().height()));
    if (!loose.isEmpty()) {
      height += "   " + c.say("ticket.diagonals", String.join(" / ", loose));
    }
    FitLine.draw(g, box.minX() + 2, box.maxY() - 1.6, box.width() - 4, height, Lettering.NOTE);
  }

  private void rake(Board g, Box box, double y, String edge, Rake rake) {
    String name = c.say("ticket.edge-" + edge);
    String text;
    if (rake.longPoint() == Rake.LongPoint.NEITHER) {
      text = c.say("ticket.rake-square", name);
    } else {
      boolean top = rake.longPoint() == Rake.LongPoint.TOP;
      text =
          c.say(
              top ? "ticket.rake-long-top" : "ticket.rake-long-bottom",
              name,
              LengthFormat.degrees(rake.offSquare()),
              c.format().tape(rake.offset()),
              c.format().tape(rake.over()));
    }
    FitLine.draw(g, box.minX() + 2, y, box.width() - 4, text, Lettering.BODY);
  }
}
