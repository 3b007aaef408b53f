package headcourse.sheet.bench;

import headcourse.bench.HeadWork;
import headcourse.bench.Piece;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.TextFlow;
import headcourse.geom.Box;
import headcourse.job.Bundle;
import headcourse.job.Stock;
import headcourse.sheet.Amounts;
import headcourse.sheet.ColumnShares;
import headcourse.sheet.PageDraft;
import headcourse.sheet.SheetComposer;
import headcourse.sheet.SheetContext;
import headcourse.sheet.Table;
import headcourse.stock.StockPlan;
import headcourse.units.Decimals;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Which blank gives which stones; below, what to order, what fits nothing, what moved, and the runs
 * of one fence where the index has no room for them.
 */
public final class CuttingPlanSheet implements SheetComposer {
  /** Room for a blank's name left of its bar, mm. */
  static final double LABEL = 26;

  private static final Lettering CELL = new Lettering(3.5, false);

  /** Bars that begin the last page together where one would stand there alone. */
  private static final int TOGETHER = 3;

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
    return pages(c, FenceRuns.onPlan(c));
  }

  /** The pages, with the runs of one fence or without. */
  static List<PageDraft> pages(SheetContext c, boolean fence) {
    StockPlan plan = c.work().stock();
    if (plan.blanks().isEmpty() && plan.order().isEmpty() && plan.unfit().isEmpty()) {
      return List.of();
    }
    Sheets wide = new Sheets(c, plan, 0, fence, 0);
    Sheets close = new Sheets(c, plan, CuttingBar.AIR, fence, 0);
    int fewer = wide.all().size() - close.all().size();
    Sheets best = fewer > 0 || fewer == 0 && wide.parted() && !close.parted() ? close : wide;
    if (best.parted()) {
      List<PageDraft> together = new Sheets(c, plan, best.closer, fence, TOGETHER).all();
      return together.size() == best.pages.size() ? together : best.pages;
    }
    return best.pages;
  }

  /** The pages as they fill. */
  private static final class Sheets {
    private final SheetContext c;
    private final StockPlan plan;
    private final double closer;
    private final boolean fence;
    private final int together;
    private final List<PageDraft> pages = new ArrayList<>();
    private PageDraft page;
    private double y;
    private int bars;

    Sheets(SheetContext c, StockPlan plan, double closer, boolean fence, int together) {
      this.closer = closer;
      this.together = together;
      this.fence = fence;
      this.c = c;
      this.plan = plan;
    }

    List<PageDraft> all() {
      next();
      Map<String, Piece> pieces = new TreeMap<>();
      for (HeadWork h : c.work().heads()) {
        h.pieces().forEach(p -> pieces.put(p.mark(), p));
      }
      double longest = plan.blanks().stream().mapToDouble(b -> b.length().mm()).max().orElse(1);
      Box a = page.area();
      double k = (a.width() - LABEL - 2) / longest;
      CuttingBar bar = new CuttingBar(c, pieces, a.minX() + LABEL, a.maxX() - 1, k);
      summary(bar);
      for (StockPlan.CutBlank b : plan.blanks()) {
        double pitch = bar.pitch(b) - closer;
        int before = pages.size();
        if (together > 0 && b == plan.blanks().get(plan.blanks().size() - together)) {
          next();
        }
        need(pitch);
        bars = pages.size() > before ? 1 : bars + 1;
        bar.draw(page.board(), b, a.minX(), y);
        y += pitch;
      }
      offCuts();
      order();
      unfit();
      moved();
      if (fence) {
        FenceRuns runs = new FenceRuns(c);
        table(c.say("plan.fence"), c.say("plan.fence-text"), runs.columns(), runs.rows());
      }
      return pages;
    }

    /** Whether the last bar stands alone on its page, parted from all others. */
    boolean parted() {
      return bars == 1 && plan.blanks().size() > TOGETHER;
    }

    private void next() {
      String label = c.label("plan.label") + (pages.isEmpty() ? "" : "-" + (pages.size() + 1));
      String title = c.say("plan.title");
      page =
          pages.isEmpty() ? c.first(c.upright(), label, title) : c.page(c.upright(), label, title);
      if (pages.isEmpty()) {
        page.bookmark(1, c.say("plan.title"), "plan", page.area().minY());
      }
      pages.add(page);
      y = page.area().minY() + 3;
    }

    private void need(double height) {
      if (y + height > page.area().maxY()) {
        next();
      }
    }

    private void paragraph(Role role, String text, Lettering lettering) {
      Box a = page.area();
      need(TextFlow.height(text, a.width(), lettering));
      page.board()
          .group(
              role,
              "",
              role == Role.HEADING ? text : "",
              g -> y = TextFlow.paragraph(g, a.minX(), y, a.width(), text, lettering));
    }

    private void summary(CuttingBar bar) {
      paragraph(Role.TITLE, c.say("plan.title"), new Lettering(7, true));
      if (plan.blanks().isEmpty()) {
        // What it comes to stands with it, where no page can part the two.
        paragraph(
            Role.NOTES,
            (c.say("plan.no-stock") + " " + String.join(" ", totals())).strip(),
            Lettering.BODY);
      } else {
        boolean off = plan.whole() < plan.blanks().size();
        String key =
            (plan.proved() ? "plan.summary-proved" : "plan.summary") + (off ? "-off-cuts" : "");
        String waste = Decimals.fixed(100 * plan.wasteShare(), 0);
        paragraph(
            Role.NOTES,
            c.say(key, plan.whole(), plan.lowerBound(), waste, plan.blanks().size() - plan.whole()),
            Lettering.BODY);
        String kerf = c.say("plan.kerf", c.format().withUnit(c.job().tools().saw().kerf()));
        String up = bar.saysHeights(plan.blanks()) ? " " + c.say("plan.up") : "";
        paragraph(Role.NOTES, kerf + up, Lettering.BODY);
      }
      for (StockPlan.Saving s : plan.savings()) {
        paragraph(
            Role.NOTES,
            c.say(
                plan.corners() ? "plan.other-width-corners" : "plan.other-width",
                s.opening(),
                c.format().withUnit(s.width()),
                c.format().withUnit(s.instead()),
                s.blanks(),
                plan.blanks().size()),
            Lettering.BODY);
      }
      if (plan.flatRows()) {
        paragraph(Role.NOTES, c.say("plan.rows"), Lettering.BODY);
      }
      if (plan.price() > 0) {
        paragraph(
            Role.NOTES,
            c.say("plan.price", money(plan.price()), money(plan.leastPrice())),
            Lettering.BODY);
      }
      y += 3 - closer;
    }

    private static String money(double amount) {
      return Decimals.fixed(amount, 2);
    }

    private void table(String title, List<Table.Column> weighted, List<List<String>> rows) {
      table(title, "", weighted, rows);
    }

    private void table(
        String title, String text, List<Table.Column> weighted, List<List<String>> rows) {
      Box a = page.area();
      Table table = ColumnShares.table(weighted, rows, CELL, a.width()).cut(a.height() / 2);
      double first = table.part(0, 1).height();
      y += 4 - closer;
      double words = text.isEmpty() ? 0 : TextFlow.height(text, a.width(), Lettering.BODY);
      need(TextFlow.height(title, a.width(), new Lettering(5, true)) + words + first + 2);
      paragraph(Role.HEADING, title, new Lettering(5, true));
      if (!text.isEmpty()) {
        paragraph(Role.NOTES, text, Lettering.BODY);
      }
      y -= 1;
      int row = 0;
      while (row < table.rows().size()) {
        Table.Drawn drawn = table.draw(page.board(), a.minX(), y, a.maxY(), row);
        y = drawn.bottom() + 2;
        row = drawn.nextRow();
        if (row < table.rows().size()) {
          next();
        }
      }
    }

    private static Table.Column column(String heading, double weight, Align align, boolean bold) {
      return new Table.Column(heading, weight, align, bold);
    }

    private void offCuts() {
      if (plan.offCuts().isEmpty()) {
        return;
      }
      List<List<String>> rows = new ArrayList<>();
      for (StockPlan.OffCut o : plan.offCuts()) {
        rows.add(
            List.of(
                o.id(),
                c.say(o.kind() == Stock.Kind.CORNER ? "plan.corner" : "plan.flat"),
                size(o.length()),
                size(o.face()),
                size(o.returnLeg()),
                o.stones().isEmpty() ? "–" : String.join(", ", o.stones())));
      }
      table(
          c.say("plan.off-cuts"),
          c.say("plan.off-cuts-text"),
          List.of(
              column(c.say("plan.off-cut-number"), 1.3, Align.START, true),
              column(c.say("plan.kind"), 1, Align.START, false),
              column(c.say("plan.length"), 1, Align.END, true),
              column(c.say("plan.face"), 1, Align.END, false),
              column(c.say("plan.return"), 1, Align.END, false),
              column(c.say("plan.off-cut-for"), 2.4, Align.START, false)),
          rows);
    }

    private void order() {
      if (plan.order().isEmpty()) {
        return;
      }
      List<List<String>> rows = new ArrayList<>();
      for (StockPlan.OrderLine o : plan.order()) {
        rows.add(
            List.of(
                o.stock().isEmpty() ? "–" : o.stock(),
                c.say(o.what() == Stock.Kind.CORNER ? "plan.corner" : "plan.flat"),
                Integer.toString(o.count()),
                Integer.toString(o.spares()),
                size(o.length()),
                size(o.face()),
                size(o.returnLeg()),
                size(o.thickness())));
      }
      table(
          c.say("plan.order"),
          List.of(
              column(c.say("plan.mark"), 1, Align.START, true),
              column(c.say("plan.kind"), 1, Align.START, false),
              column(c.say("plan.count"), 1, Align.END, true),
              column(c.say("plan.spares"), 1, Align.END, false),
              column(c.say("plan.length"), 1, Align.END, true),
              column(c.say("plan.face"), 1, Align.END, false),
              column(c.say("plan.return"), 1, Align.END, false),
              column(c.say("plan.thickness"), 1, Align.END, false)),
          rows);
      deliveries();
      if (!plan.blanks().isEmpty()) {
        totals().forEach(t -> paragraph(Role.NOTES, t, Lettering.BODY));
      }
    }

    private List<String> totals() {
      List<String> all = new ArrayList<>();
      total(all, Stock.Kind.CORNER, "plan.sum-corners");
      total(all, Stock.Kind.FLAT, "plan.sum-flats");
      return all;
    }

    /** Prices, and the last day to order. */
    private void deliveries() {
      for (StockPlan.OrderLine o : plan.order()) {
        if (o.price() > 0) {
          paragraph(
              Role.NOTES,
              c.say("plan.order-price", o.stock(), o.count(), money(o.price())),
              Lettering.BODY);
        }
        if (!o.orderBy().isEmpty()) {
          String setting = c.job().info().settingDate();
          paragraph(
              Role.NOTES,
              c.say("plan.order-by", o.stock(), o.orderBy(), o.lead(), setting),
              Lettering.BODY.inBold());
        } else if (o.lead() != null) {
          paragraph(Role.NOTES, c.say("plan.lead", o.stock(), o.lead()), Lettering.BODY);
        }
      }
    }

    // In the units that suppliers sell: pieces, running length of arris, area of flats.
    private void total(List<String> all, Stock.Kind kind, String key) {
      List<StockPlan.OrderLine> of = plan.order().stream().filter(o -> o.what() == kind).toList();
      int count = of.stream().mapToInt(StockPlan.OrderLine::count).sum();
      if (count > 0) {
        Amounts amounts = new Amounts(c.job().units());
        String much =
            kind == Stock.Kind.CORNER
                ? amounts.run(of.stream().mapToDouble(o -> o.running().mm() / 1000).sum())
                : amounts.area(of.stream().mapToDouble(StockPlan.OrderLine::areaM2).sum());
        all.add(c.say(key, count, much));
      }
    }

    private String name(String stone, StockPlan.Part part) {
      return part == StockPlan.Part.SOFFIT ? stone + " " + c.say("plan.soffit") : stone;
    }

    private void unfit() {
      if (plan.unfit().isEmpty()) {
        return;
      }
      List<List<String>> rows =
          plan.unfit().stream()
              .map(
                  u ->
                      List.of(
                          name(u.stone(), u.part()),
                          size(u.length()),
                          size(u.face()),
                          size(u.returnLeg())))
              .toList();
      table(
          c.say("plan.unfit"),
          List.of(
              column(c.say("plan.stone"), 2, Align.START, true),
              column(c.say("plan.length"), 1, Align.END, true),
              column(c.say("plan.face"), 1, Align.END, false),
              column(c.say("plan.return"), 1, Align.END, false)),
          rows);
    }

    private void moved() {
      if (plan.changes().isEmpty()) {
        return;
      }
      List<List<String>> rows =
          plan.changes().stream()
              .map(
                  m ->
                      List.of(
                          name(m.stone(), m.part()),
                          m.from(),
                          m.to().isEmpty() ? c.say("plan.to-order") : m.to()))
              .toList();
      table(
          c.say("plan.moved"),
          List.of(
              column(c.say("plan.stone"), 1, Align.START, true),
              column(c.say("plan.was"), 1, Align.START, false),
              column(c.say("plan.now"), 1, Align.START, true)),
          rows);
    }

    private String size(Length length) {
      return length.isZero() ? "–" : c.format().tape(length);
    }
  }
}
