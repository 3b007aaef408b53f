package headcourse.sheet;

import headcourse.drawing.Board;
import headcourse.drawing.Pen;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Vec;

/** The thin line with a zigzag where a drawing stops and the thing drawn goes on (ISO 128). */
public final class BreakLine {
  /** How far it runs past the edges on both sides, mm. */
  public static final double PAST = 1.5;

  /** How far its zigzag stands out to either side, mm. */
  public static final double OUT = 1.8;

  private BreakLine() {}

  /** Draws it from an edge to the other, on paper. */
  public static void draw(Board board, Point from, Point to) {
    Vec along = to.minus(from).unit();
    Vec out = along.normal().times(OUT);
    Point middle = from.towards(to, 0.5);
    board.stroke(
        Path.through(
            from.plus(along.times(-PAST)),
            middle.plus(along.times(-1.6)),
            middle.plus(along.times(-0.8)).plus(out),
            middle.plus(along.times(0.8)).plus(out.times(-1)),
            middle.plus(along.times(1.6)),
            to.plus(along.times(PAST))),
        Pen.FINE);
  }
}
