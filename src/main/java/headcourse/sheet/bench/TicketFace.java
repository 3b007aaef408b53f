package headcourse.sheet.bench;

import headcourse.bench.EdgeName;
import headcourse.bench.Notch;
import headcourse.bench.Piece;
import headcourse.drawing.Board;
import headcourse.drawing.Dimensions;
import headcourse.drawing.Dimensions.Size;
import headcourse.drawing.LabelShape;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.Pen;
import headcourse.drawing.Shade;
import headcourse.geom.Box;
import headcourse.geom.Edge;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Similarity;
import headcourse.geom.Vec;
import headcourse.layout.FaceEdge.Where;
import headcourse.layout.Side;
import headcourse.layout.VSoffit;
import headcourse.sheet.OwnFrame;
import headcourse.sheet.Scale;
import headcourse.sheet.SheetContext;
import headcourse.units.LengthFormat;
import java.util.ArrayList;
import java.util.List;

/** The ticket's face: the outline to scale with every size that the saw and the rule need. */
final class TicketFace {
  /** The face is not drawn narrower, mm. */
  private static final double LEAST_FIGURE = 10;

  private static final double SIDE = 12.5;
  private static final double ABOVE = 12.5;
  private static final double BELOW = 11.5;

  /** The figure is this high at least, mm, unless a stone is lower at the usual scale. */
  private static final double FIGURE = 31;

  private static final double LOWEST = 24;

  private static final double PAD = 2;
  private static final Lettering LEAST = new Lettering(Lettering.LEAST, true);

  private final SheetContext c;
  private final Piece piece;
  private final TicketType type;
  private final double titleHeight;

  /** A face of a width, mm. */
  TicketFace(SheetContext c, Ticket ticket, TicketType type, double width) {
    this.c = c;
    this.piece = ticket.piece();
    this.type = type;
    this.titleHeight = titleHeight(width);
  }

  /** Whether the stone and the sizes beside it have room in a width, mm. */
  boolean fits(double width) {
    return width >= 2 * SIDE * type.factor() + LEAST_FIGURE;
  }

  double height() {
    return titleHeight + (ABOVE + figureHeight() + BELOW) * type.factor();
  }

  /** What the stone takes at 1 1/2 in to the foot, or 1:10. */
  private double figureHeight() {
    double usual = c.job().units() == headcourse.units.Units.INCH ? 8 : 10;
    Box own = piece.stone().outline().transformed(OwnFrame.of(piece.stone())).bounds();
    return Math.max(LOWEST, Math.min(FIGURE, own.height() / usual + 0.5));
  }

  // The longest name of a scale stands for the one that is chosen later.
  private double titleHeight(double width) {
    String longest = c.job().units() == headcourse.units.Units.INCH ? "1 ¹⁄₂\" = 1'-0\"" : "1:10";
    String title = c.say("ticket.face", longest);
    return 2 + type.height(title, width - 2 * PAD, type.note());
  }

  /** The scale that the stone is drawn to in a box. */
  Scale scale(Box box) {
    Similarity turn = OwnFrame.of(piece.stone());
    Box b = piece.stone().outline().transformed(turn).bounds();
    Box room = room(box);
    return Scale.largest(
        c.job().units(), b.width(), b.height() + out(turn), room.width(), room.height());
  }

  private Box room(Box box) {
    double f = type.factor();
    return new Box(
        box.minX() + SIDE * f,
        box.minY() + titleHeight + ABOVE * f,
        box.maxX() - SIDE * f,
        box.maxY() - BELOW * f);
  }

  // A top that slopes or stands up in the middle pushes its size out.
  private double out(Similarity turn) {
    Similarity plain = turn.then(Similarity.toPaper(1, new Point(0, 0)));
    return beyond(plain, plain.apply(corner(2)), plain.apply(corner(3)));
  }

  void draw(Board board, Box box) {
    double bottom = box.maxY();
    double title = titleHeight;
    Box room = room(box);
    Similarity turn = OwnFrame.of(piece.stone());
    Box b = piece.stone().outline().transformed(turn).bounds();
    double out = out(turn);
    Scale scale = scale(box);
    Point middle = b.centre().plus(new Vec(0, out / 2));
    double k = scale.factor();
    Point origin =
        new Point(room.centre().x() - middle.x() * k, room.centre().y() + middle.y() * k);
    Similarity view = turn.then(Similarity.toPaper(k, origin));
    String name = c.say("ticket.face", scale.name());
    board.group(
        Role.NOTES,
        "",
        "",
        g ->
            type.paragraph(
                g, box.minX() + PAD, box.minY() + 2.4, box.width() - 2 * PAD, name, type.note()));
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
          g.outline(piece.stone().outline().transformed(view), Shade.STONE, Pen.OUTLINE);
          sizes(g, view, new Box(box.minX() + 0.5, box.minY() + title, box.maxX() - 0.5, bottom));
          inside(g, view);
        });
  }

  // Corners: 0 lower left, 1 lower right, 2 upper right, 3 upper left.
  private Point corner(int i) {
    var s = piece.stone();
    List<Edge> soffit = s.edges(Where.SOFFIT);
    List<Edge> right = s.edges(Where.RIGHT);
    List<Edge> left = s.edges(Where.LEFT);
    Point ll = soffit.get(0).from();
    Point lr = soffit.get(soffit.size() - 1).to();
    return switch (i) {
      case 0 -> ll;
      case 1 -> lr;
      case 2 -> right.isEmpty() ? lr : right.get(right.size() - 1).to();
      default -> left.isEmpty() ? ll : left.get(0).from();
    };
  }

  private void sizes(Board g, Similarity view, Box panel) {
    Point ll = view.apply(corner(0));
    Point lr = view.apply(corner(1));
    Point ur = view.apply(corner(2));
    Point ul = view.apply(corner(3));
    LengthFormat f = c.format();
    double k = type.factor();
    // What of the outline stands beyond the line between two corners pushes its size out.
    double low = beyond(view, ll, lr);
    double high = beyond(view, ur, ul);
    String bottom = f.tape(piece.stone().bottom());
    String top = f.tape(piece.stone().top());
    String onLeft = f.tape(piece.measures().leftEdge());
    String onRight = f.tape(piece.measures().rightEdge());
    List<Size> sizes =
        new ArrayList<>(
            List.of(
                new Size(ll, lr, -8.5 * k - low, bottom, fitting(bottom, ll, lr)),
                new Size(ul, ur, 6 * k + high, top, fitting(top, ul, ur)),
                new Size(
                    ll, ul, type.aside() + beyond(view, ul, ll), onLeft, onLine(onLeft, ll, ul)),
                new Size(
                    lr, ur, -(8 * k + beyond(view, lr, ur)), onRight, onLine(onRight, lr, ur))));
    VSoffit.of(piece.stone())
        .ifPresent(
            v -> {
              g.line(ll, lr, Pen.HIDDEN);
              Point foot = ll.towards(lr, 0.5);
              Point apex = view.apply(v.apex());
              String depth = f.tape(v.depth());
              // Where there is no room, or a diagonal runs through it, the words below have it.
              double reach = LabelShape.width(depth, type.edge()) / 2 + 1;
              Point middle = foot.towards(apex, 0.5);
              if (2 * reach <= foot.distance(apex)
                  && clear(middle, reach, ll, ur)
                  && clear(middle, reach, lr, ul)) {
                sizes.add(new Size(foot, apex, 0, depth, type.edge()));
              }
            });
    Box own = piece.stone().outline().transformed(view).bounds();
    new Dimensions(g, panel, own).all(sizes);
  }

  private boolean clear(Point middle, double reach, Point a, Point b) {
    double aside = type.edge().height() + 2;
    Vec along = b.minus(a).unit();
    // The size's text runs up along its line, on the left of it.
    for (double up : new double[] {-reach, reach}) {
      for (double left : new double[] {0, -aside}) {
        Vec to = new Point(middle.x() + left, middle.y() + up).minus(a);
        if (along.normal().dot(to) * along.normal().dot(middle.minus(a)) <= 0) {
          return false;
        }
      }
    }
    return true;
  }

  // How far the outline reaches outside the line from a to b, which goes round it on paper with
  // the stone on its left as seen.
  private double beyond(Similarity view, Point a, Point b) {
    if (a.distance(b) < 1e-9) {
      return 0;
    }
    Vec out = b.minus(a).unit().normal();
    double most = 0;
    for (Point p : piece.stone().outline().transformed(view).vertices(0.05)) {
      most = Math.max(most, out.dot(p.minus(a)));
    }
    return most;
  }

  private Lettering fitting(String text, Point a, Point b) {
    for (Lettering l : new Lettering[] {type.size(), type.edge()}) {
      if (LabelShape.width(text, l) + 2.8 <= a.distance(b)) {
        return l;
      }
    }
    return type.edge();
  }

  // Beside a short edge there is less room than on its own line, in smaller lettering.
  private Lettering onLine(String text, Point a, Point b) {
    for (Lettering l : new Lettering[] {type.edge(), Lettering.DIMENSION, LEAST}) {
      if (l.height() <= type.edge().height() && Dimensions.fits(text, l, a.distance(b))) {
        return l;
      }
    }
    return type.edge();
  }

  private void inside(Board g, Similarity view) {
    Point ll = view.apply(corner(0));
    Point lr = view.apply(corner(1));
    Point ur = view.apply(corner(2));
    Point ul = view.apply(corner(3));
    for (Notch n : piece.notches()) {
      notch(g, view.apply(n.at()), n);
    }
    up(g, view, ll, lr, ur, ul);
    g.line(ll, ur, new Pen(0.18, Pen.Pattern.DASHED));
    g.line(ul, lr, new Pen(0.18, Pen.Pattern.DASHED));
    List<Point> face = List.of(ll, lr, ur, ul);
    diagonal(g, face, ll, ur, c.format().tape(piece.measures().rising()));
    diagonal(g, face, ul, lr, c.format().tape(piece.measures().falling()));
    for (Notch n : piece.notches()) {
      notchLabel(g, view.apply(n.at()), n);
    }
    Vec plumb = view.apply(new Vec(0, 1)).unit();
    upLabel(g, plumb);
  }

  private boolean left(Notch n) {
    return n.edge() == EdgeName.LEFT
        || n.edge() != EdgeName.RIGHT
            && (piece.stone().side() == Side.LEFT) == (n.edge() == EdgeName.OUTER);
  }

  private void notch(Board g, Point at, Notch n) {
    double sign = left(n) ? 1 : -1;
    g.stroke(
        Path.through(
            new Point(at.x(), at.y() - 1.2),
            new Point(at.x() + sign * 4, at.y()),
            new Point(at.x(), at.y() + 1.2)),
        Pen.EDGE);
  }

  private void notchLabel(Board g, Point at, Notch n) {
    double sign = left(n) ? 1 : -1;
    Align align = left(n) ? Align.START : Align.END;
    double half = type.note().height() / 2;
    List<Mark.Label> tries = new ArrayList<>();
    for (String text : List.of(c.format().tape(n.height()), c.say("ticket.notch-short"))) {
      for (double dy : new double[] {half, 3.4 + 2 * half, -2}) {
        double dx = dy == half ? 4.8 : 1.4;
        Point p = new Point(at.x() + sign * dx, at.y() + dy);
        tries.add(new Mark.Label(p, text, type.note(), align, 0));
      }
    }
    g.firstFree(tries, 0.3);
  }

  private void diagonal(Board g, List<Point> face, Point a, Point b, String text) {
    Vec along = b.minus(a).unit();
    double degrees = Math.toDegrees(Math.atan2(-along.y(), along.x()));
    if (degrees > 90) {
      degrees -= 180;
    } else if (degrees <= -90) {
      degrees += 180;
    }
    List<Mark.Label> tries = new ArrayList<>();
    double rad = Math.toRadians(degrees);
    for (Lettering l : List.of(type.body(), type.note())) {
      for (double t : new double[] {0.24, 0.3, 0.7, 0.76, 0.36, 0.64, 0.18, 0.82}) {
        Point on = a.towards(b, t);
        double above = 0.7;
        double below = above + LabelShape.above(text, l);
        for (double down : new double[] {-above - LabelShape.below(text, l), below}) {
          Point at = new Point(on.x() + Math.sin(rad) * down, on.y() + Math.cos(rad) * down);
          tries.add(new Mark.Label(at, text, l, Align.MIDDLE, degrees));
        }
      }
    }
    // Beside a diagonal that all but lies on an edge it would stand for that edge.
    tries.removeIf(l -> !within(face, LabelShape.bounds(l).centre()));
    // Where it finds no place it stands in the words below.
    g.firstFree(tries, 0.25);
  }

  private static boolean within(List<Point> face, Point p) {
    for (int i = 0; i < face.size(); i++) {
      Point a = face.get(i);
      // Counterclockwise on a page whose y runs down.
      if (face.get((i + 1) % face.size()).minus(a).cross(p.minus(a)) > 0) {
        return false;
      }
    }
    return true;
  }

  private Point tail;

  private void up(Board g, Similarity view, Point ll, Point lr, Point ur, Point ul) {
    Vec up = view.apply(new Vec(0, 1)).unit();
    double h = Math.min(ll.distance(ul), lr.distance(ur));
    double w = Math.min(ll.distance(lr), ul.distance(ur));
    double length = Math.min(9 * type.factor(), Math.min(h, w * 1.5) * 0.25);
    // Over a V the middle is the size's.
    double across = VSoffit.of(piece.stone()).isPresent() ? 0.68 : 0.5;
    Point mid = ul.towards(ur, across).towards(ll.towards(lr, across), 0.22);
    Point tip = mid.plus(up.times(length / 2));
    tail = mid.plus(up.times(-length / 2));
    double head = Math.min(2.4 * type.factor(), length / 2);
    Vec aside = up.normal().times(head * 0.4);
    Point neck = tip.plus(up.times(-head));
    g.line(tail, tip.plus(up.times(-head * 0.8)), Pen.EDGE);
    g.fill(Path.polygon(tip, neck.plus(aside), neck.plus(aside.times(-1))), Shade.BLACK);
  }

  private void upLabel(Board g, Vec up) {
    String text = c.words().each("ticket.up").get(0);
    double h = type.note().height();
    Point foot = tail.plus(up.times(-1.2));
    g.firstFree(
        List.of(
            new Mark.Label(new Point(tail.x() + 1.6, tail.y()), text, type.note(), Align.START, 0),
            new Mark.Label(new Point(tail.x() - 1.6, tail.y()), text, type.note(), Align.END, 0),
            new Mark.Label(new Point(foot.x(), foot.y() + h), text, type.note(), Align.MIDDLE, 0)),
        0.2);
  }
}
