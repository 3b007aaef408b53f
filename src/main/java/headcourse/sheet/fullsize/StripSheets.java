package headcourse.sheet.fullsize;

import headcourse.bench.HeadWork;
import headcourse.drawing.Board;
import headcourse.drawing.LabelShape;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.Pen;
import headcourse.drawing.TextFlow;
import headcourse.geom.Box;
import headcourse.geom.Point;
import headcourse.job.Bundle;
import headcourse.layout.PlacedStone;
import headcourse.layout.Side;
import headcourse.sheet.BearingLine;
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
  static final double BAND = 21;
  private static final double PITCH = 26.3;
  private static final double BEYOND = 12;
  static final double TICK = 2.9;

  /** Under an opening's lines over its first part, mm. */
  private static final double HEAD = 1.8;

  private static final Lettering TITLE = new Lettering(2.5, true);
  static final Lettering SMALL = new Lettering(2.5, true);
  private static final double SAME = 0.02;
  static final Lettering MARK = new Lettering(3.5, true);

  /**
   * A line across the strip: where, what it says, and on which edge; across all of it where on
   * neither.
   */
  record Tick(double x, String text, On on, Pen pen) {}

  enum On {
    SOFFIT,
    TOP,
    BOTH
  }

  /** A stone's mark between its joints on the soffit line. */
  record Stone(double from, double to, String mark) {}

  @Override
  public Bundle bundle() {
    return Bundle.FULL_SIZE;
  }

  /**
   * A strip of an opening.
   *
   * @param half whether it is the right half, laid once more turned over
   */
  private record Strip(
      HeadWork head, List<Tick> ticks, List<Stone> stones, boolean half, double from, double to) {
    static Strip of(SheetContext c, HeadWork head) {
      List<Tick> ticks = StripSheets.ticks(c, head);
      boolean half = alike(ticks);
      Box box = extent(head);
      double from = (half ? 0 : box.minX()) - BEYOND;
      return new Strip(
          head, ticks, StripSheets.stones(head, half), half, from, box.maxX() + BEYOND);
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
      Box window = TilePage.window(c.page(width, trial.height(), "", ""));
      List<String> foot =
          TextFlow.lines(c.say("fullsize.strip-foot"), window.width(), Lettering.NOTE);
      double under = (foot.size() - 1) * Lettering.LEAST * TextFlow.LEADING;
      Box room = new Box(window.minX(), window.minY(), window.maxX(), window.maxY() - under);
      String bears = strip.mark() + ". " + BearingLine.of(c, head);
      double heading = TextFlow.height(bears, room.width(), TITLE) + HEAD;
      double step = room.width() - Tiling.OVERLAP;
      int lengths = Tiling.count(strip.to - strip.from, room.width());
      for (int i = 0; i < lengths; i++) {
        double wanted = i == 0 ? heading + PITCH : PITCH;
        boolean begins = page == null || roll || y + wanted - (PITCH - BAND) + 5 > room.maxY();
        if (begins) {
          String word = c.label("fullsize.label-strip");
          String label = strip.mark() + "-" + word + (i == 0 ? "" : "-" + (i + 1));
          page = c.page(width, trial.height(), label, c.say("fullsize.strips"));
          TilePage.bars(c, page);
          double low = page.area().maxY() - 11 - under - Lettering.LEAST;
          TextFlow.paragraph(page.board(), room.minX(), low, foot, Lettering.NOTE);
          pages.add(page);
          y = room.minY() + 1;
        }
        if (i == 0) {
          page.bookmark(1, c.say("fullsize.strip", strip.mark()), "strip-" + strip.mark(), y);
          TextFlow.paragraph(page.board(), room.minX(), y, room.width(), bears, TITLE);
          y += heading;
        }
        double from = strip.from + i * step;
        String key = strip.half ? "fullsize.strip-half" : "fullsize.strip-part";
        String name = c.say(key, strip.mark(), i + 1, lengths);
        double to = Math.min(strip.to, from + room.width());
        part(page.board(), room, y, from, to, strip, name);
        y += PITCH;
      }
    }
    return pages;
  }

  private static void part(
      Board board, Box room, double y, double from, double to, Strip strip, String name) {
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
          for (Tick t : strip.ticks) {
            if (t.x < from - 1e-9 || t.x > to + 1e-9) {
              continue;
            }
            double x = left + t.x - from;
            double high = t.on == On.SOFFIT ? y + BAND - TICK : y;
            b.line(x, high, x, t.on == On.TOP ? y + TICK : y + BAND, t.pen);
          }
        });
    board.group(
        Role.DIMENSIONS,
        "",
        "",
        b -> {
          for (Tick t : strip.ticks) {
            double x = left + t.x - from;
            if (!t.text.isEmpty() && x >= left && x <= right) {
              b.firstFree(StripLabels.figures(t, x, y, left, right), 0.3);
            }
          }
          for (Stone s : strip.stones) {
            double x0 = Math.max(left, left + s.from - from);
            double x1 = Math.min(right, left + s.to - from);
            // What of a stone lies on the next part is named there.
            if (x1 - x0 >= Math.min(2, 0.6 * (s.to - s.from))) {
              StripLabels.mark(b, s, x0, x1, y, left, right);
            }
          }
          name(b, room, y, left, right, name);
        });
  }

  /** Under the part, or beside it where it is shorter than its name. */
  private static void name(Board b, Box room, double y, double left, double right, String name) {
    Lettering l = Lettering.NOTE;
    double width = LabelShape.width(name, l);
    if (left + width + 4 > right) {
      double at = right + 4;
      List<String> lines = TextFlow.lines(name, room.maxX() - at, l);
      TextFlow.paragraph(b, at, y + l.height() + 1, lines, l);
      return;
    }
    b.text(new Point(left + 2, y + BAND + 3.7), name, l, Align.START, 0);
  }

  private static boolean alike(List<Tick> ticks) {
    return ticks.stream()
        .allMatch(
            t ->
                ticks.stream()
                    .anyMatch(
                        o -> Math.abs(o.x + t.x) < SAME && o.on == t.on && o.text.equals(t.text)));
  }

  private static Box extent(HeadWork head) {
    return head.pieces().stream()
        .map(p -> p.stone().outline().bounds())
        .reduce(Box::union)
        .orElseThrow();
  }

  private static List<Tick> ticks(SheetContext c, HeadWork head) {
    List<Tick> ticks = new ArrayList<>();
    ticks.add(new Tick(0, "", On.BOTH, Pen.CENTRE));
    for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
      Length jamb = head.layout().jamb(side);
      String text = c.words().each("fullsize.jamb", c.format().tape(jamb)).get(0);
      ticks.add(new Tick(side.sign() * jamb.mm(), text, On.BOTH, Pen.OUTLINE));
    }
    for (PlacedStone s : head.layout().stones()) {
      var f = s.feet();
      if (s.side() != Side.RIGHT) {
        add(c, ticks, f.leftSoffit(), On.SOFFIT);
        add(c, ticks, f.leftTop(), On.TOP);
      }
      if (s.side() != Side.LEFT) {
        add(c, ticks, f.rightSoffit(), On.SOFFIT);
        add(c, ticks, f.rightTop(), On.TOP);
      }
    }
    ticks.sort(Comparator.comparingDouble(Tick::x));
    return ticks;
  }

  private static List<Stone> stones(HeadWork head, boolean half) {
    List<Stone> stones = new ArrayList<>();
    for (PlacedStone s : head.layout().stones()) {
      var f = s.feet();
      double from = Math.min(f.leftSoffit().mm(), f.rightSoffit().mm());
      double to = Math.max(f.leftSoffit().mm(), f.rightSoffit().mm());
      if (!half || s.side() == Side.RIGHT) {
        stones.add(new Stone(from, to, s.mark()));
      } else if (s.side() == Side.CENTRE) {
        stones.add(new Stone(0, to, s.mark()));
      }
    }
    return stones;
  }

  private static void add(SheetContext c, List<Tick> ticks, Length x, On on) {
    ticks.add(new Tick(x.mm(), c.format().tape(x.abs()), on, Pen.CUT));
  }
}
