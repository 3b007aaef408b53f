package headcourse.sheet;

import headcourse.drawing.LabelShape;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Pen;
import headcourse.geom.Point;
import headcourse.geom.Vec;
import java.util.List;

/**
 * Dimension lines with ticks, text above the line, readable from below or from the right. Text that
 * is too wide for its place moves out with a leader.
 */
public final class Dimensions {
  /** Air between a text and the line under it, mm. */
  static final double AIR = 0.9;

  /** Air between an object and its extension line, mm. */
  static final double GAP = 1.2;

  /** How far an extension line runs past the dimension line, mm. */
  static final double PAST = 1.5;

  private static final double TICK = 1.1;

  /** What a text needs beyond its own width to stand between two ticks, mm. */
  private static final double TIGHT = 2.8;

  private final Board board;

  /** Dimensions on a board. */
  public Dimensions(Board board) {
    this.board = board;
  }

  /**
   * Dimensions the distance of two points along a direction.
   *
   * @param a one point on paper
   * @param b the other
   * @param offset how far the dimension line lies to the left of the way from a to b, as seen on
   *     paper; negative to the right
   * @param text what it says
   * @param lettering how
   */
  public void aligned(Point a, Point b, double offset, String text, Lettering lettering) {
    Vec along = b.minus(a).unit();
    // Paper's y runs down, so "left as seen" is the negative normal.
    Vec out = along.normal().times(-1);
    Point p = a.plus(out.times(offset));
    Point q = b.plus(out.times(offset));
    double sign = Math.signum(offset);
    if (Math.abs(offset) > GAP) {
      board.line(a.plus(out.times(sign * GAP)), p.plus(out.times(sign * PAST)), Pen.FINE);
      board.line(b.plus(out.times(sign * GAP)), q.plus(out.times(sign * PAST)), Pen.FINE);
    }
    double room = p.distance(q);
    double width = LabelShape.width(text, lettering);
    double degrees = reading(along);
    boolean fits = width + TIGHT <= room;
    if (fits) {
      dimensionLine(p, q);
      Point mid = p.towards(q, 0.5);
      double rad = Math.toRadians(degrees);
      Vec up = new Vec(-Math.sin(rad), -Math.cos(rad));
      double needed = LabelShape.above(text, lettering) + 2 * AIR + GAP;
      if (up.dot(out.times(sign)) < 0 && Math.abs(offset) < needed) {
        // No room between the object and the line: under the line as it is read.
        double drop = AIR + LabelShape.above(text, lettering);
        board.text(mid.plus(up.times(-drop)), text, lettering, Align.MIDDLE, degrees);
      } else {
        label(mid, degrees, text, lettering, Align.MIDDLE);
      }
      return;
    }
    tick(p, along);
    tick(q, along);
    board.line(p.plus(along.times(-TICK)), q.plus(along.times(TICK)), Pen.DIMENSION);
    beside(p, q, out.times(sign), text, lettering);
  }

  // Too narrow for its text: the line runs on past one end with the text over the run, or the text
  // stands upright beside the line; the first place that is free of ink.
  private void beside(Point p, Point q, Vec out, String text, Lettering lettering) {
    double width = LabelShape.width(text, lettering);
    Vec along = q.minus(p).unit();
    double degrees = reading(along);
    double rad = Math.toRadians(degrees);
    Vec read = new Vec(Math.cos(rad), -Math.sin(rad));
    Point end = read.dot(q.minus(p)) >= 0 ? q : p;
    Point start = end == q ? p : q;
    double lift = AIR + LabelShape.below(text, lettering);
    Vec up = new Vec(-Math.sin(rad) * lift, -Math.cos(rad) * lift);
    Mark.Label past =
        new Mark.Label(end.plus(read.times(2)).plus(up), text, lettering, Align.START, degrees);
    if (board.ink().free(LabelShape.corners(past), 0.3)) {
      board.line(end, end.plus(read.times(width + 3)), Pen.DIMENSION);
      board.add(past);
      return;
    }
    Mark.Label before =
        new Mark.Label(start.plus(read.times(-2)).plus(up), text, lettering, Align.END, degrees);
    if (board.ink().free(LabelShape.corners(before), 0.3)) {
      board.line(start, start.plus(read.times(-width - 3)), Pen.DIMENSION);
      board.add(before);
      return;
    }
    Align align = out.x() < -0.2 ? Align.END : out.x() > 0.2 ? Align.START : Align.MIDDLE;
    double half = LabelShape.above(text, lettering) / 2;
    for (double far = 2.2; far < 40; far += 1.5) {
      Point at = p.towards(q, 0.5).plus(out.times(far));
      Mark.Label label = new Mark.Label(at.plus(new Vec(0, half)), text, lettering, align, 0);
      if (board.ink().free(LabelShape.corners(label), 0.3)) {
        board.add(label);
        return;
      }
    }
    board.add(past);
  }

  /** Whether a text stands between ticks so far apart, mm. */
  public static boolean fits(String text, Lettering lettering, double room) {
    return LabelShape.width(text, lettering) + TIGHT <= room;
  }

  /** How far an aligned text runs past the upper, or right, end of so short a dimension, mm. */
  public static double overshoot(String text, Lettering lettering, double room) {
    return fits(text, lettering, room) ? 0 : LabelShape.width(text, lettering) + 4;
  }

  /**
   * A chain of horizontal dimensions.
   *
   * @param xs ascending places on paper, one more than texts
   * @param objectY where the extension lines start
   * @param y where the dimension line lies
   * @param texts one for each gap
   * @param lettering how
   * @return how much height beyond {@code y} the chain takes, away from the object
   */
  public double chain(
      double[] xs, double objectY, double y, List<String> texts, Lettering lettering) {
    double sign = Math.signum(y - objectY);
    for (double x : xs) {
      board.line(x, objectY + sign * GAP, x, y + sign * PAST, Pen.FINE);
      tick(new Point(x, y), new Vec(1, 0));
    }
    board.line(xs[0] - TICK, y, xs[xs.length - 1] + TICK, y, Pen.DIMENSION);
    double row = lettering.height() * 1.25 + AIR;
    double used = PAST;
    for (int i = 0; i < texts.size(); i++) {
      String text = texts.get(i);
      double mid = (xs[i] + xs[i + 1]) / 2;
      if (text.isEmpty()) {
        continue;
      }
      double width = LabelShape.width(text, lettering);
      if (width + TIGHT <= xs[i + 1] - xs[i]) {
        label(new Point(mid, y), 0, text, lettering, Align.MIDDLE);
        continue;
      }
      used = Math.max(used, out(mid, y, sign, row, text, lettering));
    }
    return used;
  }

  // Tries rows farther and farther out, straight or to either side, until one is free of ink.
  private double out(
      double mid, double y, double sign, double row, String text, Lettering lettering) {
    double width = LabelShape.width(text, lettering);
    double below = LabelShape.below(text, lettering);
    double above = LabelShape.above(text, lettering);
    for (int r = 1; r < 40; r++) {
      double edge = y + sign * (PAST + r * row * 0.5 + 0.8);
      double base = sign > 0 ? edge + above : edge - below;
      for (double shift : new double[] {0, 0.5, -0.5, 1, -1, 1.5, -1.5}) {
        Mark.Label l =
            new Mark.Label(new Point(mid + shift * width, base), text, lettering, Align.MIDDLE, 0);
        if (board.ink().free(LabelShape.corners(l), 0.6)
            && board.ink().free(leader(mid, y + sign * 0.5, l.at().x(), edge - sign * 0.8), 0.05)) {
          board.line(mid, y, l.at().x(), edge - sign * 0.6, Pen.FINE);
          board.add(l);
          return Math.abs(edge - y) + row;
        }
      }
    }
    throw new IllegalStateException("no room on the sheet for " + text);
  }

  private static List<Point> leader(double x1, double y1, double x2, double y2) {
    double e = 0.05;
    return List.of(
        new Point(x1 - e, y1), new Point(x1 + e, y1), new Point(x2 + e, y2), new Point(x2 - e, y2));
  }

  private void dimensionLine(Point p, Point q) {
    Vec along = q.minus(p).unit();
    board.line(p.plus(along.times(-TICK)), q.plus(along.times(TICK)), Pen.DIMENSION);
    tick(p, along);
    tick(q, along);
  }

  private void tick(Point at, Vec along) {
    Vec slash = along.plus(along.normal().times(-1)).unit().times(TICK);
    board.line(at.plus(slash.times(-1)), at.plus(slash), new Pen(0.5, Pen.Pattern.SOLID));
  }

  private void label(Point on, double degrees, String text, Lettering lettering, Align align) {
    double rad = Math.toRadians(degrees);
    double lift = AIR + LabelShape.below(text, lettering);
    board.text(
        new Point(on.x() - Math.sin(rad) * lift, on.y() - Math.cos(rad) * lift),
        text,
        lettering,
        align,
        degrees);
  }

  /**
   * The turn that reads from below or from the right: −75° to 105°, so that edges raked a little
   * either way off plumb are lettered on the same side.
   */
  static double reading(Vec along) {
    double d = Math.toDegrees(Math.atan2(-along.y(), along.x()));
    while (d > 105) {
      d -= 180;
    }
    while (d <= -75) {
      d += 180;
    }
    return Math.abs(d) < 1e-9 ? 0 : d;
  }
}
