package headcourse.sheet.bench;

import headcourse.bench.Piece;
import headcourse.bench.SawPass.Lay;
import headcourse.bench.SawPass.Part;
import headcourse.drawing.Board;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.Pen;
import headcourse.drawing.Shade;
import headcourse.geom.Box;
import headcourse.geom.Path;
import headcourse.geom.Point;

/**
 * How a piece lies on the saw table, seen from its end: the table's line, the piece on it, the leg
 * that is cut in grey with the blade above it; the heavy line is the face.
 */
final class LayPicture {
  private LayPicture() {}

  static void draw(Board board, Box box, Piece piece, Lay lay, Part part) {
    double t = piece.thickness().mm();
    double s = Math.max(t, piece.returnDepth().mm());
    // Tall faces are shown short: the lie is told by which leg lies down, not by its length.
    double most = lay == Lay.RETURN_DOWN ? Math.max(1.1 * s, 2.5 * t) : Math.max(2 * s, 4 * t);
    double h = Math.min(piece.stone().height().mm(), most);
    boolean legs = s > t && part != Part.SOFFIT_PIECE && lay != Lay.FACE_UP;
    double wide = lay == Lay.RETURN_DOWN ? s : part == Part.SOFFIT_PIECE ? s : h;
    double high = lay == Lay.RETURN_DOWN ? h : legs ? s : t;
    double blade = 3.2;
    double k = Math.min((box.width() - 2) / wide, (box.height() - 1 - blade) / high);
    double x0 = box.centre().x() - wide * k / 2;
    double y0 = box.maxY() - 1;
    board.group(
        Role.FIGURE,
        "",
        "",
        g -> {
          boolean whole = part == Part.BOTH_LEGS || part == Part.SOFFIT_PIECE || !legs;
          Shade face = whole || part == Part.FACE_LEG ? Shade.KEY : Shade.WHITE;
          Shade back = whole || part == Part.RETURN_LEG ? Shade.KEY : Shade.WHITE;
          boolean down = lay == Lay.RETURN_DOWN;
          // The face leg lies or stands; the other leg rises or lies at its foot.
          Path first =
              down
                  ? Path.rect(x0, y0 - h * k, t * k, h * k)
                  : Path.rect(x0, y0 - t * k, wide * k, t * k);
          g.outline(first, face, Pen.EDGE);
          if (legs) {
            Path second =
                down
                    ? Path.rect(x0 + t * k, y0 - t * k, (s - t) * k, t * k)
                    : Path.rect(x0, y0 - s * k, t * k, (s - t) * k);
            g.outline(second, back, Pen.EDGE);
          }
          if (down) {
            g.line(x0, y0 - h * k, x0, y0, Pen.OUTLINE);
          } else {
            double y = lay == Lay.FACE_UP ? y0 - t * k : y0;
            g.line(x0, y, x0 + wide * k, y, Pen.OUTLINE);
          }
          g.line(box.minX(), y0 + 0.6, box.maxX(), y0 + 0.6, Pen.CUT);
          boolean onReturn = part == Part.RETURN_LEG && legs;
          double x = onReturn != down ? x0 + t * k / 2 : x0 + wide * k * 0.62;
          double top = onReturn != down ? y0 - high * k : y0 - t * k;
          if (onReturn && down || !onReturn && !down) {
            top = y0 - t * k;
            x = x0 + wide * k * 0.62;
          }
          g.fill(
              Path.polygon(
                  new Point(x, top - 0.5),
                  new Point(x + 1.2, top - 2.8),
                  new Point(x - 1.2, top - 2.8)),
              Shade.BLACK);
        });
  }
}
