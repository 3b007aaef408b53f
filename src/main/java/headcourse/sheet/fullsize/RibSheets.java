package headcourse.sheet.fullsize;

import headcourse.bench.HeadWork;
import headcourse.drawing.Board;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.Pen;
import headcourse.geom.Box;
import headcourse.geom.Edge;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Similarity;
import headcourse.job.Bundle;
import headcourse.sheet.FitLine;
import headcourse.sheet.PageDraft;
import headcourse.sheet.SheetComposer;
import headcourse.sheet.SheetContext;
import headcourse.sheet.SheetContext.Turn;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/** The ribs of centrings at 1:1, right half, over as many tiles as the curve passes through. */
public final class RibSheets implements SheetComposer {
  private static final Lettering TITLE = new Lettering(3.5, true);
  private static final Lettering MARK = new Lettering(3.5, false);
  private static final double ENDLESS = 1e6;

  /** Places of the tiles' grid that are tried each way. */
  private static final int STEPS = 6;

  /** Between places of a curve that tiles are counted by, mm. */
  private static final double APART = 2;

  @Override
  public Bundle bundle() {
    return Bundle.FULL_SIZE;
  }

  @Override
  public List<PageDraft> compose(SheetContext c) {
    List<PageDraft> pages = new ArrayList<>();
    for (HeadWork head : c.work().heads()) {
      Optional<Rib> rib = Rib.of(head, c.job().props().lagging().mm());
      rib.ifPresent(r -> pages.addAll(pages(c, head.layout().opening().mark(), r)));
    }
    return pages;
  }

  private static List<PageDraft> pages(SheetContext c, String mark, Rib rib) {
    Grid grid = fewest(c, rib);
    Box box = grid.box;
    Tiling tiling = grid.tiling;
    int printed = grid.crossed(c, rib);
    String title = c.say("fullsize.rib", mark, c.format().withUnit(c.job().props().lagging()));
    List<PageDraft> pages = new ArrayList<>();
    for (int row = 0; row < tiling.rows(); row++) {
      for (int column = 0; column < tiling.columns(); column++) {
        String name = Tiling.name(row, column);
        String label = mark + "-" + c.label("fullsize.label-rib") + "-" + name;
        PageDraft page =
            c.paper().roll()
                ? TilePage.offRoll(c, box.height(), label)
                : c.page(tiling.turn(), label, c.say("fullsize.ribs"));
        Box w = TilePage.window(page);
        Similarity view = grid.view(w, row, column);
        List<Path> runs = TileClip.inside(rib.curve().transformed(view), w);
        if (runs.isEmpty()) {
          continue;
        }
        boolean right = column < tiling.columns() - 1;
        boolean below = row < tiling.rows() - 1;
        boolean left = column > 0;
        boolean above = row > 0;
        Board b = page.board();
        b.group(Role.LINES, "", "", g -> TilePage.cutMarks(g, w, left, right, above, below));
        b.group(Role.LINES, "", title, g -> runs.forEach(r -> g.stroke(r, Pen.CUT)));
        ticks(c, b, rib, view, w);
        if (pages.isEmpty()) {
          page.bookmark(1, c.say("fullsize.rib-short", mark), "rib-" + mark, w.minY());
        }
        foot(c, page, c.say("fullsize.tile", name, printed) + "   " + title);
        pages.add(page);
      }
    }
    return pages;
  }

  /**
   * How a rib is spread over pages.
   *
   * @param lie the rib as it lies, level or along its chord
   * @param right how far right of the first tile's edge it begins, mm
   * @param down how far down
   */
  private record Grid(Similarity lie, Box box, Tiling tiling, double right, double down) {
    Similarity view(Box w, int row, int column) {
      double x = w.minX() - column * (w.width() - Tiling.OVERLAP) - box.minX() + right;
      double y = w.minY() - row * (w.height() - Tiling.OVERLAP) + box.maxY() + down;
      return lie.then(new Similarity(1, 0, true, x, y));
    }

    /** How many tiles its curve passes through; the others are not printed. */
    int crossed(SheetContext c, Rib rib) {
      Box w = TilePage.window(c.page(tiling.turn(), "", ""));
      if (c.paper().roll()) {
        return tiling.tiles();
      }
      int n = 0;
      for (int row = 0; row < tiling.rows(); row++) {
        for (int column = 0; column < tiling.columns(); column++) {
          Path on = rib.curve().transformed(view(w, row, column));
          n += TileClip.inside(on, w).isEmpty() ? 0 : 1;
        }
      }
      return n;
    }

    /**
     * How many tiles hold one of the curve's places, which is quick to count.
     *
     * @param places of the curve as it lies
     * @param room of a tile's window
     */
    int holding(List<Point> places, Tiling.Room room) {
      double wide = room.width() - Tiling.OVERLAP;
      double high = room.height() - Tiling.OVERLAP;
      BitSet held = new BitSet(tiling.tiles());
      for (Point p : places) {
        double x = p.x() - box.minX() + right;
        double y = box.maxY() - p.y() + down;
        // A place may lie on two tiles, where they overlap.
        for (int row = first(y, high); row * high <= y && row < tiling.rows(); row++) {
          for (int column = first(x, wide);
              column * wide <= x && column < tiling.columns();
              column++) {
            held.set(row * tiling.columns() + column);
          }
        }
      }
      return held.cardinality();
    }

    private static int first(double at, double step) {
      return Math.max(0, (int) Math.ceil((at - Tiling.OVERLAP) / step - 1));
    }
  }

  /** Level where that takes no more tiles than along its chord; the tiles' grid is moved. */
  private static Grid fewest(SheetContext c, Rib rib) {
    Point from = rib.curve().start();
    Point to = rib.curve().edges().get(rib.curve().edges().size() - 1).to();
    Grid best = null;
    int least = Integer.MAX_VALUE;
    boolean roll = c.paper().roll();
    for (double angle : roll ? new double[] {0} : new double[] {0, -to.minus(from).angle()}) {
      Similarity lie = angle == 0 ? Similarity.IDENTITY : Similarity.turn(angle);
      Box box = rib.box(lie);
      List<Point> places = places(rib.curve().transformed(lie));
      for (Turn turn : Turn.values()) {
        Tiling.Room room = TilePage.room(c, turn);
        double high = roll ? ENDLESS : room.height();
        int steps = roll ? 1 : STEPS;
        for (int i = 0; i < steps * steps; i++) {
          double right = (room.width() - Tiling.OVERLAP) * (i / steps) / STEPS;
          double down = roll ? 0 : (high - Tiling.OVERLAP) * (i % steps) / STEPS;
          int columns = Tiling.count(box.width() + right, room.width());
          int rows = Tiling.count(box.height() + down, high);
          Grid grid = new Grid(lie, box, new Tiling(turn, false, columns, rows), right, down);
          int held = roll ? grid.tiling.tiles() : grid.holding(places, room);
          if (held < least) {
            least = held;
            best = grid;
          }
        }
      }
    }
    return best;
  }

  private static List<Point> places(Path curve) {
    List<Point> places = new ArrayList<>();
    for (Edge e : curve.edges()) {
      int steps = (int) Math.ceil(e.length() / APART);
      for (int i = 0; i <= steps; i++) {
        places.add(e.at((double) i / Math.max(1, steps)));
      }
    }
    return places;
  }

  // All lines first, so that no text is written where one will stand.
  private static void ticks(SheetContext c, Board board, Rib rib, Similarity view, Box w) {
    List<Rib.Tick> here = new ArrayList<>();
    for (Rib.Tick t : rib.ticks()) {
      List<Path> runs = TileClip.inside(Path.through(view.apply(t.from()), view.apply(t.to())), w);
      if (!runs.isEmpty()) {
        here.add(t);
        board.group(
            Role.LINES,
            "",
            "",
            g -> runs.forEach(r -> g.stroke(r, t.word() ? Pen.CENTRE : Pen.EDGE)));
      }
    }
    for (Rib.Tick t : here) {
      Point to = view.apply(t.to());
      String text = t.word() ? c.say(t.text()) : t.text();
      List<Mark.Label> tries = new ArrayList<>();
      for (Align align : List.of(Align.START, Align.END, Align.MIDDLE)) {
        double side = align == Align.START ? 2 : align == Align.END ? -2 : 0;
        for (double down : new double[] {3.5, 8, 12, 0}) {
          tries.add(new Mark.Label(new Point(to.x() + side, to.y() + down), text, MARK, align, 0));
        }
      }
      tries.removeIf(l -> !inside(l, w));
      board.group(Role.DIMENSIONS, "", "", g -> g.firstFree(tries, 0.8));
    }
  }

  private static boolean inside(Mark.Label l, Box w) {
    double wide = headcourse.drawing.LabelShape.width(l.text(), l.lettering());
    double left =
        l.at().x() - (l.align() == Align.START ? 0 : l.align() == Align.END ? wide : wide / 2);
    return left > w.minX() + 1
        && left + wide < w.maxX() - 1
        && l.at().y() < w.maxY() - 1
        && l.at().y() - l.lettering().height() > w.minY() + 1;
  }

  private static void foot(SheetContext c, PageDraft page, String text) {
    TilePage.bars(c, page);
    Box a = page.area();
    double x = a.minX() + 13.5;
    FitLine.draw(page.board(), x, a.maxY() - 11, a.maxX() - x - 4, text, TITLE);
  }
}
