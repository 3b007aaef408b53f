package headcourse.sheet.bench;

import headcourse.bench.HeadWork;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.TextFlow;
import headcourse.job.Bundle;
import headcourse.layout.Side;
import headcourse.sheet.BearingLine;
import headcourse.sheet.ColumnShares;
import headcourse.sheet.NoRoom;
import headcourse.sheet.PageDraft;
import headcourse.sheet.SheetComposer;
import headcourse.sheet.SheetContext;
import headcourse.sheet.SheetFlow;
import headcourse.sheet.Table.Column;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
import java.util.ArrayList;
import java.util.List;

/** What the wall stones at the ends of arched and jack heads are cut to. */
public final class SkewbackSheet implements SheetComposer {
  private static final Lettering TEXT = new Lettering(3.5, false);

  /** Heights that a drawing may take, mm: the largest that costs no page. */
  private static final double[] TALL = {110, 72, 54, 50};

  /** Between a head's figure, its table and what is said below it, mm. */
  private static final double AIR = 6;

  /** The skewback tickets. */
  public SkewbackSheet() {}

  @Override
  public Bundle bundle() {
    return Bundle.BENCH;
  }

  @Override
  public boolean follows() {
    return true;
  }

  @Override
  public List<PageDraft> compose(SheetContext c) {
    List<HeadWork> heads =
        c.work().heads().stream().filter(h -> h.layout().curve() != null).toList();
    if (heads.isEmpty()) {
      return List.of();
    }
    List<PageDraft> best = null;
    NoRoom none = null;
    for (boolean whole : new boolean[] {true, false}) {
      for (double tall : best == null || !begun(best) ? TALL : new double[0]) {
        try {
          List<PageDraft> pages = pages(c, heads, tall, whole);
          best = best == null || cost(pages) < cost(best) ? pages : best;
        } catch (NoRoom e) {
          none = e;
        }
      }
    }
    if (best == null) {
      throw none;
    }
    return best;
  }

  private static double cost(List<PageDraft> pages) {
    return begun(pages) ? pages.size() : pages.size() + 0.5;
  }

  /** Whether what is said of all heads does not stand on a page alone. */
  private static boolean begun(List<PageDraft> pages) {
    return pages.get(0).board().marks().stream()
        .anyMatch(m -> m instanceof Mark.Group g && g.role() == Role.FIGURE);
  }

  private static List<PageDraft> pages(
      SheetContext c, List<HeadWork> heads, double tallest, boolean whole) {
    String title = c.say("skew.title");
    return SheetFlow.pages(
        c,
        SheetFlow.bestTurn(c),
        c.label("skew.label"),
        title,
        "",
        flow -> {
          flow.page().bookmark(1, title, "skewbacks", flow.page().area().minY());
          flow.say("skew.how", TEXT);
          for (HeadWork head : heads) {
            head(flow, c, head, tallest, whole);
          }
        });
  }

  private static void head(
      SheetFlow flow, SheetContext c, HeadWork head, double tallest, boolean whole) {
    Skewback left = Skewback.of(c.job(), head.layout(), Side.LEFT);
    Skewback right = Skewback.of(c.job(), head.layout(), Side.RIGHT);
    var opening = head.layout().opening();
    String label = opening.label().isBlank() ? "" : " · " + opening.label();
    boolean alike = left.alike(right);
    double width = flow.width() / 2;
    SkewbackFigure one = new SkewbackFigure(c, head, left, width, tallest);
    SkewbackFigure two = new SkewbackFigure(c, head, right, width, tallest);
    double height = Math.max(one.height(), two.height());
    List<List<String>> rows = new ArrayList<>();
    if (alike) {
      rows.add(row(c, head, left, c.say("skew.both")));
    } else {
      rows.add(row(c, head, left, c.say("skew.left")));
      rows.add(row(c, head, right, c.say("skew.right")));
    }
    String scale =
        one.scale().equals(two.scale()) ? one.scale() : one.scale() + " · " + two.scale();
    String bears = BearingLine.of(c, head);
    List<String> above = c.words().each(above(left), length(c, left.plumb()));
    // What an end is cut to is not parted from the head that it belongs to.
    double with =
        height
            + ColumnShares.table(columns(c), rows, TEXT, flow.width()).height()
            + TextFlow.height(bears, flow.width(), TEXT)
            + above.stream()
                .mapToDouble(t -> TextFlow.height(t, flow.width(), Lettering.NOTE))
                .sum()
            + AIR;
    flow.heading(opening.mark() + label + " · " + scale, whole ? with : height + 16);
    flow.figure(
        height,
        (b, x, y) ->
            b.group(
                Role.FIGURE,
                "",
                c.say("skew.title") + " " + opening.mark(),
                g -> {
                  one.draw(g, x, y);
                  two.draw(g, x + width, y);
                }));
    flow.table(columns(c), rows, TEXT);
    flow.paragraph(bears, TEXT);
    above.forEach(t -> flow.paragraph(t, Lettering.NOTE));
  }

  private static List<Column> columns(SheetContext c) {
    return List.of(
        new Column(c.say("skew.end"), 30, Align.START, true),
        new Column(c.say("skew.angle"), 18, Align.START, true),
        new Column(c.say("skew.offset"), 46, Align.START, true),
        new Column(c.say("skew.springs"), 48, Align.START, false),
        new Column(c.say("skew.runs-out"), 48, Align.START, false));
  }

  private static String above(Skewback cut) {
    return cut.ring() ? "skew.then-ring" : cut.plumb() > 0.5 ? "skew.then-plumb" : "skew.then-top";
  }

  private static String length(SheetContext c, double mm) {
    return c.format().withUnit(c.format().grid().snapMm(mm));
  }

  private static List<String> row(SheetContext c, HeadWork head, Skewback cut, String end) {
    return List.of(
        end,
        LengthFormat.degrees(cut.fromHorizontal()),
        cut.level()
            ? c.say("skew.level", length(c, cut.out().mm()))
            : c.say(
                "skew.over",
                length(c, cut.out().mm()),
                length(c, cut.up().mm()),
                length(c, cut.along().mm())),
        place(c, head, cut.from().x() - cut.jamb(), cut.from().y()),
        place(c, head, cut.to().x() - cut.jamb(), cut.to().y()));
  }

  private static String place(SheetContext c, HeadWork head, double out, double up) {
    Length o = c.format().grid().snapMm(out);
    String across =
        o.isZero() ? c.say("skew.on-jamb") : c.say("skew.past-jamb", c.format().withUnit(o));
    return across + ", " + height(c, head.layout().fanned(), c.format().grid().snapMm(up));
  }

  // From the springing line; in a jack arch that is the soffit line.
  private static String height(SheetContext c, boolean soffit, Length up) {
    if (up.isZero()) {
      return c.say(soffit ? "skew.soffit-on" : "skew.springing-on");
    }
    String high = c.format().withUnit(up.abs());
    return up.isPositive()
        ? c.say(soffit ? "skew.soffit-above" : "skew.springing-above", high)
        : c.say(soffit ? "skew.soffit-below" : "skew.springing-below", high);
  }
}
