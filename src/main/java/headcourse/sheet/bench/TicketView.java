package headcourse.sheet.bench;

import headcourse.bench.Piece;
import headcourse.bench.SoffitPiece;
import headcourse.drawing.Board;
import headcourse.drawing.LabelShape;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.Pen;
import headcourse.drawing.Shade;
import headcourse.geom.Box;
import headcourse.geom.Edge;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Similarity;
import headcourse.geom.Vec;
import headcourse.sheet.FitLine;
import headcourse.sheet.OwnFrame;
import headcourse.sheet.SheetContext;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The ticket's view of the whole piece, from below and from the right, so that left- and
 * right-handed pieces can't be taken for one another.
 *
 * <p>Oblique projection: a depth d behind the face moves a point by (0.5 d, 0.36 d) to the right
 * and down. The body is two prisms, face slab and return, the second wholly behind the first; of
 * each the sides that look at the eye are painted, then its front, from back to front, which takes
 * out hidden lines.
 */
final class TicketView {
  private static final double RIGHT = 0.5;
  private static final double DOWN = 0.36;

  private final SheetContext c;
  private final Piece piece;
  private final TicketType type;

  TicketView(SheetContext c, Ticket ticket, TicketType type) {
    this.c = c;
    this.piece = ticket.piece();
    this.type = type;
  }

  void draw(Board board, Box box) {
    Path whole = piece.stone().outline();
    Similarity turn = OwnFrame.of(piece.stone());
    Path outline = whole.transformed(turn);
    Box face = outline.bounds();
    double t = piece.thickness().mm();
    double s = Math.max(t, piece.leg().depth().mm());
    double foot = 3 + type.note().height();
    double deep =
        piece.soffitPieces().stream().mapToDouble(p -> t + p.depth().mm()).max().orElse(s);
    double w = face.width() + RIGHT * Math.max(s, deep);
    double h = face.height() + DOWN * Math.max(s, deep);
    double k = Math.min((box.width() - 5) / w, (box.height() - foot - 3) / h);
    double x = box.minX() + (box.width() - w * k) / 2;
    double y = box.minY() + 1.5 + (box.height() - foot - 3 - h * k) / 2;
    Placing on = new Placing(face.minX(), face.maxY(), k, x, y);
    board.group(
        Role.FIGURE,
        "",
        c.say("ticket.view-alt", piece.mark()),
        g -> {
          if (s > t) {
            ReturnOutline.of(piece)
                .ifPresent(leg -> prism(g, on, leg.transformed(turn), t, s, Shade.KEY));
          }
          // Those behind a V are bodies of their own.
          for (SoffitPiece p : s > t ? List.<SoffitPiece>of() : piece.soffitPieces()) {
            prism(g, on, p.section().transformed(turn), t, t + p.depth().mm(), Shade.KEY);
          }
          prism(g, on, outline, 0, t, Shade.STONE);
        });
    String seen = c.say("ticket.view");
    double wide = box.width() - 4;
    if (LabelShape.width(seen, type.note()) > wide) {
      seen = c.words().each("ticket.view").get(0);
    }
    FitLine.draw(board, box.minX() + 2.2, box.maxY() - 1.8, wide, seen, type.note());
  }

  private static void prism(
      Board g, Placing on, Path outline, double from, double to, Shade front) {
    for (Edge e : outline.edges()) {
      List<Point> strip = new ArrayList<>();
      Point last = e.from();
      List<Point> seen = new ArrayList<>();
      for (Point p : e.flattened(0.3)) {
        // Counter-clockwise outlines have their outside on the right of the way.
        Vec out = p.minus(last).normal().times(-1);
        if (out.x() * RIGHT - out.y() * DOWN > 1e-9) {
          if (seen.isEmpty()) {
            seen.add(last);
          }
          seen.add(p);
        } else if (!seen.isEmpty()) {
          break;
        }
        last = p;
      }
      if (seen.isEmpty()) {
        continue;
      }
      seen.forEach(p -> strip.add(on.at(p, from)));
      Collections.reverse(seen);
      seen.forEach(p -> strip.add(on.at(p, to)));
      g.outline(Path.polygon(strip), Shade.WHITE, Pen.EDGE);
    }
    g.outline(on.path(outline, from), front, Pen.CUT);
  }

  /** Model places, and depths behind the face, to paper. */
  private record Placing(double minX, double maxY, double scale, double x, double y) {
    Point at(Point p, double depth) {
      return new Point(
          x + (p.x() - minX + RIGHT * depth) * scale, y + (maxY - p.y() + DOWN * depth) * scale);
    }

    Path path(Path model, double depth) {
      return model.transformed(
          new Similarity(
              scale,
              0,
              true,
              x - minX * scale + RIGHT * depth * scale,
              y + maxY * scale + DOWN * depth * scale));
    }
  }
}
