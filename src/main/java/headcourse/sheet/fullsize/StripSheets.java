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
  private static final double BAND = 26;
  private static final double PITCH = 38;
  private static final double BEYOND = 12;
  private static final Lettering MARK = new Lettering(3.5, true);

  /** A line across the strip: where, what it says, and whether on the soffit or the top line. */
  private record Tick(double x, String text, boolean top, Pen pen) {}

  @Override
  public Bundle bundle() {
    return Bundle.FULL_SIZE;
  }

  @Override
  public List<PageDraft> compose(SheetContext c) {
    List<PageDraft> pages = new ArrayList<>();
    for (HeadWork head : c.work().heads()) {
      pages.addAll(strip(c.of(head), head));
    }
    return pages;
  }

  private static List<PageDraft> strip(SheetContext c, HeadWork head) {
    String mark = head.layout().opening().mark();
    Box box = extent(head);
    double from = box.minX() - BEYOND;
    double to = box.maxX() + BEYOND;
    // Off a roll the strip is one length, along the paper.
    PageDraft trial = c.page(Turn.LANDSCAPE, "", "");
    double around = trial.width() - TilePage.window(trial).width();
    double width = c.paper().roll() ? to - from + around + 1 : trial.width();
    Box room = TilePage.window(c.page(width, trial.height(), "", ""));
    double step = room.width() - Tiling.OVERLAP;
    int lengths = Tiling.count(to - from, room.width());
    int perPage = Math.max(1, (int) Math.floor((room.height() + PITCH - BAND - 4) / PITCH));
    List<PageDraft> pages = new ArrayList<>();
    List<Tick> ticks = ticks(c, head);
    for (int first = 0; first < lengths; first += perPage) {
      PageDraft page =
          c.page(
              width,
              trial.height(),
              mark + "-" + c.label("fullsize.label-strip") + "-" + (pages.size() + 1),
              c.say("fullsize.strip", mark));
      if (first == 0) {
        page.bookmark(1, c.say("fullsize.strip", mark), "strip-" + mark, room.minY());
      }
      TilePage.bars(c, page);
      FitLine.draw(
          page.board(),
          room.minX(),
          page.area().maxY() - 11,
          room.width(),
          c.say("fullsize.strip-foot", mark),
          Lettering.NOTE);
      FitLine.draw(
          page.board(),
          room.minX(),
          page.area().maxY() - 15,
          room.width(),
          BearingLine.of(c, head),
          Lettering.NOTE);
      for (int i = first; i < Math.min(lengths, first + perPage); i++) {
        double y = room.minY() + 5 + (i - first) * PITCH;
        String name = c.say("fullsize.strip-part", mark, i + 1, lengths);
        part(
            c,
            page.board(),
            room,
            y,
            from + i * step,
            Math.min(to, from + i * step + room.width()),
            ticks,
            name);
      }
      pages.add(page);
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
          b.line(left, y - 1.5, left, y + BAND + 1.5, Pen.FINE);
          b.line(right, y - 1.5, right, y + BAND + 1.5, Pen.FINE);
          for (Tick t : ticks) {
            if (t.x < from - 1e-9 || t.x > to + 1e-9) {
              continue;
            }
            double x = left + t.x - from;
            if (t.text.isEmpty()) {
              b.line(x, y, x, y + BAND, t.pen);
            } else if (t.top) {
              b.line(x, y, x, y + 7, t.pen);
            } else {
              b.line(x, y + BAND - 7, x, y + BAND, t.pen);
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
            double half = LabelShape.width(t.text, MARK) / 2;
            if (x - half < left + 0.5 || x + half > right - 0.5) {
              continue;
            }
            b.firstFree(
                List.of(
                    label(x, t.top ? y + 11.4 : y + BAND - 8.2, t.text),
                    label(x, t.top ? y + 11.4 + 4.2 : y + BAND - 8.2 - 4.2, t.text)),
                0.4);
          }
          for (double x : new double[] {left + 2, left + 30, left + 60}) {
            if (b.firstFree(
                List.of(
                    new Mark.Label(
                        new Point(x, y + BAND + 4.5),
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

  private static Mark.Label label(double x, double y, String text) {
    return new Mark.Label(new Point(x, y), text, MARK, Align.MIDDLE, 0);
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
