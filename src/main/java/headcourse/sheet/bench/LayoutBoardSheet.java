package headcourse.sheet.bench;

import headcourse.bench.HeadWork;
import headcourse.drawing.Board;
import headcourse.drawing.LabelShape;
import headcourse.drawing.LabelSpacing;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.Pen;
import headcourse.drawing.Shade;
import headcourse.drawing.TextFlow;
import headcourse.geom.Box;
import headcourse.geom.Clip;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.job.Bundle;
import headcourse.layout.PlacedStone;
import headcourse.layout.Side;
import headcourse.sheet.ColumnShares;
import headcourse.sheet.NoRoom;
import headcourse.sheet.PageDraft;
import headcourse.sheet.SheetComposer;
import headcourse.sheet.SheetContext;
import headcourse.sheet.Table;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The layout board: the head as a strip with running marks, and the same as a table. Curved heads
 * have none: they are struck out, from their sheet in the wall's bundle.
 */
public final class LayoutBoardSheet implements SheetComposer {
  private static final Lettering RUN = new Lettering(3.5, true);
  private static final Lettering CELL = new Lettering(3.5, false);
  private static final Lettering LARGE = new Lettering(5, false);
  private static final double SPACING = 5.2;
  private static final double INDENT = 7;

  /** How far a border may lie off the end of its strip, mm. */
  private static final double NOISE = 0.01;

  @Override
  public Bundle bundle() {
    return Bundle.BENCH;
  }

  @Override
  public List<PageDraft> compose(SheetContext job) {
    List<PageDraft> pages = new ArrayList<>();
    for (HeadWork head : job.work().heads()) {
      if (struck(head)) {
        continue;
      }
      pages.addAll(board(job.of(head), head));
    }
    return pages;
  }

  // Large where it costs no page, for it is read from a trestle away.
  private static List<PageDraft> board(SheetContext c, HeadWork head) {
    List<PageDraft> board = board(c, head, CELL);
    Table table = BoardTable.of(c, head, LARGE);
    if (table.lettering().height() < LARGE.height() || !ColumnShares.whole(table)) {
      return board;
    }
    try {
      List<PageDraft> large = board(c, head, LARGE);
      return large.size() > board.size() ? board : large;
    } catch (NoRoom e) {
      return board;
    }
  }

  private static List<PageDraft> board(SheetContext c, HeadWork head, Lettering cell) {
    List<PageDraft> pages = new ArrayList<>();
    String mark = head.layout().opening().mark();
    Table table = BoardTable.of(c, head, cell);
    int row = 0;
    int part = 0;
    do {
      part++;
      PageDraft page =
          c.page(
              c.upright(),
              mark + "-" + c.label("board.label") + (part == 1 ? "" : "-" + part),
              c.say("board.title", mark));
      Box a = page.area();
      double y = a.minY() + 2;
      if (part == 1) {
        page.bookmark(1, c.say("board.title", mark), "board-" + mark, y);
        y = heading(c, page, mark, y);
        y = strip(c, page, head, y + 4);
      }
      pages.add(page);
      // Where the strip leaves no room for a row, the table begins on the next page.
      if (part > 1 || y + table.part(row, row + 1).height() <= a.maxY() - 1) {
        Table.Drawn drawn = table.draw(page.board(), a.minX(), y, a.maxY() - 1, row);
        if (drawn.nextRow() == row) {
          throw new NoRoom("the running marks of " + mark);
        }
        row = drawn.nextRow();
      }
    } while (row < table.rows().size());
    return pages;
  }

  /** Whether a head is struck out instead. */
  static boolean struck(HeadWork head) {
    return head.layout().curved();
  }

  private static double heading(SheetContext c, PageDraft page, String mark, double top) {
    double[] y = {top};
    Box a = page.area();
    String title = c.say("board.title", mark);
    Lettering large = new Lettering(7, true);
    Lettering set = LabelShape.width(title, large) > a.width() ? new Lettering(5, true) : large;
    page.board()
        .group(
            Role.TITLE,
            "",
            title,
            g -> y[0] = TextFlow.paragraph(g, a.minX(), y[0], a.width(), title, set));
    page.board()
        .group(
            Role.NOTES,
            "",
            "",
            g ->
                y[0] =
                    TextFlow.paragraph(
                        g, a.minX(), y[0], a.width(), c.say("board.how"), Lettering.BODY));
    return y[0];
  }

  // As many lengths, one under the other, as the running marks need to stand side by side.
  private static double strip(SheetContext c, PageDraft page, HeadWork head, double top) {
    Box all =
        head.pieces().stream()
            .map(p -> p.stone().outline().bounds())
            .reduce(Box::union)
            .orElseThrow();
    TreeMap<Double, String> marks = new TreeMap<>();
    for (PlacedStone s : head.layout().stones()) {
      if (s.side() != Side.RIGHT) {
        mark(c, marks, s.feet().leftSoffit());
      }
      if (s.side() != Side.LEFT) {
        mark(c, marks, s.feet().rightSoffit());
      }
    }
    double room = page.area().width() - 2 * INDENT;
    int parts = Math.max(1, (int) Math.ceil((marks.size() + 1) * SPACING / room));
    double length = all.width() / parts;
    double y = top + 2;
    for (int i = 0; i < parts; i++) {
      double from = all.minX() + i * length;
      Box part = new Box(from, all.minY(), from + length, all.maxY());
      y = part(c, page, head, part, parts == 1, marks, y) + 2;
    }
    return y + 2;
  }

  private static double part(
      SheetContext c,
      PageDraft page,
      HeadWork head,
      Box part,
      boolean whole,
      TreeMap<Double, String> marks,
      double top) {
    Box a = page.area();
    double k = (a.width() - 2 * INDENT) / part.width();
    double x0 = a.minX() + INDENT - part.minX() * k;
    double tall = Math.min(part.height() * k, whole ? 40 : 18);
    double ky = tall / part.height();
    double bottom = top + 8 + tall;
    // An end stone's border lies on the window's.
    Box window = new Box(a.minX() + INDENT - NOISE, top, a.maxX() - INDENT + NOISE, bottom + 1);
    double left = 0 - head.layout().jamb(Side.LEFT).mm();
    double right = head.layout().jamb(Side.RIGHT).mm();
    page.board()
        .group(
            Role.FIGURE,
            "",
            c.say("board.title", head.layout().opening().mark()),
            g -> {
              Map<String, Box> seen = new LinkedHashMap<>();
              for (PlacedStone s : head.layout().stones()) {
                Path on = outline(s, x0, bottom + part.minY() * ky, k, ky);
                if (whole) {
                  g.fill(on, s.side() == Side.CENTRE ? Shade.KEY : Shade.STONE);
                }
                Clip.toBox(on, window, 0.05).forEach(r -> g.stroke(r, Pen.EDGE));
                Box b = on.bounds();
                if (window.minX() <= b.centre().x() && b.centre().x() <= window.maxX()) {
                  seen.put(s.mark(), b);
                }
              }
              for (double at : new double[] {left, right}) {
                if (at > part.minX() && at < part.maxX()) {
                  g.line(x0 + at * k, top + 2, x0 + at * k, bottom + 4, Pen.OUTLINE);
                }
              }
              if (part.minX() <= 0 && part.maxX() >= 0) {
                g.line(x0, top + 1, x0, bottom + 5, Pen.CENTRE);
                String centre = c.say("board.centre");
                double wide = LabelShape.width(centre, Lettering.NOTE) / 2 + 0.5;
                double at = Math.max(a.minX() + wide, Math.min(a.maxX() - wide, x0));
                g.text(at, top, centre, Lettering.NOTE, Align.MIDDLE);
              }
              seen.forEach((mark, b) -> mark(g, mark, b, a));
            });
    double[] depth = {0};
    TreeMap<Double, String> here =
        new TreeMap<>(marks.subMap(part.minX() - 1e-6, true, part.maxX() + 1e-6, true));
    page.board()
        .group(Role.DIMENSIONS, "", "", g -> depth[0] = running(g, here, x0, k, bottom + 6, a));
    return bottom + 6 + depth[0] + 4;
  }

  private static void mark(SheetContext c, TreeMap<Double, String> marks, Length at) {
    marks.put(at.mm(), c.format().tape(at.abs()));
  }

  // The strip keeps lengths along the head true to scale; its height is squeezed where needed.
  private static Path outline(PlacedStone s, double x0, double y0, double k, double ky) {
    List<Point> on = new ArrayList<>();
    for (Point p : s.outline().vertices(0.5)) {
      on.add(new Point(x0 + p.x() * k, y0 - p.y() * ky));
    }
    return Path.polygon(on);
  }

  private static void mark(Board g, String mark, Box b, Box area) {
    double x = b.centre().x();
    double y = b.centre().y();
    for (double h : new double[] {3.5, 2.5}) {
      for (double aside : new double[] {0, -0.2, 0.2, -0.3, 0.3}) {
        if (fits(g, mark, x + aside * b.width(), y + h / 2, h, 0, area)) {
          return;
        }
      }
    }
    for (double h : new double[] {3.5, 2.5}) {
      for (double down : new double[] {0, 0.2, -0.2}) {
        if (fits(g, mark, x + h / 2, y + down * b.height(), h, 90, area)) {
          return;
        }
      }
    }
    // The jamb line runs through an end stone: upright, on either side of it.
    for (double aside = 0.05; aside < 0.45; aside += 0.02) {
      for (double way : new double[] {aside, -aside}) {
        if (fits(g, mark, x + way * b.width() + 1.25, y, 2.5, 90, area)) {
          return;
        }
      }
    }
  }

  // Writes the mark there if there is room. A stone at the edge of a part reaches past the paper;
  // its mark doesn't.
  private static boolean fits(
      Board g, String mark, double x, double y, double height, double degrees, Box area) {
    Lettering lettering = new Lettering(height, true);
    Mark.Label label = new Mark.Label(new Point(x, y), mark, lettering, Align.MIDDLE, degrees);
    Box ink = LabelShape.bounds(label);
    return ink.minX() >= area.minX() + 1
        && ink.maxX() <= area.maxX() - 1
        && g.firstFree(List.of(label), 0.2);
  }

  private static double running(
      Board g, TreeMap<Double, String> marks, double x0, double k, double top, Box a) {
    double[] wanted = marks.keySet().stream().mapToDouble(m -> x0 + m * k).toArray();
    double[] places = LabelSpacing.along(wanted, SPACING, a.minX() + 3, a.maxX() - 3);
    double longest = 0;
    int i = 0;
    for (String text : marks.values()) {
      g.line(wanted[i], top - 5, wanted[i], top, Pen.FINE);
      g.line(wanted[i], top, places[i], top + 4, Pen.FINE);
      g.text(new Point(places[i] + RUN.height() / 2, top + 5), text, RUN, Align.END, 90);
      longest = Math.max(longest, LabelShape.width(text, RUN));
      i++;
    }
    return 5 + longest;
  }
}
