package headcourse.sheet.bench;

import headcourse.bench.HeadWork;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Mark.Role;
import headcourse.job.Bundle;
import headcourse.layout.Side;
import headcourse.sheet.BearingLine;
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
  private static final double TALL = 72;

  private static final double TALLEST = 110;

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
    List<PageDraft> pages = pages(c, heads, TALL);
    try {
      List<PageDraft> larger = pages(c, heads, TALLEST);
      return larger.size() > pages.size() ? pages : larger;
    } catch (NoRoom e) {
      return pages;
    }
  }

  private static List<PageDraft> pages(SheetContext c, List<HeadWork> heads, double tallest) {
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
            head(flow, c, head, tallest);
          }
        });
  }

  private static void head(SheetFlow flow, SheetContext c, HeadWork head, double tallest) {
    Skewback left = Skewback.of(c.job(), head.layout(), Side.LEFT);
    Skewback right = Skewback.of(c.job(), head.layout(), Side.RIGHT);
    var opening = head.layout().opening();
    String label = opening.label().isBlank() ? "" : " · " + opening.label();
    boolean alike = left.alike(right);
    double width = flow.width() / 2;
    SkewbackFigure one = new SkewbackFigure(c, head, left, width, tallest);
    SkewbackFigure two = new SkewbackFigure(c, head, right, width, tallest);
    double height = Math.max(one.height(), two.height());
    flow.heading(opening.mark() + label, height + 16);
    flow.paragraph(
        one.scale().equals(two.scale()) ? one.scale() : one.scale() + " · " + two.scale(), TEXT);
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
    List<List<String>> rows = new ArrayList<>();
    if (alike) {
      rows.add(row(c, head, left, c.say("skew.both")));
    } else {
      rows.add(row(c, head, left, c.say("skew.left")));
      rows.add(row(c, head, right, c.say("skew.right")));
    }
    flow.table(
        List.of(
            new Column(c.say("skew.end"), 30, Align.START, true),
            new Column(c.say("skew.angle"), 28, Align.START, true),
            new Column(c.say("skew.offset"), 36, Align.START, true),
            new Column(c.say("skew.springs"), 44, Align.START, false),
            new Column(c.say("skew.runs-out"), 44, Align.START, false)),
        rows,
        TEXT);
    flow.paragraph(BearingLine.of(c, head), TEXT);
    flow.say(above(left), Lettering.NOTE, length(c, left.plumb()));
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
