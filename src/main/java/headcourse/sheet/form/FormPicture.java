package headcourse.sheet.form;

import headcourse.drawing.Board;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Pen;
import headcourse.drawing.Shade;
import headcourse.geom.Path;
import headcourse.geom.Point;

/**
 * Where to measure: an opening seen from outside, its soffit from below, a cut through its head.
 */
final class FormPicture {
  /** Height that it takes, mm. */
  static final double HEIGHT = 70;

  private static final Lettering NUMBER = new Lettering(2.5, true);
  private static final double RADIUS = 2.9;
  private static final double TICK = 1;

  private final Board board;
  private final double left;
  private final double top;

  FormPicture(Board board, double left, double top) {
    this.board = board;
    this.left = left;
    this.top = top;
  }

  void draw(double width) {
    outside();
    below(width - 62);
    cut(width - 62);
  }

  /** Seen from outside: left is left as you face the wall. */
  private void outside() {
    double head = 14;
    double foot = 54;
    double l = 34;
    double r = 86;
    for (double y : new double[] {6, 14, 22, 30, 38, 46, 54}) {
      line(8, y, l, y, Pen.FINE);
      line(r, y, 112, y, Pen.FINE);
    }
    line(l, 6, r, 6, Pen.FINE);
    rect(l, head, r - l, foot - head, Pen.CUT);
    line(4, 62, 116, 62, Pen.EDGE);
    line(8, 4, 8, 62, Pen.HIDDEN);
    line(112, 4, 112, 62, Pen.HIDDEN);
    line((l + r) / 2, 8, (l + r) / 2, 60, Pen.CENTRE);
    across(l, r, head + 7, 11, l + 31);
    across(l, r, 31, 12, l + 12);
    across(l, r, foot - 4, 13, l + 31);
    parted(l, head, r, foot, 14, 0.8, Pen.HIDDEN);
    parted(r, head, l, foot, 14, 0.8, Pen.HIDDEN);
    number(15, l + 4, head - 4);
    number(16, (l + r) / 2 + 4.5, head - 4);
    number(17, r - 4, head - 4);
    number(18, l + 4, 27);
    number(19, r - 4, 27);
    number(20, (l + r) / 2 + 4.5, 58);
    across(8, l, 42, 9, 18);
    across(r, 112, 42, 10, 100);
    up(105, head, foot, 5, 34);
    up(21, foot, 62, 6, 58);
    up(100, foot, 62, 7, 58);
    up(14, head, 62, 4, 26);
    across(4, (l + r) / 2, 66.5, 3, 30);
    number(2, 24, 10);
  }

  /** The soffit from below: how deep the jambs are. */
  private void below(double x) {
    rect(x + 6, 6, 6, 16, Pen.CUT);
    rect(x + 46, 6, 6, 16, Pen.CUT);
    line(x + 12, 6, x + 46, 6, Pen.HIDDEN);
    line(x + 12, 22, x + 46, 22, Pen.EDGE);
    up(x + 16, 6, 22, 8, 14);
    up(x + 42, 6, 22, 8, 14);
  }

  /** A cut through the head: what stands behind the stone, from the soffit line up. */
  private void cut(double x) {
    rect(x + 12, 28, 4, 26, Pen.CUT);
    rect(x + 16, 28, 3, 28, Pen.FINE);
    rect(x + 19, 44, 10, 12, Pen.CUT);
    rect(x + 19, 28, 10, 16, Pen.EDGE);
    line(x + 19, 56, x + 29, 44, Pen.FINE);
    line(x + 8, 56, x + 34, 56, Pen.CENTRE);
    up(x + 36, 28, 44, 1, 36);
    up(x + 36, 44, 56, 1, 50);
  }

  private void line(double x1, double y1, double x2, double y2, Pen pen) {
    board.line(left + x1, top + y1, left + x2, top + y2, pen);
  }

  private void rect(double x, double y, double width, double height, Pen pen) {
    board.stroke(Path.rect(left + x, top + y, width, height), pen);
  }

  private void across(double from, double to, double y, int number, double at) {
    parted(from, y, to, y, number, (at - from) / (to - from), Pen.DIMENSION);
    line(from, y - TICK, from, y + TICK, Pen.DIMENSION);
    line(to, y - TICK, to, y + TICK, Pen.DIMENSION);
  }

  private void up(double x, double from, double to, int number, double at) {
    parted(x, from, x, to, number, (at - from) / (to - from), Pen.DIMENSION);
    line(x - TICK, from, x + TICK, from, Pen.DIMENSION);
    line(x - TICK, to, x + TICK, to, Pen.DIMENSION);
  }

  /** A line with a number on it, at a share of its length. */
  private void parted(double x1, double y1, double x2, double y2, int number, double at, Pen pen) {
    double gap = RADIUS / Math.hypot(x2 - x1, y2 - y1);
    double dx = x2 - x1;
    double dy = y2 - y1;
    line(x1, y1, x1 + (at - gap) * dx, y1 + (at - gap) * dy, pen);
    line(x1 + (at + gap) * dx, y1 + (at + gap) * dy, x2, y2, pen);
    number(number, x1 + at * dx, y1 + at * dy);
  }

  private void number(int number, double x, double y) {
    circled(board, number, left + x, top + y);
  }

  /** A number in a circle, on white. */
  static void circled(Board board, int number, double x, double y) {
    board.outline(Path.circle(new Point(x, y), RADIUS), Shade.WHITE, Pen.DIMENSION);
    board.text(x, y + NUMBER.height() * 0.36, Integer.toString(number), NUMBER, Align.MIDDLE);
  }
}
