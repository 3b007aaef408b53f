package headcourse.drawing;

import headcourse.drawing.Mark.Align;
import headcourse.geom.Box;
import headcourse.geom.Overlap;
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
  private final Box within;
  private final Box object;

  /** Dimensions on a board. */
  public Dimensions(Board board) {
    this(board, new Box(-1e6, -1e6, 1e6, 1e6));
  }

  /** Dimensions on a board whose texts that move out stay within a panel. */
  public Dimensions(Board board, Box within) {
    this(board, within, null);
  }

  /** The same with the box of what is dimensioned, which texts that move out keep clear of. */
  public Dimensions(Board board, Box within, Box object) {
    this.board = board;
    this.within = within;
    this.object = object;
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
    all(List.of(new Size(a, b, offset, text, lettering)));
  }

  /**
   * A distance to be dimensioned; see {@link #aligned}.
   *
   * @param a one point on paper
   * @param b the other
   * @param offset of the dimension line to the left of the way from a to b, negative to the right
   * @param text what it says
   * @param lettering how
   */
  public record Size(Point a, Point b, double offset, String text, Lettering lettering) {}

  /**
   * A distance laid out on paper.
   *
   * @param along from a to b, of length one
   * @param out to the left of that, as seen
   * @param p where the dimension line begins
   * @param q where it ends
   * @param text how much paper the text takes
   */
  private record Laid(Size size, Vec along, Vec out, Point p, Point q, LabelSize text) {
    static Laid of(Size s) {
      Vec along = s.b.minus(s.a).unit();
      // Paper's y runs down, so "left as seen" is the negative normal.
      Vec out = along.normal().times(-1);
      Point p = s.a.plus(out.times(s.offset));
      Point q = s.b.plus(out.times(s.offset));
      return new Laid(s, along, out, p, q, LabelSize.of(s.text, s.lettering));
    }

    boolean fits() {
      return text.width() + TIGHT <= size.a.distance(size.b);
    }

    Mark.Label label(Point at, double degrees, Align align) {
      return new Mark.Label(at, size.text, size.lettering, align, degrees);
    }

    List<Point> corners(Mark.Label label) {
      return text.corners(label.at(), label.align(), label.degrees());
    }
  }

  /**
   * Several distances of one object: all their lines first, then the texts, where none of them is.
   */
  public void all(List<Size> sizes) {
    List<Laid> all = sizes.stream().map(Laid::of).toList();
    for (Laid l : all) {
      Size s = l.size;
      Vec along = l.along;
      Vec out = l.out;
      double sign = Math.signum(s.offset);
      if (Math.abs(s.offset) > GAP) {
        board.line(s.a.plus(out.times(sign * GAP)), l.p.plus(out.times(sign * PAST)), Pen.FINE);
        board.line(s.b.plus(out.times(sign * GAP)), l.q.plus(out.times(sign * PAST)), Pen.FINE);
      }
      tick(l.p, along);
      tick(l.q, along);
      board.line(l.p.plus(along.times(-TICK)), l.q.plus(along.times(TICK)), Pen.DIMENSION);
    }
    all.stream().filter(Laid::fits).forEach(this::over);
    all.stream().filter(l -> !l.fits()).forEach(this::beside);
  }

  // The text over its line; under it where the object leaves no room above, or something is there.
  private void over(Laid s) {
    double degrees = reading(s.along);
    Vec up = up(degrees);
    Point mid = s.p.towards(s.q, 0.5);
    double offset = s.size.offset;
    double above = s.text.above();
    double needed = above + 2 * AIR + GAP;
    double lift = AIR + s.text.below();
    Mark.Label on = s.label(mid.plus(up.times(lift)), degrees, Align.MIDDLE);
    Mark.Label under = s.label(mid.plus(up.times(-AIR - above)), degrees, Align.MIDDLE);
    boolean tight = up.dot(s.out.times(Math.signum(offset))) < 0 && Math.abs(offset) < needed;
    List<Mark.Label> tries = tight ? List.of(under, on) : List.of(on, under);
    if (!board.firstFree(tries, 0.1)) {
      beside(s);
    }
  }

  private static Vec up(double degrees) {
    double rad = Math.toRadians(degrees);
    return new Vec(-Math.sin(rad), -Math.cos(rad));
  }

  // Too narrow for its text: the line runs on past one end with the text over the run, or the text
  // stands upright beside the line, farther and farther out; the first place that is free of ink.
  private void beside(Laid s) {
    double width = s.text.width();
    double degrees = reading(s.along);
    double rad = Math.toRadians(degrees);
    Vec read = new Vec(Math.cos(rad), -Math.sin(rad));
    Point end = read.dot(s.q.minus(s.p)) >= 0 ? s.q : s.p;
    Point start = end.equals(s.q) ? s.p : s.q;
    Vec up = up(degrees).times(AIR + s.text.below());
    Mark.Label past = s.label(end.plus(read.times(2.6)).plus(up), degrees, Align.START);
    Mark.Label before = s.label(start.plus(read.times(-2.6)).plus(up), degrees, Align.END);
    Point pastEnd = end.plus(read.times(width + 3.4));
    Point beforeEnd = start.plus(read.times(-width - 3.4));
    if (free(s.corners(past)) && free(end.plus(read.times(1.6)), pastEnd)) {
      board.line(end, pastEnd, Pen.DIMENSION);
      board.add(past);
      return;
    }
    if (free(s.corners(before)) && free(start.plus(read.times(-1.6)), beforeEnd)) {
      board.line(start, beforeEnd, Pen.DIMENSION);
      board.add(before);
      return;
    }
    Vec out = s.out.times(Math.signum(s.size.offset));
    Align align = out.x() < -0.2 ? Align.END : out.x() > 0.2 ? Align.START : Align.MIDDLE;
    double half = s.text.above() / 2;
    Point mid = s.p.towards(s.q, 0.5);
    for (double far = 2.2; far < 60; far += 1) {
      for (double aside : new double[] {0, 0.5, -0.5, 1, -1, 1.5, -1.5, 2, -2}) {
        Point at = mid.plus(out.times(far)).plus(s.along.times(aside * width));
        Mark.Label l = s.label(at.plus(new Vec(0, half)), 0, align);
        double reach = Math.max(1e-6, mid.distance(at));
        double down = Math.abs(at.y() - mid.y()) / reach;
        double shorter = 1.2 + down * (half + s.text.below());
        Point leader = mid.towards(at, Math.max(0, 1 - shorter / reach));
        boolean near = far < 3 && aside == 0;
        List<Point> corners = s.corners(l);
        boolean apart = near || Overlap.depth(corners, mid, leader) < -0.3;
        if (apart && free(corners) && (near || free(mid.towards(leader, 0.02), leader))) {
          if (!near && align != Align.MIDDLE) {
            board.line(mid, leader, Pen.FINE);
          }
          board.add(l);
          return;
        }
      }
    }
    // Along the line, beyond where the extension lines end.
    boolean over = up(degrees).dot(out) > 0;
    double lift = PAST + 0.6 + (over ? s.text.below() : s.text.above());
    Mark.Label along = s.label(mid.plus(out.times(lift)), degrees, Align.MIDDLE);
    if (free(s.corners(along))) {
      board.add(along);
      return;
    }
    Size size = s.size;
    boolean smallest = size.lettering.height() <= Lettering.LEAST;
    if (around(s, smallest ? 60 : 16)) {
      return;
    }
    if (!smallest) {
      Lettering least = new Lettering(Lettering.LEAST, size.lettering.bold());
      beside(Laid.of(new Size(size.a, size.b, size.offset, size.text, least)));
      return;
    }
    board.add(past);
  }

  // Anywhere beyond the line or past its ends, level, with a leader that crosses no text.
  private boolean around(Laid s, double most) {
    Vec out = s.out.times(Math.signum(s.size.offset));
    Point mid = s.p.towards(s.q, 0.5);
    Vec half = new Vec(0, (s.text.above() - s.text.below()) / 2);
    for (double far = 3; far < most; far++) {
      for (int turn = 0; turn < 360; turn += 15) {
        double rad = Math.toRadians(turn);
        Point middle = mid.plus(new Vec(Math.cos(rad), Math.sin(rad)).times(far));
        Mark.Label l = s.label(middle.plus(half), 0, Align.MIDDLE);
        Box box = Box.around(s.corners(l)).grown(0.6);
        Point end =
            new Point(
                Math.max(box.minX(), Math.min(box.maxX(), mid.x())),
                Math.max(box.minY(), Math.min(box.maxY(), mid.y())));
        List<Point> corners = s.corners(l);
        boolean beyond =
            object != null && !object.overlaps(box)
                || corners.stream().allMatch(v -> out.dot(v.minus(mid)) > 0.3)
                || corners.stream().allMatch(v -> s.along.dot(v.minus(s.q)) > 1)
                || corners.stream().allMatch(v -> s.along.dot(v.minus(s.p)) < -1);
        if (beyond
            && end.distance(mid) > 1
            && free(s.corners(l))
            && free(mid.towards(end, 0.02), end)) {
          board.line(mid, end, Pen.FINE);
          board.add(l);
          return true;
        }
      }
    }
    return false;
  }

  /** Whether a text stands between ticks so far apart, mm. */
  public static boolean fits(String text, Lettering lettering, double room) {
    return LabelShape.width(text, lettering) + TIGHT <= room;
  }

  /** How far an aligned text runs past the upper, or right, end of so short a dimension, mm. */
  public static double overshoot(String text, Lettering lettering, double room) {
    return fits(text, lettering, room) ? 0 : LabelShape.width(text, lettering) + 4;
  }

  private boolean free(List<Point> corners) {
    return within.contains(Box.around(corners)) && board.ink().free(corners, 0.3);
  }

  // Whether a line from a place to another crosses no text.
  private boolean free(Point from, Point to) {
    if (from.distance(to) < 0.1) {
      return true;
    }
    List<Point[]> clear = board.ink().clearOfText(from, to, 0.2);
    return clear.size() == 1
        && clear.get(0)[0].distance(from) < 1e-9
        && clear.get(0)[1].distance(to) < 1e-9;
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
    double row = row(lettering);
    double used = PAST;
    for (int i = 0; i < texts.size(); i++) {
      String text = texts.get(i);
      double mid = (xs[i] + xs[i + 1]) / 2;
      if (text.isEmpty()) {
        continue;
      }
      double width = LabelShape.width(text, lettering);
      if (width + 2.4 <= xs[i + 1] - xs[i]) {
        label(new Point(mid, y), 0, text, lettering, Align.MIDDLE);
        continue;
      }
      used = Math.max(used, out(mid, y, sign, row, text, lettering));
    }
    return used;
  }

  private static double row(Lettering lettering) {
    return lettering.height() * 1.25 + AIR;
  }

  /** How much height under its line a chain takes where texts stand there in one row, mm. */
  public static double under(Lettering lettering) {
    return PAST + row(lettering) * 1.5 + 0.8;
  }

  // Tries rows farther and farther out, straight or to either side, until one is free of ink.
  private double out(
      double mid, double y, double sign, double row, String text, Lettering lettering) {
    LabelSize size = LabelSize.of(text, lettering);
    for (int r = 1; r < 40; r++) {
      double edge = y + sign * (PAST + r * row * 0.5 + 0.8);
      double base = sign > 0 ? edge + size.above() : edge - size.below();
      for (double shift : new double[] {0, 0.5, -0.5, 1, -1, 1.5, -1.5}) {
        Mark.Label l =
            new Mark.Label(
                new Point(mid + shift * size.width(), base), text, lettering, Align.MIDDLE, 0);
        if (board.ink().free(size.corners(l.at(), l.align(), 0), 0.6)
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
