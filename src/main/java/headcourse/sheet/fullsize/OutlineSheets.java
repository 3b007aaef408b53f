package headcourse.sheet.fullsize;

import headcourse.drawing.Board;
import headcourse.drawing.LabelShape;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.Pen;
import headcourse.drawing.Shade;
import headcourse.drawing.TextFlow;
import headcourse.geom.Box;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Similarity;
import headcourse.geom.Vec;
import headcourse.job.Bundle;
import headcourse.layout.Side;
import headcourse.layout.VSoffit;
import headcourse.sheet.FitLine;
import headcourse.sheet.MarkRuns;
import headcourse.sheet.PageDraft;
import headcourse.sheet.SheetComposer;
import headcourse.sheet.SheetContext;
import headcourse.sheet.SheetContext.Turn;
import headcourse.text.Face;
import headcourse.text.Wrap;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Every different outline at 1:1: small ones together on a page, large ones over several tiles. */
public final class OutlineSheets implements SheetComposer {
  /** Longer than any roll, mm. */
  private static final double ENDLESS = 1e6;

  /** Heights of marks, mm. */
  private static final double[] MARKS = {14, 10, 7, 5, 3.5, 2.5};

  private static final Lettering FOOT = new Lettering(3.5, true);

  @Override
  public Bundle bundle() {
    return Bundle.FULL_SIZE;
  }

  @Override
  public List<PageDraft> compose(SheetContext c) {
    Tiling.Room portrait = TilePage.room(c, Turn.PORTRAIT);
    Tiling.Room landscape = TilePage.room(c, Turn.LANDSCAPE);
    if (c.paper().roll()) {
      portrait = new Tiling.Room(portrait.width(), ENDLESS);
      landscape = portrait;
    }
    List<Template> single = new ArrayList<>();
    List<PageDraft> tiled = new ArrayList<>();
    for (Template all : Template.of(c.work())) {
      Template t = all.laid(portrait, landscape);
      Tiling tiling = Tiling.fewest(t.width(), t.height(), portrait, landscape);
      if (tiling.tiles() == 1) {
        single.add(t);
      } else {
        tiled.addAll(tiles(c, t, tiling));
      }
    }
    List<PageDraft> pages = new ArrayList<>();
    for (ShelfPacker.Filled filled : ShelfPacker.fewestPages(single, portrait, landscape)) {
      pages.add(together(c, filled));
    }
    pages.addAll(tiled);
    return pages;
  }

  private static PageDraft together(SheetContext c, ShelfPacker.Filled filled) {
    String marks =
        String.join(", ", filled.places().stream().map(p -> p.template().marks()).toList());
    String label = first(filled.places().get(0).template());
    PageDraft page =
        c.paper().roll()
            ? TilePage.offRoll(c, filled.depth(), label)
            : c.page(filled.turn(), label, c.say("fullsize.outlines"));
    Box w = TilePage.window(page);
    Board b = page.board();
    for (ShelfPacker.Place place : filled.places()) {
      Path path =
          onPaper(place.template(), place.rotated(), w.minX() + place.x(), w.minY() + place.y());
      draw(c, b, place.template(), place.rotated(), path, path.bounds());
      page.bookmark(
          1, place.template().marks(), "outline-" + first(place.template()), w.minY() + place.y());
    }
    foot(c, page, shorten(marks, page.area().width() - 70), c.say("fullsize.whole"));
    return page;
  }

  private static List<PageDraft> tiles(SheetContext c, Template t, Tiling tiling) {
    List<PageDraft> pages = new ArrayList<>();
    for (int row = 0; row < tiling.rows(); row++) {
      for (int column = 0; column < tiling.columns(); column++) {
        String name = Tiling.name(row, column);
        PageDraft page =
            c.paper().roll()
                ? TilePage.offRoll(
                    c, tiling.rotated() ? t.width() : t.height(), first(t) + "-" + name)
                : c.page(tiling.turn(), first(t) + "-" + name, c.say("fullsize.outlines"));
        Box w = TilePage.window(page);
        double x = w.minX() - column * (w.width() - Tiling.OVERLAP);
        double y = w.minY() - row * (w.height() - Tiling.OVERLAP);
        Path path = onPaper(t, tiling.rotated(), x, y);
        Board b = page.board();
        boolean left = column > 0;
        boolean right = column < tiling.columns() - 1;
        boolean above = row > 0;
        boolean below = row < tiling.rows() - 1;
        b.group(Role.LINES, "", "", g -> TilePage.cutMarks(g, w, left, right, above, below));
        Box seen = intersection(path.bounds(), w);
        draw(c, b, t, tiling.rotated(), path, seen, w);
        if (row == 0 && column == 0) {
          page.bookmark(1, t.marks(), "outline-" + first(t), w.minY());
        }
        String tile = c.say("fullsize.tile", name, tiling.tiles());
        double room = page.area().width() - 56 - LabelShape.width(tile, FOOT);
        foot(c, page, shorten(t.marks(), room), tile);
        map(page, path, w, tiling, row, column);
        pages.add(page);
      }
    }
    return pages;
  }

  private static Box intersection(Box a, Box b) {
    double x0 = Math.max(a.minX(), b.minX());
    double y0 = Math.max(a.minY(), b.minY());
    return new Box(
        x0,
        y0,
        Math.max(x0, Math.min(a.maxX(), b.maxX())),
        Math.max(y0, Math.min(a.maxY(), b.maxY())));
  }

  private static Path onPaper(Template t, boolean rotated, double x, double y) {
    Path p = t.outline();
    if (rotated) {
      p = p.transformed(Similarity.turn(Math.PI / 2));
    }
    Box b = p.bounds();
    // The box's upper left corner, y up, goes to (x, y) on paper, y down.
    return p.transformed(new Similarity(1, 0, true, x - b.minX(), y + b.maxY()));
  }

  private static void draw(
      SheetContext c, Board b, Template t, boolean rotated, Path path, Box seen) {
    b.group(Role.STONE, t.half() ? "" : first(t), t.marks(), g -> g.stroke(path, Pen.CUT));
    letter(c, b, t, rotated, path, seen);
  }

  private static void draw(
      SheetContext c, Board b, Template t, boolean rotated, Path path, Box seen, Box window) {
    b.group(
        Role.STONE,
        "",
        t.marks(),
        g -> TileClip.inside(path, window).forEach(run -> g.stroke(run, Pen.CUT)));
    letter(c, b, t, rotated, path, seen);
  }

  // The marks as large as leaves room for which way is up, what it measures and what else is said.
  private static void letter(
      SheetContext c, Board b, Template t, boolean rotated, Path path, Box seen) {
    for (double most : MARKS) {
      Board trial = new Board();
      trial.stroke(path, Pen.CUT);
      if (letter(c, trial, t, rotated, path, seen, most) || most == MARKS[MARKS.length - 1]) {
        letter(c, b, t, rotated, path, seen, most);
        return;
      }
    }
  }

  // Whether everything found room.
  private static boolean letter(
      SheetContext c, Board b, Template t, boolean rotated, Path path, Box seen, double most) {
    var stone = t.pieces().get(0).stone();
    double[] heights = Arrays.stream(MARKS).filter(h -> h <= most).toArray();
    boolean all =
        place(b, t.marks(), seen, path, heights, true)
            || place(b, first(t) + " + " + (t.count() - 1), seen, path, heights, true);
    String size =
        c.say(
            "fullsize.size",
            c.format().withUnit(stone.bottom()),
            c.format().withUnit(stone.top()),
            c.format().withUnit(stone.height()));
    all &= place(b, size, seen, path, new double[] {3.5, 2.5}, false);
    if (t.half()) {
      all &= place(b, c.say("fullsize.half"), seen, path, new double[] {5, 3.5, 2.5}, true);
    }
    if (!t.twins().isEmpty()) {
      String over = c.say("fullsize.turn-over", MarkRuns.full(t.twins()));
      all &= place(b, over, seen, path, new double[] {5, 3.5, 2.5}, true);
    }
    if (VSoffit.of(stone).isPresent()) {
      String v = c.say("fullsize.v", c.format().withUnit(VSoffit.of(stone).get().depth()));
      all &= place(b, v, seen, path, new double[] {3.5, 2.5}, true);
    }
    boolean askew = t.turn() != 0;
    if (askew) {
      all &= place(b, c.say("fullsize.face-arrow"), seen, path, new double[] {3.5, 2.5}, false);
    } else {
      String up = c.say(rotated ? "fullsize.face-up-left" : "fullsize.face-up");
      String top = c.say("fullsize.up", rotated ? "←" : "↑");
      all &=
          place(b, up, seen, path, new double[] {3.5, 2.5}, false)
              || place(b, top, seen, path, new double[] {3.5, 2.5}, false);
    }
    Side side = stone.side();
    if (!t.half()
        && side != Side.CENTRE
        && t.pieces().stream().allMatch(p -> p.stone().side() == side)) {
      String key = c.keyed(t.pieces().get(0)) ? "fullsize.key-side" : "fullsize.centre-side";
      // A quarter turn over brings what was left down.
      String arrow = side == Side.LEFT ? (rotated ? "↑" : "→") : rotated ? "↓" : "←";
      String of = side == Side.LEFT ? "fullsize.arrow-right" : "fullsize.arrow-left";
      String said = c.say(words -> words.say(key, askew ? words.say(of) : arrow));
      all &= place(b, said, seen, path, new double[] {5, 3.5, 2.5}, true);
    }
    if (askew) {
      double way = Math.PI / 2 + t.turn() + (rotated ? Math.PI / 2 : 0);
      Vec up = new Vec(Math.cos(way), -Math.sin(way));
      all &= UpArrow.draw(b, c.say("fullsize.arrow"), path, seen, up);
    }
    return all;
  }

  // On one line, or where that does not fit on several.
  private static boolean place(
      Board b, String text, Box seen, Path path, double[] heights, boolean bold) {
    for (double h : heights) {
      Lettering l = new Lettering(h, bold);
      double room = seen.width() - 4;
      boolean least = h == heights[heights.length - 1];
      if (LabelShape.width(text, l) > room && !(least && room > 20)) {
        continue;
      }
      List<String> lines = TextFlow.lines(text, room, l);
      for (double f = 0.3; f < 0.95; f += 0.03) {
        double x = (seen.minX() + seen.maxX()) / 2;
        double y = seen.minY() + f * seen.height() + h / 2;
        List<Mark.Label> labels = new ArrayList<>();
        for (String line : lines) {
          labels.add(new Mark.Label(new Point(x, y), line, l, Align.MIDDLE, 0));
          y += h * TextFlow.LEADING;
        }
        if (labels.stream().allMatch(m -> b.ink().free(LabelShape.corners(m), 1.2))
            && y - h * TextFlow.LEADING < seen.maxY() - 1) {
          labels.forEach(b::add);
          return true;
        }
      }
    }
    return false;
  }

  private static void foot(SheetContext c, PageDraft page, String marks, String tile) {
    TilePage.bars(c, page);
    Box a = page.area();
    double x = a.minX() + 13.5;
    double y = a.maxY() - 11;
    FitLine.draw(page.board(), x, y, a.maxX() - x - 38, tile + "   " + marks, FOOT);
  }

  private static void map(PageDraft page, Path path, Box w, Tiling t, int row, int column) {
    Box a = page.area();
    double stepX = w.width() - Tiling.OVERLAP;
    double stepY = w.height() - Tiling.OVERLAP;
    double fullW = stepX * t.columns() + Tiling.OVERLAP;
    double fullH = stepY * t.rows() + Tiling.OVERLAP;
    double scale = Math.min(12 / fullH, 34 / fullW);
    double left = a.maxX() - 2 - fullW * scale;
    double top = a.maxY() - 1.5 - fullH * scale;
    double x0 = w.minX() - column * stepX;
    double y0 = w.minY() - row * stepY;
    Similarity small = new Similarity(scale, 0, false, left - x0 * scale, top - y0 * scale);
    page.board()
        .group(
            Role.LINES,
            "",
            "",
            g -> {
              g.fill(
                  Path.rect(
                      left + column * stepX * scale,
                      top + row * stepY * scale,
                      w.width() * scale,
                      w.height() * scale),
                  Shade.KEY);
              for (int i = 0; i <= t.columns(); i++) {
                double x = left + (i * stepX + (i == 0 ? 0 : Tiling.OVERLAP)) * scale;
                g.line(x, top, x, top + fullH * scale, Pen.FINE);
              }
              for (int i = 0; i <= t.rows(); i++) {
                double y = top + (i * stepY + (i == 0 ? 0 : Tiling.OVERLAP)) * scale;
                g.line(left, y, left + fullW * scale, y, Pen.FINE);
              }
              g.stroke(path.transformed(small), Pen.EDGE);
            });
  }

  private static String first(Template t) {
    return t.pieces().get(0).mark();
  }

  private static String shorten(String marks, double width) {
    return Wrap.shortened(marks, Face.of(true), FOOT.height(), width);
  }
}
