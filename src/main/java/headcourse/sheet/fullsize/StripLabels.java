package headcourse.sheet.fullsize;

import headcourse.drawing.Board;
import headcourse.drawing.LabelShape;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Pen;
import headcourse.drawing.Shade;
import headcourse.geom.Box;
import headcourse.geom.Path;
import headcourse.geom.Point;
import java.util.ArrayList;
import java.util.List;

/** Where figures and marks stand on a part of a strip. */
final class StripLabels {
  /** How far a mark may stand from a stone that it has no room on, mm. */
  private static final double FAR = 80;

  private static final double STEP = 1;

  /** What of a leader's end may lie on a line, mm: at the springing stones stand on the jamb's. */
  private static final double COVERED = 0.9;

  private StripLabels() {}

  /** Under its tick, or beside it, or smaller; at the end of a part on the side that is left. */
  static List<Mark.Label> figures(
      StripSheets.Tick t, double x, double y, double left, double right) {
    List<Mark.Label> tries = new ArrayList<>();
    for (Lettering l : List.of(StripSheets.MARK, StripSheets.SMALL)) {
      double half = LabelShape.width(t.text(), l) / 2;
      double below = LabelShape.below(t.text(), l);
      double under =
          t.on() == StripSheets.On.TOP
              ? y + StripSheets.TICK + 1 + LabelShape.above(t.text(), l)
              : y + StripSheets.BAND - StripSheets.TICK - 0.7 - below;
      double beside =
          t.on() == StripSheets.On.TOP
              ? y + 0.5 + LabelShape.above(t.text(), l)
              : y + StripSheets.BAND - 0.4 - below;
      double middle = y + (StripSheets.BAND + l.height()) / 2;
      List<Double> rows = t.on() == StripSheets.On.BOTH ? List.of(middle) : List.of(under, beside);
      for (double low : rows) {
        for (double aside : new double[] {0, half + 0.8, -half - 0.8}) {
          double at = x + aside;
          boolean clear = low == under && t.on() != StripSheets.On.BOTH || aside != 0;
          if (clear && at - half > left + 0.5 && at + half < right - 0.5) {
            tries.add(new Mark.Label(new Point(at, low), t.text(), l, Align.MIDDLE, 0));
          }
        }
      }
    }
    return tries;
  }

  /**
   * A stone's mark: on the stone, level or upright, or else beside it with a leader. Near the
   * springing of an arch stones take up little of the strip.
   */
  static void mark(
      Board b, StripSheets.Stone s, double x0, double x1, double y, double left, double right) {
    if (!b.firstFree(on(s.mark(), x0, x1, y), 0.3)) {
      double x = (x0 + x1) / 2;
      if (!led(b, s.mark(), x, y, left, right, 0)) {
        led(b, s.mark(), x, y, left, right, COVERED);
      }
    }
  }

  // In the middle of the stone, between the figures of both lines.
  private static List<Mark.Label> on(String mark, double x0, double x1, double y) {
    Lettering l = StripSheets.SMALL;
    double middle = y + StripSheets.BAND / 2;
    double half = LabelShape.width(mark, l) / 2;
    List<Mark.Label> tries = new ArrayList<>();
    for (double degrees : new double[] {0, 90}) {
      double wide = degrees == 0 ? half : l.height() / 2;
      for (double share : new double[] {0.5, 0.35, 0.65, 0.2, 0.8}) {
        double x = x0 + share * (x1 - x0);
        if (x - wide > x0 + 0.4 && x + wide < x1 - 0.4) {
          Point at =
              degrees == 0
                  ? new Point(x, middle + l.height() / 2)
                  : new Point(x + l.height() / 2, middle);
          tries.add(new Mark.Label(at, mark, l, Align.MIDDLE, degrees));
        }
      }
    }
    return tries;
  }

  // The leader ends in a dot on the stone, the nearest place that is free for both.
  private static boolean led(
      Board b, String mark, double x, double y, double left, double right, double covered) {
    Lettering l = StripSheets.SMALL;
    double half = LabelShape.width(mark, l) / 2;
    double low = y + StripSheets.BAND - StripSheets.TICK;
    for (double aside = 0; aside < FAR; aside += STEP) {
      for (double at : new double[] {x + aside, x - aside}) {
        if (at - half < left + 0.5 || at + half > right - 0.5) {
          continue;
        }
        for (double base = y + StripSheets.TICK + 3; base < low; base += STEP) {
          Mark.Label label = new Mark.Label(new Point(at, base), mark, l, Align.MIDDLE, 0);
          for (double to = low + 1.5; to > y + 1; to -= STEP) {
            Point dot = new Point(x, to);
            if (Math.abs(to - base) > 1 && led(b, label, dot, covered)) {
              return true;
            }
          }
        }
      }
    }
    return false;
  }

  private static boolean led(Board b, Mark.Label label, Point dot, double covered) {
    Box box = LabelShape.bounds(label).grown(0.5);
    double x = Math.max(box.minX(), Math.min(box.maxX(), dot.x()));
    double y = Math.max(box.minY(), Math.min(box.maxY(), dot.y()));
    Point from = new Point(x, y);
    double length = from.distance(dot);
    if (length < 1.2) {
      return false;
    }
    double ax = (dot.y() - y) / length * 0.1;
    double ay = (x - dot.x()) / length * 0.1;
    Point end = dot.towards(from, Math.min(1, covered / length));
    List<Point> thin =
        List.of(
            new Point(x - ax, y - ay),
            new Point(x + ax, y + ay),
            new Point(end.x() + ax, end.y() + ay),
            new Point(end.x() - ax, end.y() - ay));
    if (!b.ink().free(thin, 0.3)
        || !b.ink().free(LabelShape.corners(label), 0.3)
        || covered > 0 && onText(b, end, dot)) {
      return false;
    }
    b.add(label);
    b.line(from, dot, Pen.FINE);
    b.fill(Path.circle(dot, 0.5), Shade.BLACK);
    return true;
  }

  /** The dot's end of a leader may lie on a line, on no text. */
  private static boolean onText(Board b, Point end, Point dot) {
    Box tip = Box.around(List.of(end, dot)).grown(0.8);
    return b.marks().stream()
        .anyMatch(m -> m instanceof Mark.Label l && LabelShape.bounds(l).overlaps(tip));
  }
}
