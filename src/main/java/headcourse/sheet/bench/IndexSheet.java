package headcourse.sheet.bench;

import headcourse.bench.HeadWork;
import headcourse.bench.Piece;
import headcourse.drawing.Board;
import headcourse.drawing.LabelShape;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark;
import headcourse.drawing.Mark.Align;
import headcourse.geom.Box;
import headcourse.job.Bundle;
import headcourse.sheet.Amounts;
import headcourse.sheet.PageDraft;
import headcourse.sheet.SheetComposer;
import headcourse.sheet.SheetContext;
import headcourse.sheet.SheetFlow;
import headcourse.units.Units;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The first page of the bench's bundle: every stone with its ticket, each a link to it. */
public final class IndexSheet implements SheetComposer {
  private static final Lettering TEXT = new Lettering(3.5, false);
  private static final Lettering MARK = new Lettering(3.5, true);
  private static final double ROW = 6.6;

  /** Room beside a mark for its ticket's number, mm. */
  private static final double BESIDE = 14;

  /** The index. */
  public IndexSheet() {}

  @Override
  public Bundle bundle() {
    return Bundle.BENCH;
  }

  @Override
  public List<PageDraft> compose(SheetContext c) {
    return pages(c, !FenceRuns.onPlan(c));
  }

  /** The pages, with the runs of one fence or without. */
  static List<PageDraft> pages(SheetContext c, boolean fence) {
    Map<Integer, Ticket> tickets = new TreeMap<>();
    Ticket.of(c.work()).forEach(t -> tickets.put(t.piece().alike(), t));
    String title = c.say("index.title");
    return SheetFlow.pages(
        c,
        SheetFlow.bestTurn(c),
        c.label("index.label"),
        title,
        "",
        flow -> index(flow, c, title, tickets, fence));
  }

  private static void index(
      SheetFlow flow, SheetContext c, String title, Map<Integer, Ticket> tickets, boolean fence) {
    flow.page().bookmark(1, title, "index", flow.page().area().minY());
    flow.say("index.how", TEXT);
    for (HeadWork head : c.work().heads()) {
      var opening = head.layout().opening();
      String name =
          opening.label().isBlank() ? opening.mark() : opening.mark() + " · " + opening.label();
      flow.heading(name, 3 * ROW);
      double cell = 0;
      for (Piece p : head.pieces()) {
        cell = Math.max(cell, LabelShape.width(p.mark(), MARK) + BESIDE);
      }
      int columns = Math.max(1, (int) Math.floor(flow.width() / cell));
      double width = cell;
      for (int i = 0; i < head.pieces().size(); i += columns) {
        List<Piece> row = head.pieces().subList(i, Math.min(head.pieces().size(), i + columns));
        flow.figure(ROW, (b, x, y) -> row(b, x, y, width, row, tickets));
      }
    }
    struck(flow, c);
    cautions(flow, c);
    if (fence) {
      fence(flow, c);
    }
  }

  // Curved heads have no layout board.
  private static void struck(SheetFlow flow, SheetContext c) {
    List<String> marks =
        c.work().heads().stream()
            .filter(h -> LayoutBoardSheet.struck(h))
            .map(h -> h.layout().opening().mark())
            .toList();
    if (!marks.isEmpty()) {
      flow.say("index.struck", TEXT, String.join(", ", marks));
    }
  }

  /** Before the first cut, and in the way of nothing here. */
  private static void fence(SheetFlow flow, SheetContext c) {
    FenceRuns runs = new FenceRuns(c);
    List<List<String>> rows = runs.rows();
    if (!rows.isEmpty()) {
      flow.heading(c.say("plan.fence"), 34);
      flow.say("plan.fence-text", TEXT);
      flow.table(runs.columns(), rows, TEXT);
    }
  }

  /** Here the dust is made and stones are lifted first. */
  private static void cautions(SheetFlow flow, SheetContext c) {
    flow.heading(c.say("wall.cautions"), 24);
    Units units = c.job().units();
    double two = units == Units.INCH ? 50 * 0.45359237 : 20;
    String mass = new Amounts(units).wholeMass(two);
    for (String key : List.of("dust", "eyes", "lift", "load", "code")) {
      c.words().each("wall.caution-" + key, mass).forEach(t -> flow.item("!", t, TEXT));
    }
  }

  private static void row(
      Board board,
      double x,
      double y,
      double width,
      List<Piece> row,
      Map<Integer, Ticket> tickets) {
    for (int i = 0; i < row.size(); i++) {
      Piece p = row.get(i);
      Ticket t = tickets.get(p.alike());
      double left = x + i * width;
      board.text(left, y + 4.6, p.mark(), MARK, Align.START);
      String number = Integer.toString(t.number());
      double after = left + LabelShape.width(p.mark(), MARK) + 2;
      board.text(after, y + 4.6, number, TEXT, Align.START);
      board.add(new Mark.Link(Box.of(left, y, width - 2, ROW), "ticket-" + t.piece().mark()));
    }
  }
}
