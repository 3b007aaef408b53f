package headcourse.sheet.fullsize;

import headcourse.bench.HeadWork;
import headcourse.drawing.Board;
import headcourse.drawing.LabelShape;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.Pen;
import headcourse.geom.Box;
import headcourse.geom.Point;
import headcourse.job.Bundle;
import headcourse.layout.PlacedStone;
import headcourse.layout.Side;
import headcourse.sheet.BearingLine;
import headcourse.sheet.FitLine;
import headcourse.sheet.PageDraft;
import headcourse.sheet.SheetComposer;
import headcourse.sheet.SheetContext;
import headcourse.sheet.SheetContext.Turn;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The layout-board strip at 1:1: centre line, joints on the soffit line and on the top line, jambs
 * and ends, cut into lengths that are laid end to end on the board.
 */
public final class StripSheets implements SheetComposer {
  private static final double BAND = 18;
  private static final double PITCH = 23.5;
  private static final double BEYOND = 12;
  private static final double TICK = 2.9;

  /** An opening's line over its first part, mm. */
  private static final double HEAD = 6.2;

  private static final Lettering TITLE = new Lettering(2.5, true);
  private static final double SAME = 0.02;
  private static final Lettering MARK = new Lettering(3.5, true);

  /** A line across the strip: where, what it says, and whether on the soffit or the top line. */
  private record Tick(double x, String text, boolean top, Pen pen) {}

  @Override
  public Bundle bundle() {
    return Bundle.FULL_SIZE;
  }

  /**
   * A strip of an opening.
   *
   * @param half whether it is the right half, laid once more turned over
   */
  private record Strip(HeadWork head, List<Tick> ticks, boolean half, double from, double to) {
    static Strip of(SheetContext c, HeadWork head) {
      List<Tick> ticks = StripSheets.ticks(c, head);
      boolean half = alike(ticks);
      Box box = extent(head);
      return new Strip(head, ticks, half, (half ? 0 : box.minX()) - BEYOND, box.maxX() + BEYOND);
    }

    String mark() {
      return head.layout().opening().mark();
    }
  }

  /** The pages as they fill with strips of all openings; off a roll each has a page. */
  @Override
  public List<PageDraft> compose(SheetContext c) {
    List<PageDraft> pages = new ArrayList<>();
    PageDraft page = null;
    double y = 0;
    for (HeadWork head : c.work().heads()) {
      Strip strip = Strip.of(c, head);
      // Off a roll the strip is one length, along the paper.
      PageDraft trial = c.page(Turn.LANDSCAPE, "", "");
      double around = trial.width() - TilePage.window(trial).width();
      boolean roll = c.paper().roll();
      double width = roll ? strip.to - strip.from + around + 1 : trial.width();
      Box room = TilePage.window(c.page(width, trial.height(), "", ""));
      double step = room.width() - Tiling.OVERLAP;
      int lengths = Tiling.count(strip.to - strip.from, room.width());
      for (int i = 0; i < lengths; i++) {
        double wanted = i == 0 ? HEAD + PITCH : PITCH;
        boolean begins = page == null || roll || y + wanted - (PITCH - BAND) + 5 > room.maxY();
        if (begins) {
          String word = c.label("fullsize.label-strip");
          String label = strip.mark() + "-" + word + (i == 0 ? "" : "-" + (i + 1));
          page = c.page(width, trial.height(), label, c.say("fullsize.strips"));
          TilePage.bars(c, page);
          String foot = c.say("fullsize.strip-foot");
          double low = page.area().maxY() - 11;
          FitLine.draw(page.board(), room.minX(), low, room.width(), foot, Lettering.NOTE);
          pages.add(page);
          y = room.minY() + 1;
        }
        if (i == 0) {
          page.bookmark(1, c.say("fullsize.strip", strip.mark()), "strip-" + strip.mark(), y);
          String title = strip.mark() + ". " + BearingLine.of(c, head);
          FitLine.draw(page.board(), room.minX(), y + 3.2, room.width(), title, TITLE);
          y += HEAD;
        }
        double from = strip.from + i * step;
        String key = strip.half ? "fullsize.strip-half" : "fullsize.strip-part";
        String name = c.say(key, strip.mark(), i + 1, lengths);
        double to = Math.min(strip.to, from + room.width());
        part(c, page.board(), room, y, from, to, strip.ticks, name);
        y += PITCH;
      }
    }
    return pages;
  }

  private static void part(
      SheetContext c,
      Board board,
      Box room,
      double y,
      double from,
      double to,
      List<Tick> ticks,
      String name) {
    double left = room.minX();
    double right = left + to - from;
    board.group(
        Role.LINES,
        "",
        name,
        b -> {
          b.line(left, y, right, y, Pen.EDGE);
          b.line(left, y + BAND, right, y + BAND, Pen.EDGE);
          b.line(left, y, left, y + BAND + 1.5, Pen.FINE);
          b.line(right, y, right, y + BAND + 1.5, Pen.FINE);
          for (Tick t : ticks) {
            if (t.x < from - 1e-9 || t.x > to + 1e-9) {
              continue;
            }
            double x = left + t.x - from;
            if (t.text.isEmpty()) {
              b.line(x, y, x, y + BAND, t.pen);
            } else if (t.top) {
              b.line(x, y, x, y + TICK, t.pen);
            } else {
              b.line(x, y + BAND - TICK, x, y + BAND, t.pen);
            }
          }
        });
    board.group(
        Role.DIMENSIONS,
        "",
        "",
        b -> {
          for (Tick t : ticks) {
            double x = left + t.x - from;
            if (t.text.isEmpty() || x < left || x > right) {
              continue;
            }
            b.firstFree(labels(t, x, y, left, right), 0.3);
          }
          for (double x : new double[] {left + 2, left + 30, left + 60}) {
            if (b.firstFree(
                List.of(
                    new Mark.Label(
                        new Point(x, y + BAND + 3.7),
                        name,
                        new Lettering(2.5, false),
                        Align.START,
                        0)),
                0.3)) {
              break;
            }
          }
        });
  }

  // Under its tick, or beside it; at the end of a part on the side that is left.
  private static List<Mark.Label> labels(Tick t, double x, double y, double left, double right) {
    double half = LabelShape.width(t.text, MARK) / 2;
    double under = t.top ? y + TICK + 4.6 : y + BAND - TICK - 1.9;
    double beside = t.top ? y + 4.2 : y + BAND - 1.5;
    List<Mark.Label> tries = new ArrayList<>();
    for (double low : new double[] {under, beside}) {
      for (double aside : new double[] {0, half + 0.8, -half - 0.8}) {
        double at = x + aside;
        boolean clear = low == under || aside != 0;
        if (clear && at - half > left + 0.5 && at + half < right - 0.5) {
          tries.add(new Mark.Label(new Point(at, low), t.text, MARK, Align.MIDDLE, 0));
        }
      }
    }
    return tries;
  }

  private static boolean alike(List<Tick> ticks) {
    return ticks.stream()
        .allMatch(
            t ->
                ticks.stream()
                    .anyMatch(
                        o ->
                            Math.abs(o.x + t.x) < SAME && o.top == t.top && o.text.equals(t.text)));
  }

  private static Box extent(HeadWork head) {
    return head.pieces().stream()
        .map(p -> p.stone().outline().bounds())
        .reduce(Box::union)
        .orElseThrow();
  }

  private static List<Tick> ticks(SheetContext c, HeadWork head) {
    List<Tick> ticks = new ArrayList<>();
    Pen jamb = Pen.OUTLINE;
    ticks.add(new Tick(0, "", true, Pen.CENTRE));
    ticks.add(new Tick(0 - head.layout().jamb(Side.LEFT).mm(), "", true, jamb));
    ticks.add(new Tick(head.layout().jamb(Side.RIGHT).mm(), "", true, jamb));
    for (PlacedStone s : head.layout().stones()) {
      var f = s.feet();
      if (s.side() != Side.RIGHT) {
        add(c, ticks, f.leftSoffit(), false);
        add(c, ticks, f.leftTop(), true);
      }
      if (s.side() != Side.LEFT) {
        add(c, ticks, f.rightSoffit(), false);
        add(c, ticks, f.rightTop(), true);
      }
    }
    ticks.sort(Comparator.comparingDouble(Tick::x));
    return ticks;
  }

  private static void add(SheetContext c, List<Tick> ticks, Length x, boolean top) {
    ticks.add(new Tick(x.mm(), c.format().tape(x.abs()), top, Pen.CUT));
  }
}
