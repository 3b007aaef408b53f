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
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/**
 * A blank as a bar: its length to scale, the stones on it with their rakes, kerfs white between
 * them, and below it where each stone begins, from the blank's left end. Soffit strips lie in it
 * one above the other, as they are ripped.
 */
final class CuttingBar {
  /** Least height of a bar, mm. */
  private static final double BAR = 11;

  /** Height of a strip in which its mark can be read, mm. */
  private static final double STRIP = 4.6;

  /** What a bar and its figures take beside the bar's own height, mm. */
  private static final double FOOT = 8.8;

  private static final Lettering FROM = new Lettering(3.5, true);

  /** Air between two figures, mm. */
  private static final double BETWEEN = 1.6;

  private final SheetContext c;
  private final Map<String, Piece> pieces;
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
  }

  /** Height that a blank's bar and its figures take. */
  static double pitch(StockPlan.CutBlank blank) {
    return bar(blank) + FOOT;
  }

  /** As high as its lowest strip needs to be. */
  private static double bar(StockPlan.CutBlank blank) {
    double bar = BAR;
    for (StockPlan.Cut cut : blank.cuts()) {
      if (strip(cut)) {
        bar = Math.max(bar, STRIP * blank.face().mm() / cut.high().mm());
      }
    }
    return Math.min(bar, 3 * BAR);
  }

  void draw(Board board, StockPlan.CutBlank blank, double left, double y) {
    double bar = bar(blank);
    board.group(
        Role.FIGURE,
        "",
        blank.id(),
        g -> {
          g.text(left, y + 4.5, blank.id(), fit(blank.id(), x0 - left - 1), Align.START);
          String length = c.format().withUnit(blank.length());
          g.text(left, y + 9.5, length, Lettering.NOTE, Align.START);
          g.outline(Path.rect(x0, y, blank.length().mm() * k, bar), Shade.WHITE, Pen.EDGE);
          List<Path> paths = blank.cuts().stream().map(cut -> path(blank, cut, y)).toList();
          paths.forEach(p -> g.outline(p, Shade.STONE, Pen.CUT));
          List<String> below = new ArrayList<>();
          List<Double> wanted = new ArrayList<>();
          int next;
          for (int i = 0; i < paths.size(); i = next) {
            List<String> outside = new ArrayList<>();
            StockPlan.Cut cut = blank.cuts().get(i);
            String rip = strip(cut) ? c.say("plan.rip", c.format().tape(cut.high())) : "";
            boolean told = rip.isEmpty();
            for (next = i; next < paths.size() && (next == i || above(blank, next)); next++) {
              String name = name(blank.cuts().get(next));
              Box box = paths.get(next).bounds();
              if (!rip.isEmpty() && mark(g, name + " " + rip, box)) {
                told = true;
              } else if (!mark(g, name, box) && !mark(g, blank.cuts().get(next).stone(), box)) {
                outside.add(name);
              }
            }
            String from = c.format().tape(cut.at()) + (told ? "" : " " + rip);
            below.add(outside.isEmpty() ? from : String.join(", ", outside) + ": " + from);
            wanted.add(x0 + cut.at().mm() * k);
          }
          waste(g, blank, y + bar / 2);
          figures(g, wanted.stream().mapToDouble(w -> w).toArray(), below, left + 1, y + bar);
        });
  }

  private static boolean strip(StockPlan.Cut cut) {
    return cut.part() == StockPlan.Part.SOFFIT;
  }

  /** Whether a strip lies beside the one before it. */
  private static boolean above(StockPlan.CutBlank blank, int i) {
    return blank.cuts().get(i).up().isPositive();
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
    return strip(cut) ? cut.stone() + " " + c.words().each("plan.soffit").get(0) : cut.stone();
  }

  private static boolean mark(Board g, String mark, Box b) {
    List<Mark.Label> tries = new ArrayList<>();
    for (double h : new double[] {5, 3.5, 2.5}) {
      for (double aside : new double[] {0, -0.08, 0.08, -0.16, 0.16, -0.24, 0.24}) {
        Point at = new Point(b.centre().x() + aside * b.width(), b.centre().y() + h / 2);
        tries.add(new Mark.Label(at, mark, new Lettering(h, true), Align.MIDDLE, 0));
      }
    }
    return g.firstFree(tries, 0.4);
  }

  private void waste(Board g, StockPlan.CutBlank blank, double middle) {
    if (!blank.waste().isPositive()) {
      return;
    }
    String w = c.say("plan.waste", c.format().tape(blank.waste()));
    double end = x0 + blank.length().mm() * k;
    List<Mark.Label> tries = new ArrayList<>();
    for (String text : List.of(w, c.format().tape(blank.waste()))) {
      tries.add(
          new Mark.Label(new Point(end - 1.2, middle + 1.2), text, Lettering.NOTE, Align.END, 0));
      tries.add(
          new Mark.Label(new Point(end - 1.2, middle), text, Lettering.NOTE, Align.MIDDLE, 90));
    }
    g.firstFree(tries, 0.4);
  }

  /** Between the sheet's edges, smaller where they would not stand there side by side. */
  private void figures(Board g, double[] wanted, List<String> texts, double low, double y) {
    Lettering lettering = FROM;
    double[] widths = widths(texts, lettering);
    if (Arrays.stream(widths).map(w -> w + BETWEEN).sum() - BETWEEN > right - low) {
      lettering = new Lettering(Lettering.LEAST, true);
      widths = widths(texts, lettering);
    }
    double[] at = Spread.side(wanted, widths, BETWEEN, low, right);
    for (int i = 0; i < at.length; i++) {
      g.line(wanted[i], y + 0.6, at[i], y + 2, Pen.FINE);
      double base = y + 2.8 + LabelShape.above(texts.get(i), lettering);
      g.text(at[i], base, texts.get(i), lettering, Align.START);
    }
  }

  private static double[] widths(List<String> texts, Lettering lettering) {
    return texts.stream().mapToDouble(t -> LabelShape.width(t, lettering)).toArray();
  }

  private Path path(StockPlan.CutBlank blank, StockPlan.Cut cut, double y) {
    double at = cut.at().mm();
    PlacedStone s = pieces.get(cut.stone()).stone();
    if (strip(cut)) {
      double share = bar(blank) / blank.face().mm();
      double high = cut.high().mm() * share;
      double low = y + bar(blank) - cut.up().mm() * share;
      return Path.rect(x0 + at * k, low - high, cut.extent().mm() * k, high);
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
    List<Point> on = new ArrayList<>();
    for (Point p : List.of(ll, lr, ur, ul)) {
      Vec v = p.minus(new Point(b.minX(), b.minY()));
      double x = at + (cut.turned() ? b.width() - v.x() : v.x());
      // Turned end for end in its own plane, what was lower left is upper right.
      boolean low = (p == ll || p == lr) != cut.turned();
      on.add(new Point(x0 + x * k, low ? y + bar(blank) : y));
    }
    return Path.polygon(on);
  }
}
