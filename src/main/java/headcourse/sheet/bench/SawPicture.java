package headcourse.sheet.bench;

import headcourse.bench.EdgeName;
import headcourse.bench.Piece;
import headcourse.bench.Rake.LongPoint;
import headcourse.bench.SawPass;
import headcourse.bench.SawPass.Lay;
import headcourse.bench.SawPass.Part;
import headcourse.bench.SoffitPiece;
import headcourse.drawing.Board;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.Pen;
import headcourse.drawing.Shade;
import headcourse.geom.Box;
import headcourse.geom.Edge;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Similarity;
import headcourse.geom.Straight;
import headcourse.geom.Vec;
import headcourse.layout.FaceEdge.Where;
import headcourse.sheet.OwnFrame;
import java.util.List;
import java.util.Optional;

/**
 * A pass of the saw seen from above: the piece as it lies on the table, what stands up from it in
 * grey, the blade's line plumb on paper, and the fence as it is turned off square to it. Of a piece
 * that lies on its face left and right are changed over. A leaning stroke over the blade shows
 * which way it is tilted, as seen along the table from the fence.
 */
final class SawPicture {
  /** Blade beyond the piece, mm. */
  private static final double BLADE = 0.6;

  /** Room above for the blade's arrow, and below for the fence, mm. */
  private static final double ABOVE = 2.6;

  private static final double BELOW = 2.6;
  private static final double HEIGHT = 14.5;
  private static final double BESIDE = 2;

  private final Piece piece;
  private final SawPass pass;
  private final boolean left;

  SawPicture(Ticket ticket, SawPass pass) {
    this.piece = ticket.piece();
    this.pass = pass;
    this.left = ticket.left(pass.edge());
  }

  /** What lies on the table: its outline, what of it stands up, the edge that is cut. */
  private record Lying(Path outline, Optional<Path> standing, Point from, Point to, Vec fence) {
    Lying turned(Similarity map) {
      return new Lying(
          outline.transformed(map),
          standing.map(s -> s.transformed(map)),
          map.apply(from),
          map.apply(to),
          map.apply(fence));
    }
  }

  void draw(Board board, Box box, String title) {
    if (pass.template()) {
      board.group(Role.FIGURE, "", title, g -> curve(g, box));
      return;
    }
    Lying lying = lying();
    Vec cut = lying.to.minus(lying.from);
    // The blade is plumb on paper; a side turns by its rake alone.
    Vec up = cut.y() < 0 || cut.y() == 0 && cut.x() > 0 ? cut.times(-1) : cut;
    Lying on = lying.turned(Similarity.turn(Math.PI / 2 - up.angle()));
    Box own = on.outline.bounds();
    double high = own.maxY() - lowest(on, own);
    double k =
        Math.min((box.width() - 2 * BESIDE) / own.width(), (box.height() - ABOVE - BELOW) / high);
    Point middle = new Point(box.centre().x(), box.minY() + ABOVE);
    Similarity paper =
        Similarity.toPaper(
            k, new Point(middle.x() - own.centre().x() * k, middle.y() + own.maxY() * k));
    board.group(Role.FIGURE, "", title, g -> figure(g, on, paper, own, box));
  }

  // A curved top is heavy; there is no setting to show.
  private void curve(Board g, Box box) {
    Similarity lie = lie();
    boolean down = pass.lay() == Lay.FACE_DOWN;
    Path outline = piece.stone().outline().transformed(lie);
    Box b = outline.bounds();
    double k =
        Math.min((box.width() - 2 * BESIDE) / b.width(), (box.height() - ABOVE) / b.height());
    Point at =
        new Point(box.centre().x() - b.centre().x() * k, box.centre().y() + b.centre().y() * k);
    Similarity paper = Similarity.toPaper(k, at);
    g.outline(outline.transformed(paper), Shade.WHITE, Pen.EDGE);
    if (down) {
      ReturnOutline.of(piece)
          .ifPresent(r -> g.outline(r.transformed(lie).transformed(paper), Shade.KEY, Pen.EDGE));
    }
    Path top = new Path(piece.stone().edges(Where.TOP), false);
    g.stroke(top.transformed(lie).transformed(paper), Pen.OUTLINE);
  }

  // Of the piece and of the fence as far as it lies along the piece and to the blade.
  private static double lowest(Lying on, Box own) {
    double slope = slope(on);
    double foot = Double.POSITIVE_INFINITY;
    for (Point v : on.outline.vertices(0.05)) {
      foot = Math.min(foot, v.y() - slope * (v.x() - on.from.x()));
    }
    double far = on.from.x() < own.centre().x() ? own.maxX() : own.minX();
    return Math.min(own.minY(), Math.min(foot, foot + slope * (far - on.from.x())));
  }

  private static double slope(Lying on) {
    return on.fence.y() / on.fence.x();
  }

  private void figure(Board g, Lying on, Similarity paper, Box own, Box box) {
    g.outline(on.outline.transformed(paper), Shade.WHITE, Pen.EDGE);
    on.standing.ifPresent(s -> g.outline(s.transformed(paper), Shade.KEY, Pen.EDGE));
    double x = paper.apply(on.from).x();
    double top = paper.apply(new Point(0, own.maxY())).y() - BLADE;
    // Paper's y runs down.
    double slope = -slope(on);
    double low = Double.NEGATIVE_INFINITY;
    for (Point v : on.outline.transformed(paper).vertices(0.05)) {
      low = Math.max(low, v.y() - slope * (v.x() - x));
    }
    low += 0.9;
    double bottom = low + 1.2;
    g.line(x, top, x, bottom, Pen.OUTLINE);
    double x0 = Math.min(box.minX(), paper.apply(new Point(own.minX(), 0)).x() - BESIDE);
    double x1 = Math.max(box.maxX(), paper.apply(new Point(own.maxX(), 0)).x() + BESIDE);
    boolean right = x < paper.apply(own.centre()).x();
    // A steep fence ends where the picture does.
    double end = right ? x1 : x0;
    double rise = slope * (end - x);
    double room = rise < 0 ? low - box.minY() - 0.3 : box.maxY() - low - 0.3;
    fence(
        g,
        x,
        low,
        slope,
        Math.abs(rise) > room ? x + room / Math.abs(slope) * Math.signum(end - x) : end);
    if (pass.tilt().radians() == 0) {
      g.fill(
          Path.polygon(new Point(x, top), new Point(x + 1, top - 2), new Point(x - 1, top - 2)),
          Shade.BLACK);
    } else {
      // Outside of the edge lies away from the piece.
      double out = right ? -1 : 1;
      g.line(x, top, x + out * lean() * 1.6, top - 2, Pen.OUTLINE);
    }
  }

  // From the blade to the far end, and dashed what would be square to the blade.
  private static void fence(Board g, double x, double low, double slope, double end) {
    double way = Math.signum(end - x);
    double from = x + way * 1.2;
    Point far = new Point(end, low + slope * (end - x));
    g.line(new Point(from, low + slope * way * 1.2), far, Pen.OUTLINE);
    double off = far.y() - low;
    if (Math.abs(off) > 0.02) {
      g.line(from, low, end, low, new Pen(0.18, Pen.Pattern.DASHED));
      if (Math.abs(off) > 0.9) {
        double head = Math.signum(off) * 0.9;
        double at = end - way * 0.4;
        double tip = low + slope * (at - x) - Math.signum(off) * 0.35;
        g.line(at, low, at, tip - head, Pen.FINE);
        g.fill(
            Path.polygon(
                new Point(at, tip),
                new Point(at + 0.45, tip - head),
                new Point(at - 0.45, tip - head)),
            Shade.BLACK);
      }
    }
  }

  /** 1 where the blade leans out over the waste at its top, −1 where it leans in over the piece. */
  private int lean() {
    if (pass.part() == Part.SOFFIT_PIECE) {
      if (pass.edge() == EdgeName.SOFFIT) {
        return -1;
      }
      SoffitPiece s = piece.soffitPieces().get(0);
      return (left ? s.left() : s.right()).longPoint() == LongPoint.TOP ? 1 : -1;
    }
    if (pass.lay() == Lay.RETURN_DOWN) {
      return (left ? piece.left() : piece.right()).longPoint() == LongPoint.TOP ? 1 : -1;
    }
    return 1;
  }

  private Lying lying() {
    if (pass.part() == Part.SOFFIT_PIECE || pass.lay() == Lay.RETURN_DOWN) {
      return slab();
    }
    Similarity own = OwnFrame.of(piece.stone());
    boolean down = pass.lay() == Lay.FACE_DOWN;
    Similarity lie = lie();
    List<Edge> edges =
        piece
            .stone()
            .edges(
                switch (pass.edge()) {
                  case TOP -> Where.TOP;
                  case SOFFIT -> Where.SOFFIT;
                  default -> left ? Where.LEFT : Where.RIGHT;
                });
    Edge edge = edges.get(0);
    if (pass.edge() == EdgeName.TOP) {
      int n = 0;
      for (SawPass p : piece.saw()) {
        if (p == pass) {
          break;
        }
        n += p.edge() == EdgeName.TOP && p.part() == pass.part() ? 1 : 0;
      }
      List<Edge> straight = edges.stream().filter(e -> e instanceof Straight).toList();
      edge = n < straight.size() ? straight.get(n) : edge;
    }
    Point to = pass.edge() == EdgeName.TOP ? edge.to() : edges.get(edges.size() - 1).to();
    Vec across = edge.to().minus(edge.from());
    Vec along = own.apply(across);
    boolean side = pass.edge() != EdgeName.TOP && pass.edge() != EdgeName.SOFFIT;
    boolean off = side || Math.abs(along.x()) < Math.abs(along.y());
    Vec fence = off ? new Vec(1, 0) : new Vec(0, 1);
    return new Lying(
        piece.stone().outline().transformed(lie),
        down ? ReturnOutline.of(piece).map(p -> p.transformed(lie)) : Optional.empty(),
        lie.apply(edge.from()),
        lie.apply(to),
        fence);
  }

  // On its own axes; on its face, what is left from outside lies right.
  private Similarity lie() {
    Similarity own = OwnFrame.of(piece.stone());
    return pass.lay() == Lay.FACE_DOWN ? own.then(Similarity.mirrorX()) : own;
  }

  // A soffit piece, or a corner on its return with the face towards the fence; left is left.
  private Lying slab() {
    boolean corner = pass.lay() == Lay.RETURN_DOWN;
    double wide = corner ? piece.stone().bottom().mm() : piece.soffitPieces().get(0).length().mm();
    double deep = corner ? piece.leg().depth().mm() : piece.soffitPieces().get(0).depth().mm();
    Path rect = Path.rect(0, 0, wide, deep);
    Optional<Path> face =
        corner ? Optional.of(Path.rect(0, 0, wide, piece.thickness().mm())) : Optional.empty();
    if (pass.edge() == EdgeName.SOFFIT) {
      return new Lying(rect, face, new Point(0, 0), new Point(wide, 0), new Vec(0, 1));
    }
    double x = left ? 0 : wide;
    return new Lying(rect, face, new Point(x, 0), new Point(x, deep), new Vec(1, 0));
  }

  /** How high a picture is, mm. */
  static double height(TicketType type) {
    return HEIGHT * type.factor();
  }
}
