package headcourse.sheet.fullsize;

import headcourse.drawing.Board;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.Pen;
import headcourse.geom.Box;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.sheet.PageDraft;
import headcourse.sheet.SheetContext;
import headcourse.sheet.SheetContext.Turn;

/** A page at full size: the window for the drawing, and bars to check the print against. */
final class TilePage {
  private static final double BAR_SIDE = 9;
  private static final double BAR_FOOT = 15;
  private static final double MARK_ROOM = 4.5;
  private static final double FOUR_INCHES = 101.6;

  /** The standing bars need this much, mm. */
  private static final double LEAST_DEPTH = 120;

  private static final Pen BAR = new Pen(0.5, Pen.Pattern.SOLID);

  private TilePage() {}

  /** Where a tile lies on a page. */
  static Box window(PageDraft page) {
    Box a = page.area();
    return new Box(
        a.minX() + BAR_SIDE + MARK_ROOM,
        a.minY() + MARK_ROOM,
        a.maxX() - MARK_ROOM,
        a.maxY() - BAR_FOOT - MARK_ROOM);
  }

  /** A page off the roll, as long as a drawing of some depth needs it. */
  static PageDraft offRoll(SheetContext c, double depth, String label) {
    PageDraft trial = c.page(Turn.PORTRAIT, "", "");
    double around = trial.height() - window(trial).height();
    double height = Math.max(depth, LEAST_DEPTH) + around + 1;
    return c.page(trial.width(), height, label, c.say("fullsize.outlines"));
  }

  static Tiling.Room room(SheetContext c, Turn turn) {
    Box w = window(c.page(turn, "", ""));
    return new Tiling.Room(w.width(), w.height());
  }

  /** Both bars in both directions, and what to do with them. */
  static void bars(SheetContext c, PageDraft page) {
    Box a = page.area();
    Board b = page.board();
    b.group(
        Role.DIMENSIONS,
        "",
        "",
        g -> {
          double y = a.maxY() - 7.5;
          double x = a.minX() + BAR_SIDE + MARK_ROOM;
          bar(g, new Point(x, y), new Point(x + 100, y), "100 mm", 0);
          bar(g, new Point(x, y + 5.2), new Point(x + FOUR_INCHES, y + 5.2), "4 in", 0);
          double up = a.maxY() - BAR_FOOT - MARK_ROOM - 1;
          bar(g, new Point(a.minX() + 4, up), new Point(a.minX() + 4, up - 100), "100 mm", 90);
          bar(
              g,
              new Point(a.minX() + 9.2, up),
              new Point(a.minX() + 9.2, up - FOUR_INCHES),
              "4 in",
              90);
        });
    page.scale(c.say("fullsize.scale"));
  }

  // The text stands before the bar's start, or above a standing bar, so that no line crosses it.
  private static void bar(Board b, Point from, Point to, String text, double degrees) {
    b.line(from, to, BAR);
    boolean flat = degrees == 0;
    for (Point p : new Point[] {from, to}) {
      double dx = flat ? 0 : 1.2;
      double dy = flat ? 1.2 : 0;
      b.line(p.x() - dx, p.y() - dy, p.x() + dx, p.y() + dy, BAR);
    }
    Point at = flat ? new Point(to.x() + 2, to.y() + 0.9) : new Point(to.x() + 1, to.y() - 2);
    b.text(at, text, Lettering.NOTE, Align.START, degrees);
  }

  /** Marks outside the window's corners to cut along, where the tile has a neighbour. */
  static void cutMarks(Board b, Box w, boolean left, boolean right, boolean above, boolean below) {
    double g = 0.8;
    double l = 3;
    for (double x : new double[] {w.minX(), w.maxX()}) {
      if (x == w.minX() ? left : right) {
        b.line(x, w.minY() - g - l, x, w.minY() - g, Pen.DIMENSION);
        b.line(x, w.maxY() + g, x, w.maxY() + g + l, Pen.DIMENSION);
      }
    }
    for (double y : new double[] {w.minY(), w.maxY()}) {
      if (y == w.minY() ? above : below) {
        b.line(w.minX() - g - l, y, w.minX() - g, y, Pen.DIMENSION);
        b.line(w.maxX() + g, y, w.maxX() + g + l, y, Pen.DIMENSION);
      }
    }
    double half = Tiling.OVERLAP / 2;
    double mx = (w.minX() + w.maxX()) / 2;
    double my = (w.minY() + w.maxY()) / 2;
    if (left) {
      match(b, w.minX() + half, my);
    }
    if (right) {
      match(b, w.maxX() - half, my);
    }
    if (above) {
      match(b, mx, w.minY() + half);
    }
    if (below) {
      match(b, mx, w.maxY() - half);
    }
  }

  // A circled cross in the middle of the overlap; it lies on both tiles at the same place.
  private static void match(Board b, double x, double y) {
    b.stroke(Path.circle(new Point(x, y), 1.6), Pen.FINE);
    b.line(x - 2.6, y, x + 2.6, y, Pen.FINE);
    b.line(x, y - 2.6, x, y + 2.6, Pen.FINE);
  }
}
