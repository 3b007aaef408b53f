package headcourse.sheet.bench;

import headcourse.bench.Piece;
import headcourse.drawing.LabelShape;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.Pen;
import headcourse.drawing.Shade;
import headcourse.geom.Box;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Vec;
import headcourse.layout.FaceEdge.Where;
import headcourse.layout.PlacedStone;
import headcourse.sheet.Board;
import headcourse.sheet.SheetContext;
import headcourse.sheet.Spread;
import headcourse.stock.StockPlan;
import headcourse.units.Grid;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A blank as a bar: its length to scale, the stones that stand on its lower edge with their rakes
 * and their share of its height, kerfs white between them, and below it where each stone begins,
 * from the blank's left end.
 */
final class CuttingBar {
  /** Height of the bar, mm. */
  private static final double BAR = 11;

  /** Distance of bars, mm. */
  static final double PITCH = 19.8;

  /** The least distance at which figures are clear of the next bar, mm. */
  static final double CLOSE = 19;

  /** From the base line of a second line to the top of a first, mm. */
  private static final double TWO_LINES = 2 * Lettering.LEAST + 0.8;

  private static final Lettering FROM = new Lettering(3.5, true);

  /** Air between two figures, mm. */
  private static final double BETWEEN = 1.6;

  private final SheetContext c;
  private final Map<String, Piece> pieces;
  private final Map<String, Double> faces = new TreeMap<>();
  private final double x0;
  private final double right;
  private final double k;

  /**
   * Bars on a page.
   *
   * @param x0 where bars begin
   * @param right where the sheet ends
   * @param k paper over true length
   */
  CuttingBar(SheetContext c, Map<String, Piece> pieces, double x0, double right, double k) {
    this.c = c;
    this.pieces = pieces;
    this.x0 = x0;
    this.right = right;
    this.k = k;
    c.job().stock().items().forEach(i -> faces.put(i.mark(), i.face().mm()));
  }

  void draw(Board board, StockPlan.CutBlank blank, double left, double y) {
    board.group(
        Role.FIGURE,
        "",
        blank.id(),
        g -> {
          g.text(left, y + 4.5, blank.id(), fit(blank.id(), x0 - left - 1), Align.START);
          String length = c.format().withUnit(blank.length());
          g.text(left, y + 9.5, length, Lettering.NOTE, Align.START);
          g.outline(Path.rect(x0, y, blank.length().mm() * k, BAR), Shade.WHITE, Pen.EDGE);
          List<Path> paths = blank.cuts().stream().map(cut -> path(blank, cut, y)).toList();
          paths.forEach(p -> g.outline(p, Shade.STONE, Pen.CUT));
          List<String> below = new ArrayList<>();
          double[] wanted = new double[paths.size()];
          for (int i = 0; i < paths.size(); i++) {
            StockPlan.Cut cut = blank.cuts().get(i);
            String from = c.format().tape(cut.at());
            boolean inside = mark(g, name(cut), paths.get(i).bounds());
            below.add(inside ? from : name(cut) + ": " + from);
            wanted[i] = x0 + cut.at().mm() * k;
          }
          offCut(g, blank, paths, y);
          figures(g, wanted, below, left + 1, y + BAR);
        });
  }

  private static Lettering fit(String text, double room) {
    for (double h : new double[] {5, 3.5}) {
      if (LabelShape.width(text, new Lettering(h, true)) <= room) {
        return new Lettering(h, true);
      }
    }
    return new Lettering(Lettering.LEAST, true);
  }

  private String name(StockPlan.Cut cut) {
    return cut.part() == StockPlan.Part.SOFFIT
        ? cut.stone() + " " + c.words().each("plan.soffit").get(0)
        : cut.stone();
  }

  private static boolean mark(Board g, String name, Box b) {
    for (double h : new double[] {5, 3.5, 2.5}) {
      for (double aside : new double[] {0, -0.08, 0.08, -0.16, 0.16, -0.24, 0.24}) {
        Point at = new Point(b.centre().x() + aside * b.width(), b.centre().y() + h / 2);
        if (g.firstFree(List.of(label(at, name, h)), 0.4)) {
          return true;
        }
      }
    }
    // A low piece has its name above it.
    for (double h : new double[] {3.5, 2.5}) {
      if (g.firstFree(List.of(label(new Point(b.centre().x(), b.minY() - 1.3), name, h)), 0.4)) {
        return true;
      }
    }
    // Else what piece of the stone it is stands under the stone's mark.
    int space = name.indexOf(' ');
    if (space < 0) {
      return false;
    }
    String first = name.substring(0, space);
    String second = name.substring(space + 1);
    double x = b.centre().x();
    double inside = b.centre().y() + TWO_LINES / 2;
    return two(g, first, second, x, inside, 3.5)
        || two(g, first, second, x, inside, Lettering.LEAST)
        || two(g, first, second, x, b.minY() - 1, Lettering.LEAST);
  }

  private static boolean two(
      Board g, String first, String second, double x, double y, double height) {
    Mark.Label over = label(new Point(x, y - Lettering.LEAST - 0.8), first, height);
    Mark.Label under = label(new Point(x, y), second, Lettering.LEAST);
    if (g.ink().free(LabelShape.corners(over), 0.3) && g.firstFree(List.of(under), 0.3)) {
      g.add(over);
      return true;
    }
    return false;
  }

  private static Mark.Label label(Point at, String text, double height) {
    return new Mark.Label(at, text, new Lettering(height, true), Align.MIDDLE, 0);
  }

  // What is left whole at the right end, one kerf past the last stone; rounded down, so that what
  // is said to be there is.
  private void offCut(Board g, StockPlan.CutBlank blank, List<Path> paths, double y) {
    double used = paths.stream().mapToDouble(p -> p.bounds().maxX() - x0).max().orElse(0) / k;
    double left = blank.length().mm() - used - c.job().tools().saw().kerf().mm();
    Grid grid = c.format().grid();
    Length whole = grid.ticks(grid.floor(Length.mm(Math.max(0, left + 1e-6))));
    if (!whole.isPositive()) {
      return;
    }
    String rest = c.format().tape(whole);
    double end = x0 + blank.length().mm() * k;
    List<Mark.Label> tries = new ArrayList<>();
    for (String text : List.of(c.say("plan.off-cut", rest), rest)) {
      tries.add(
          new Mark.Label(
              new Point(end - 1.2, y + BAR / 2 + 1.2), text, Lettering.NOTE, Align.END, 0));
      tries.add(
          new Mark.Label(
              new Point(end - 1.2, y + BAR / 2), text, Lettering.NOTE, Align.MIDDLE, 90));
    }
    g.firstFree(tries, 0.4);
  }

  /** Between the sheet's edges, smaller where they would not stand there side by side. */
  private void figures(Board g, double[] wanted, List<String> texts, double low, double y) {
    Lettering lettering = FROM;
    if (sum(widths(texts, lettering)) > right - low) {
      lettering = new Lettering(Lettering.LEAST, true);
    }
    double[] widths = widths(texts, lettering);
    double last = widths.length == 0 ? 0 : widths[widths.length - 1] - BETWEEN;
    double[] at = Spread.along(wanted, widths, low, right - last);
    for (int i = 0; i < at.length; i++) {
      g.line(wanted[i], y + 0.6, at[i], y + 2, Pen.FINE);
      double base = y + 2.8 + LabelShape.above(texts.get(i), lettering);
      g.text(at[i], base, texts.get(i), lettering, Align.START);
    }
  }

  // Of each with the air after it.
  private static double[] widths(List<String> texts, Lettering lettering) {
    return texts.stream().mapToDouble(t -> LabelShape.width(t, lettering) + BETWEEN).toArray();
  }

  private static double sum(double[] widths) {
    double sum = 0;
    for (double w : widths) {
      sum += w;
    }
    return sum;
  }

  private Path path(StockPlan.CutBlank blank, StockPlan.Cut cut, double y) {
    double at = cut.at().mm();
    Piece piece = pieces.get(cut.stone());
    PlacedStone s = piece.stone();
    double face = faces.getOrDefault(blank.stock(), 0.0);
    if (cut.part() == StockPlan.Part.SOFFIT) {
      double high = share(piece.returnDepth().mm(), face);
      return Path.rect(x0 + at * k, y + BAR - high, cut.extent().mm() * k, high);
    }
    // As it lies on the blank: along its own soffit.
    Path own = s.outline().transformed(OwnFrame.of(s));
    Box b = own.bounds();
    var turn = OwnFrame.of(s);
    var soffit = s.edges(Where.SOFFIT);
    var right = s.edges(Where.RIGHT);
    var left = s.edges(Where.LEFT);
    Point ll = turn.apply(soffit.get(0).from());
    Point lr = turn.apply(soffit.get(soffit.size() - 1).to());
    Point ur = right.isEmpty() ? lr : turn.apply(right.get(right.size() - 1).to());
    Point ul = left.isEmpty() ? ll : turn.apply(left.get(0).from());
    double high = share(b.height(), face);
    List<Point> on = new ArrayList<>();
    for (Point p : List.of(ll, lr, ur, ul)) {
      Vec v = p.minus(new Point(b.minX(), b.minY()));
      double x = at + (cut.turned() ? b.width() - v.x() : v.x());
      // Turned end for end in its own plane, what was lower left is upper right.
      boolean low = (p == ll || p == lr) != cut.turned();
      on.add(new Point(x0 + x * k, low ? y + BAR : y + BAR - high));
    }
    return Path.polygon(on);
  }

  // What of the bar's height a stone takes; all of it where the blank is as high as it needs to be.
  private static double share(double height, double face) {
    return face > height ? BAR * height / face : BAR;
  }
}
