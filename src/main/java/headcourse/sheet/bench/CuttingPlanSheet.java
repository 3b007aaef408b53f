package headcourse.sheet.bench;

import headcourse.bench.HeadWork;
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
import headcourse.job.Bundle;
import headcourse.job.Stock;
import headcourse.layout.FaceEdge.Where;
import headcourse.layout.PlacedStone;
import headcourse.sheet.Board;
import headcourse.sheet.PageDraft;
import headcourse.sheet.SheetComposer;
import headcourse.sheet.SheetContext;
import headcourse.sheet.SheetContext.Turn;
import headcourse.sheet.Table;
import headcourse.sheet.TextFlow;
import headcourse.stock.StockPlan;
import headcourse.units.Decimals;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Which blank gives which stones, each as a bar to scale; below, what is to be ordered. */
public final class CuttingPlanSheet implements SheetComposer {
  private static final double BAR = 12;
  private static final double PITCH = 17;
  private static final double LABEL = 26;

  @Override
  public Bundle bundle() {
    return Bundle.BENCH;
  }

  @Override
  public List<PageDraft> compose(SheetContext c) {
    StockPlan plan = c.work().stock();
    if (plan.blanks().isEmpty() && plan.order().isEmpty() && plan.unfit().isEmpty()) {
      return List.of();
    }
    Map<String, Piece> pieces = new TreeMap<>();
    for (HeadWork h : c.work().heads()) {
      h.pieces().forEach(p -> pieces.put(p.mark(), p));
    }
    List<PageDraft> pages = new ArrayList<>();
    PageDraft page = page(c, pages);
    double y = summary(c, page, plan);
    double longest = plan.blanks().stream().mapToDouble(b -> b.length().mm()).max().orElse(1);
    double k = (page.area().width() - LABEL - 2) / longest;
    for (StockPlan.CutBlank b : plan.blanks()) {
      if (y + PITCH > page.area().maxY()) {
        page = page(c, pages);
        y = page.area().minY() + 6;
      }
      bar(c, page.board(), b, pieces, page.area().minX(), y, k);
      y += PITCH;
    }
    order(c, pages, page, y, plan);
    return pages;
  }

  private static PageDraft page(SheetContext c, List<PageDraft> pages) {
    String label = pages.isEmpty() ? "plan" : "plan-" + (pages.size() + 1);
    PageDraft page = c.page(Turn.PORTRAIT, label, c.say("plan.title"));
    if (pages.isEmpty()) {
      page.bookmark(1, c.say("plan.title"), "plan", page.area().minY());
    }
    pages.add(page);
    return page;
  }

  private static double summary(SheetContext c, PageDraft page, StockPlan plan) {
    Box a = page.area();
    double[] y = {a.minY() + 2};
    page.board()
        .group(
            Role.HEADING,
            "",
            c.say("plan.title"),
            g ->
                y[0] =
                    TextFlow.paragraph(
                        g, a.minX(), y[0], a.width(), c.say("plan.title"), new Lettering(7, true)));
    double all = plan.blanks().stream().mapToDouble(b -> b.length().mm()).sum();
    double waste = plan.blanks().stream().mapToDouble(b -> b.waste().mm()).sum();
    String text =
        plan.blanks().isEmpty()
            ? c.say("plan.no-stock")
            : c.say(
                plan.proved() ? "plan.summary-proved" : "plan.summary",
                plan.blanks().size(),
                plan.lowerBound(),
                Decimals.fixed(all == 0 ? 0 : 100 * waste / all, 0));
    page.board()
        .group(
            Role.NOTES,
            "",
            "",
            g -> y[0] = TextFlow.paragraph(g, a.minX(), y[0], a.width(), text, Lettering.BODY));
    return y[0] + 3;
  }

  private static void bar(
      SheetContext c,
      Board board,
      StockPlan.CutBlank blank,
      Map<String, Piece> pieces,
      double left,
      double y,
      double k) {
    double x0 = left + LABEL;
    board.group(
        Role.FIGURE,
        "",
        blank.id(),
        g -> {
          g.text(left, y + 4.5, blank.id(), new Lettering(5, true), Align.START);
          g.text(left, y + 9.5, c.format().withUnit(blank.length()), Lettering.NOTE, Align.START);
          g.outline(Path.rect(x0, y, blank.length().mm() * k, BAR), Shade.WHITE, Pen.EDGE);
          for (StockPlan.Cut cut : blank.cuts()) {
            stone(c, g, cut, pieces.get(cut.stone()), x0, y, k);
          }
          if (blank.waste().isPositive()) {
            String w = c.say("plan.waste", c.format().tape(blank.waste()));
            double end = x0 + blank.length().mm() * k;
            g.firstFree(
                List.of(
                    new Mark.Label(
                        new Point(end - 1.2, y + BAR / 2 + 1.2), w, Lettering.NOTE, Align.END, 0)),
                0.4);
          }
        });
  }

  private static void stone(
      SheetContext c, Board g, StockPlan.Cut cut, Piece piece, double x0, double y, double k) {
    PlacedStone s = piece.stone();
    Box b = s.outline().bounds();
    var soffit = s.edges(Where.SOFFIT);
    var top = s.edges(Where.TOP);
    double[] xs = {
      soffit.get(0).from().x() - b.minX(),
      soffit.get(soffit.size() - 1).to().x() - b.minX(),
      top.get(0).from().x() - b.minX(),
      top.get(top.size() - 1).to().x() - b.minX()
    };
    // Turned end for end in its own plane, what was lower left is upper right.
    double at = cut.at().mm();
    List<Point> on = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      double x = at + (cut.turned() ? b.width() - xs[i] : xs[i]);
      boolean low = i < 2 != cut.turned();
      on.add(new Point(x0 + x * k, low ? y + BAR : y));
    }
    Path path = Path.polygon(on);
    g.outline(path, Shade.STONE, Pen.CUT);
    double mid = path.bounds().centre().x();
    double room = Math.min(Math.abs(xs[1] - xs[0]), Math.abs(xs[2] - xs[3])) * k;
    for (double h : new double[] {5, 3.5, 2.5}) {
      Lettering l = new Lettering(h, true);
      if (LabelShape.width(cut.stone(), l) + 1.5 <= room) {
        g.text(mid, y + 6.6, cut.stone(), l, Align.MIDDLE);
        break;
      }
    }
    String from = c.format().tape(cut.at());
    if (LabelShape.width(from, Lettering.NOTE) + 1.5 <= room) {
      g.text(mid, y + BAR - 1.4, from, Lettering.NOTE, Align.MIDDLE);
    }
  }

  private static void order(
      SheetContext c, List<PageDraft> pages, PageDraft start, double top, StockPlan plan) {
    if (plan.order().isEmpty()) {
      return;
    }
    PageDraft page = start;
    Box a = page.area();
    double y = top + 4;
    if (y + 40 > a.maxY()) {
      page = page(c, pages);
      y = a.minY() + 6;
    }
    y =
        TextFlow.paragraph(
            page.board(), a.minX(), y, a.width(), c.say("plan.order"), new Lettering(5, true));
    List<List<String>> rows = new ArrayList<>();
    for (StockPlan.OrderLine o : plan.order()) {
      rows.add(
          List.of(
              o.stock(),
              c.say(o.what() == Stock.Kind.CORNER ? "plan.corner" : "plan.flat"),
              Integer.toString(o.count()),
              Integer.toString(o.spares()),
              size(c, o.length()),
              size(c, o.face()),
              size(c, o.returnLeg()),
              size(c, o.thickness())));
    }
    double w = a.width() / 8;
    Table table =
        new Table(
            List.of(
                new Table.Column(c.say("plan.mark"), w, Align.START, true),
                new Table.Column(c.say("plan.kind"), w, Align.START, false),
                new Table.Column(c.say("plan.count"), w, Align.END, true),
                new Table.Column(c.say("plan.spares"), w, Align.END, false),
                new Table.Column(c.say("plan.length"), w, Align.END, true),
                new Table.Column(c.say("plan.face"), w, Align.END, false),
                new Table.Column(c.say("plan.return"), w, Align.END, false),
                new Table.Column(c.say("plan.thickness"), w, Align.END, false)),
            rows,
            new Lettering(3.5, false));
    int row = 0;
    while (row < rows.size()) {
      Table.Drawn drawn = table.draw(page.board(), a.minX(), y, a.maxY(), row);
      row = drawn.nextRow();
      if (row < rows.size()) {
        page = page(c, pages);
        y = a.minY() + 6;
      }
    }
  }

  private static String size(SheetContext c, Length length) {
    return length.isZero() ? "–" : c.format().tape(length);
  }
}
