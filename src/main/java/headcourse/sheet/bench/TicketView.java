package headcourse.sheet.bench;

import headcourse.bench.Piece;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.Pen;
import headcourse.drawing.Shade;
import headcourse.geom.Box;
import headcourse.geom.Edge;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.layout.FaceEdge.Where;
import headcourse.layout.Side;
import headcourse.sheet.Board;
import headcourse.sheet.FitLine;
import headcourse.sheet.SheetContext;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The ticket's view of the whole piece, from below and from the right, so that left- and
 * right-handed pieces can't be taken for one another.
 *
 * <p>Oblique projection: a depth d behind the face moves a point by (0.5 d, 0.36 d) to the right
 * and down. Planes are painted from back to front with white, which takes out hidden lines.
 */
final class TicketView {
  private static final double RIGHT = 0.5;
  private static final double DOWN = 0.36;

  /** A smaller picture tells nothing, mm. */
  private static final double LEAST = 6;

  private final SheetContext c;
  private final Piece piece;

  TicketView(SheetContext c, Ticket ticket) {
    this.c = c;
    this.piece = ticket.piece();
  }

  void draw(Board board, Box box) {
    Box face = piece.stone().outline().bounds();
    double t = piece.thickness().mm();
    double s = Math.max(t, piece.returnDepth().mm());
    double w = face.width() + RIGHT * s;
    double h = face.height() + DOWN * s;
    double k = Math.min((box.width() - 6) / w, (box.height() - 8) / h);
    if (k * w < LEAST) {
      return;
    }
    double x = box.minX() + (box.width() - w * k) / 2;
    double y = box.minY() + 1.5 + (box.height() - 8 - h * k) / 2;
    Placing on = new Placing(face.minX(), face.maxY(), k, x, y);
    board.group(
        Role.FIGURE,
        "",
        c.say("ticket.view-alt", piece.mark()),
        g -> {
          if (s > t) {
            returnLeg(g, on, t, s);
          }
          run(g, on, piece.stone().edges(Where.SOFFIT), 0, t);
          run(g, on, piece.stone().edges(Where.RIGHT), 0, t);
          g.outline(on.path(piece.stone().outline(), 0), Shade.STONE, Pen.CUT);
        });
    FitLine.draw(
        board,
        box.minX() + 2.2,
        box.maxY() - 1.6,
        box.width() - 4,
        c.say("ticket.view"),
        Lettering.NOTE);
  }

  // The strip swept by edges between two depths.
  private static void run(Board g, Placing on, List<Edge> edges, double from, double to) {
    if (edges.isEmpty()) {
      return;
    }
    List<Point> front = new ArrayList<>();
    List<Point> back = new ArrayList<>();
    front.add(edges.get(0).from());
    for (Edge e : edges) {
      front.addAll(e.flattened(0.2));
    }
    front.forEach(p -> back.add(on.at(p, to)));
    Collections.reverse(back);
    List<Point> all = new ArrayList<>();
    front.forEach(p -> all.add(on.at(p, from)));
    all.addAll(back);
    g.outline(Path.polygon(all), Shade.WHITE, Pen.EDGE);
  }

  // What the return shows from below and from the right: its end, then its underside.
  private void returnLeg(Board g, Placing on, double t, double s) {
    List<Edge> soffit = piece.stone().edges(Where.SOFFIT);
    Point a = soffit.get(0).from();
    Point b = soffit.get(soffit.size() - 1).to();
    double left = a.x();
    double right = b.x();
    if (piece.relief().isPositive()) {
      if (piece.stone().side() == Side.LEFT) {
        left = piece.seatFrom();
      } else {
        right = piece.seatFrom();
      }
    }
    boolean cut = right < b.x() - 1e-6;
    double top = rakeShift(t);
    Point low = cut ? new Point(right, lift(a, b, right)) : b;
    Point high = new Point(low.x() + (cut ? 0 : top), low.y() + t);
    g.outline(
        Path.polygon(on.at(low, t), on.at(low, s), on.at(high, s), on.at(high, t)),
        Shade.WHITE,
        Pen.EDGE);
    Point from = new Point(left, lift(a, b, left));
    g.outline(
        Path.polygon(on.at(from, t), on.at(low, t), on.at(low, s), on.at(from, s)),
        Shade.KEY,
        Pen.EDGE);
  }

  // The soffit taken as its chord; the curve's height over it is too small to show here.
  private static double lift(Point a, Point b, double x) {
    double run = b.x() - a.x();
    return run <= 0 ? a.y() : a.y() + (b.y() - a.y()) * (x - a.x()) / run;
  }

  private double rakeShift(double height) {
    List<Edge> right = piece.stone().edges(Where.RIGHT);
    if (right.isEmpty()) {
      return 0;
    }
    Point low = right.get(0).from();
    Point high = right.get(right.size() - 1).to();
    double rise = high.y() - low.y();
    return rise <= 0 ? 0 : (high.x() - low.x()) * height / rise;
  }

  /** Model places, and depths behind the face, to paper. */
  private record Placing(double minX, double maxY, double scale, double x, double y) {
    Point at(Point p, double depth) {
      return new Point(
          x + (p.x() - minX + RIGHT * depth) * scale, y + (maxY - p.y() + DOWN * depth) * scale);
    }

    Path path(Path model, double depth) {
      return model.transformed(
          new headcourse.geom.Similarity(
              scale,
              0,
              true,
              x - minX * scale + RIGHT * depth * scale,
              y + maxY * scale + DOWN * depth * scale));
    }
  }
}
