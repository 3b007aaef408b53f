package headcourse.sheet.bench;

import headcourse.bench.Piece;
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
import headcourse.geom.Vec;
import headcourse.layout.PlacedStone;
import headcourse.sheet.OwnFrame;
import headcourse.sheet.SheetContext;
import headcourse.stock.StockPlan;
import headcourse.units.Grid;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A blank as a bar: its length to scale, the stones that stand on its lower edge with their rakes
 * and their share of its height, kerfs white between them; below it where each stone's left side
 * leaves the lower edge, and above it where that side meets the stone's upper line, if it leans;
 * both from the blank's left end. Soffit strips lie one above the other as they are ripped; where
 * they are too small for their marks, these are listed below.
 */
final class CuttingBar {
  /** How far what is drawn of a curve may lie off it, mm of the stone. */
  private static final double CURVE = 0.5;

  /** Least height of a bar, mm. */
  private static final double BAR = 11;

  /** Height of a strip in which its mark can be read, mm. */
  private static final double STRIP = 4.6;

  /** What a bar and its figures take beside the bar's own height, mm. */
  private static final double FOOT = 8.8;

  /** How much closer bars may stand with their figures clear of the next one, mm. */
  static final double AIR = 0.8;

  /** From the base line of a second line to the top of a first, mm. */
  private static final double TWO_LINES = 2 * Lettering.LEAST + 0.8;

  private final SheetContext c;
  private final Map<String, Piece> pieces;
  private final double x0;
  private final double right;
  private final double k;

  /** Of each blank, which stones have their marks on them. */
  private final Map<StockPlan.CutBlank, List<Boolean>> inside = new HashMap<>();

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

  /** Height that a blank's bar, its figures and its lists take. */
  double pitch(StockPlan.CutBlank blank) {
    List<String> lists = lists(blank);
    double below = lists.stream().mapToDouble(this::height).sum() + (lists.isEmpty() ? 0 : 2);
    return above(blank) + bar(blank) + below(blank) + below;
  }

  // What figures take above the bar and below it.
  private double above(StockPlan.CutBlank blank) {
    BarFigures row = heads(blank);
    return row.texts().isEmpty() ? 0 : row.height() - 1;
  }

  private double below(StockPlan.CutBlank blank) {
    List<Boolean> named = inside.computeIfAbsent(blank, b -> stones(new Board(), b, 0));
    return Math.max(FOOT, row(blank, named).height() + 0.4);
  }

  // Below the bar; a mark that found no room on its stone stands before the figure.
  private BarFigures row(StockPlan.CutBlank blank, List<Boolean> named) {
    List<Double> wanted = new ArrayList<>();
    List<String> texts = new ArrayList<>();
    int n;
    for (int i = 0; i < blank.cuts().size(); i += n) {
      n = strips(blank, i);
      StockPlan.Cut cut = blank.cuts().get(i);
      OnBlank on = on(cut);
      String from = at(on.foot(), on.footUp(c.job().grid().tick()));
      String name = named.get(texts.size()) || n > 1 ? "" : name(cut) + ": ";
      if (strip(cut)) {
        String rip = c.say("plan.rip", c.format().tape(cut.high()));
        texts.add(from + "\n" + name + rip);
      } else {
        texts.add(name + from);
      }
      wanted.add(x0 + on.low().x() * k);
    }
    return BarFigures.of(wanted, texts, x0, right);
  }

  // A place along the blank, and how high over its lower edge where that is to be said.
  private String at(Length along, Optional<Length> up) {
    String text = c.format().tape(along);
    return up.map(h -> text + " ↑ " + c.format().tape(h)).orElse(text);
  }

  /** Whether a figure of some blank says how high over the lower edge it is. */
  boolean saysHeights(List<StockPlan.CutBlank> blanks) {
    Length tick = c.job().grid().tick();
    return blanks.stream()
        .flatMap(b -> b.cuts().stream())
        .map(this::on)
        .anyMatch(on -> on.footUp(tick).isPresent() || on.headUp(tick).isPresent());
  }

  // Above the bar.
  private BarFigures heads(StockPlan.CutBlank blank) {
    List<Double> wanted = new ArrayList<>();
    List<String> texts = new ArrayList<>();
    for (StockPlan.Cut cut : blank.cuts()) {
      OnBlank on = on(cut);
      if (on.leans(c.job().grid().tick())) {
        wanted.add(x0 + on.high().x() * k);
        texts.add(at(on.head(), on.headUp(c.job().grid().tick())));
      }
    }
    return BarFigures.of(wanted, texts, x0, right);
  }

  /** As high as its lowest strip needs to be. */
  private static double bar(StockPlan.CutBlank blank) {
    double bar = BAR;
    for (int i = 0; i < blank.cuts().size(); i++) {
      if (strips(blank, i) > 1) {
        double high = blank.cuts().get(i).high().mm();
        bar = Math.max(bar, STRIP * blank.face().mm() / high);
      }
    }
    return Math.min(bar, 3 * BAR);
  }

  /** How many strips lie side by side, of which this is the lowest; 1 for a stone by itself. */
  private static int strips(StockPlan.CutBlank blank, int i) {
    int next = i + 1;
    while (next < blank.cuts().size() && blank.cuts().get(next).up().isPositive()) {
      next++;
    }
    return next - i;
  }

  void draw(Board board, StockPlan.CutBlank blank, double left, double top) {
    double bar = bar(blank);
    double y = top + above(blank);
    board.group(
        Role.FIGURE,
        "",
        blank.id(),
        g -> {
          g.text(left, y + 4.5, blank.id(), fit(blank.id(), x0 - left - 1), Align.START);
          String length = c.format().withUnit(whole(blank));
          g.text(left, y + 9.5, length, Lettering.NOTE, Align.START);
          BarFigures row = row(blank, stones(g, blank, y));
          row.draw(g, y + bar, 1);
          // What stands above may have kept a mark off its stone after all.
          double at = y + bar + Math.max(below(blank), row.height() + 0.4);
          for (String list : lists(blank)) {
            at = TextFlow.paragraph(g, left + 1, at, right - left - 1, list, Lettering.NOTE);
          }
        });
  }

  /** The bar with its stones; gives whether the mark of each found room on it. */
  private List<Boolean> stones(Board g, StockPlan.CutBlank blank, double y) {
    double bar = bar(blank);
    g.outline(Path.rect(x0, y, blank.length().mm() * k, bar), Shade.WHITE, Pen.EDGE);
    List<Path> paths = blank.cuts().stream().map(cut -> path(blank, cut, y + bar)).toList();
    paths.forEach(p -> g.outline(p, Shade.STONE, Pen.CUT));
    heads(g, blank, y, bar);
    List<Boolean> found = new ArrayList<>();
    int n;
    for (int i = 0; i < paths.size(); i += n) {
      n = strips(blank, i);
      found.add(marked(g, blank, i, paths.subList(i, i + n)));
    }
    offCut(g, blank, paths, y + bar / 2);
    return found;
  }

  // A stone that is lower than its blank has its upper line within the bar.
  private void heads(Board g, StockPlan.CutBlank blank, double y, double bar) {
    BarFigures row = heads(blank);
    for (StockPlan.Cut cut : blank.cuts()) {
      OnBlank on = on(cut);
      if (on.leans(c.job().grid().tick())) {
        double x = x0 + on.high().x() * k;
        g.line(x, y, x, y + bar * (1 - on.high().y() / blank.face().mm()), Pen.FINE);
      }
    }
    row.draw(g, y, -1);
  }

  /** Puts marks on a stone or on strips side by side; gives whether they found room there. */
  private boolean marked(Board g, StockPlan.CutBlank blank, int i, List<Path> paths) {
    StockPlan.Cut cut = blank.cuts().get(i);
    if (paths.size() == 1) {
      return mark(g, name(cut), paths.get(0).bounds());
    }
    if (!listed(blank, i)) {
      for (int n = 0; n < paths.size(); n++) {
        inside(g, name(blank.cuts().get(i + n)), paths.get(n).bounds());
      }
    }
    return true;
  }

  /** Whether strips side by side are too small for their marks. */
  private boolean listed(StockPlan.CutBlank blank, int i) {
    for (StockPlan.Cut cut : blank.cuts().subList(i, i + strips(blank, i))) {
      double high = bar(blank) * cut.high().mm() / blank.face().mm();
      double wide = LabelShape.width(name(cut), new Lettering(Lettering.LEAST, true));
      if (high < Lettering.LEAST + 0.8 || cut.extent().mm() * k < wide + 1.2) {
        return true;
      }
    }
    return false;
  }

  /** The strips that are too small for their marks. */
  private List<String> lists(StockPlan.CutBlank blank) {
    List<String> lists = new ArrayList<>();
    int n;
    for (int i = 0; i < blank.cuts().size(); i += n) {
      n = strips(blank, i);
      if (n > 1 && listed(blank, i)) {
        List<String> stones =
            blank.cuts().subList(i, i + n).stream().map(StockPlan.Cut::stone).toList();
        String from = c.format().tape(blank.cuts().get(i).at());
        lists.add(c.say("plan.strips", from, String.join(", ", stones)));
      }
    }
    return lists;
  }

  private double height(String list) {
    return TextFlow.height(list, right - (x0 - CuttingPlanSheet.LABEL) - 1, Lettering.NOTE);
  }

  private static boolean strip(StockPlan.Cut cut) {
    return cut.part() == StockPlan.Part.SOFFIT;
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

  private static boolean inside(Board g, String name, Box b) {
    for (double h : new double[] {5, 3.5, 2.5}) {
      for (double aside : new double[] {0, -0.08, 0.08, -0.16, 0.16, -0.24, 0.24}) {
        Point at = new Point(b.centre().x() + aside * b.width(), b.centre().y() + h / 2);
        if (g.firstFree(List.of(label(at, name, h)), 0.4)) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean mark(Board g, String name, Box b) {
    if (inside(g, name, b)) {
      return true;
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

  // An off-cut is said to be no longer than it is.
  private Length whole(StockPlan.CutBlank blank) {
    Grid grid = c.format().grid();
    return blank.offCut() ? grid.ticks(grid.floor(blank.length())) : blank.length();
  }

  // What is left whole at the right end, one kerf past the last stone; rounded down, so that what
  // is said to be there is.
  private void offCut(Board g, StockPlan.CutBlank blank, List<Path> paths, double middle) {
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
    List<String> texts = new ArrayList<>(List.of(c.say("plan.off-cut", rest), rest));
    if (!blank.offCut() && whole.compareTo(Length.inches(1)) >= 0) {
      // Off-cuts of this blank are numbered from its left end; this one is the only one planned.
      texts.add(0, c.say("plan.off-cut", blank.id() + "/1: " + rest));
    }
    for (String text : texts) {
      tries.add(
          new Mark.Label(new Point(end - 1.2, middle + 1.2), text, Lettering.NOTE, Align.END, 0));
      tries.add(
          new Mark.Label(new Point(end - 1.2, middle), text, Lettering.NOTE, Align.MIDDLE, 90));
    }
    g.firstFree(tries, 0.4);
  }

  private Path path(StockPlan.CutBlank blank, StockPlan.Cut cut, double foot) {
    double at = cut.at().mm();
    PlacedStone s = pieces.get(cut.stone()).stone();
    double share = bar(blank) / blank.face().mm();
    if (strip(cut)) {
      double high = cut.high().mm() * share;
      double low = foot - cut.up().mm() * share;
      return Path.rect(x0 + at * k, low - high, cut.extent().mm() * k, high);
    }
    // As it lies on the blank, along its own soffit; every corner as high as it stands there, or a
    // stone whose top is not level would lean otherwise than it does.
    Path own = s.outline().transformed(OwnFrame.of(s));
    Box b = own.bounds();
    List<Point> on = new ArrayList<>();
    for (Point p : own.vertices(CURVE)) {
      Vec v = p.minus(new Point(b.minX(), b.minY()));
      // Turned end for end in its own plane, what was lower left is upper right.
      double x = at + (cut.turned() ? b.width() - v.x() : v.x());
      double up = cut.turned() ? b.height() - v.y() : v.y();
      on.add(new Point(x0 + x * k, foot - up * share));
    }
    return Path.polygon(on);
  }

  private OnBlank on(StockPlan.Cut cut) {
    return OnBlank.of(pieces.get(cut.stone()).stone(), cut);
  }
}
