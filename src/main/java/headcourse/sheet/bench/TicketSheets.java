package headcourse.sheet.bench;

import headcourse.geom.Box;
import headcourse.job.Bundle;
import headcourse.sheet.PageDraft;
import headcourse.sheet.SheetComposer;
import headcourse.sheet.SheetContext;
import headcourse.sheet.SheetContext.Turn;
import java.util.ArrayList;
import java.util.List;

/** A ticket for every stone that is cut, as many to a page as the paper holds. */
public final class TicketSheets implements SheetComposer {
  private static final double LEAST_WIDTH = 180;
  private static final double GAP = 4;

  /** Taller than this for its width, a ticket is mostly empty. */
  private static final double TALLEST = 0.8;

  @Override
  public Bundle bundle() {
    return Bundle.BENCH;
  }

  /**
   * Tickets in rows.
   *
   * @param turn how the pages lie
   * @param columns tickets side by side
   * @param type lettering
   * @param pages rows of each page, the least height of each row
   */
  private record Plan(Turn turn, int columns, TicketType type, List<List<Double>> pages) {
    boolean better(Plan o) {
      if (pages.size() != o.pages.size()) {
        return pages.size() < o.pages.size();
      }
      if (type != o.type) {
        return type == TicketType.LARGE;
      }
      // As many pages: the fewer columns, the larger the tickets.
      return columns < o.columns;
    }
  }

  @Override
  public List<PageDraft> compose(SheetContext c) {
    List<Ticket> tickets = Ticket.of(c.work());
    Plan plan = null;
    for (Turn turn : Turn.values()) {
      double width = c.area(turn).width();
      int most = Math.max(1, (int) Math.floor((width + GAP) / (LEAST_WIDTH + GAP)));
      for (int columns = 1; columns <= most; columns++) {
        double w = (width - GAP * (columns - 1)) / columns;
        for (TicketType type : List.of(TicketType.SMALL, TicketType.LARGE)) {
          if (type == TicketType.LARGE && w < LEAST_WIDTH * type.factor()) {
            continue;
          }
          if (plan != null && leastPages(c, tickets, turn, columns, type) > plan.pages.size()) {
            continue;
          }
          Plan p = plan(c, tickets, turn, columns, w, type);
          if (p != null && (plan == null || p.better(plan))) {
            plan = p;
          }
        }
      }
    }
    for (Turn turn : plan == null ? Turn.values() : new Turn[0]) {
      Plan p = plan(c, tickets, turn, 1, c.area(turn).width(), TicketType.TIGHT);
      if (p != null && (plan == null || p.better(plan))) {
        plan = p;
      }
    }
    if (plan == null) {
      throw new IllegalStateException("a ticket is taller than the paper " + c.paper().name());
    }
    return pages(c, tickets, plan);
  }

  // No plan of this kind takes fewer pages, since no ticket is lower than its mark and its view.
  private static int leastPages(
      SheetContext c, List<Ticket> tickets, Turn turn, int columns, TicketType type) {
    double least = TicketSide.least(type);
    int rows = Math.max(1, (int) Math.floor((c.area(turn).height() + GAP) / (least + GAP)));
    return (tickets.size() + rows * columns - 1) / (rows * columns);
  }

  private static Plan plan(
      SheetContext c, List<Ticket> tickets, Turn turn, int columns, double w, TicketType type) {
    double room = c.area(turn).height();
    List<List<Double>> pages = new ArrayList<>();
    List<Double> page = new ArrayList<>();
    double used = 0;
    for (int i = 0; i < tickets.size(); i += columns) {
      double row = 0;
      for (Ticket t : tickets.subList(i, Math.min(tickets.size(), i + columns))) {
        row = Math.max(row, new TicketPanels(c, t, type).height(w));
      }
      if (row > room) {
        return null;
      }
      if (!page.isEmpty() && used + GAP + row > room) {
        pages.add(page);
        page = new ArrayList<>();
        used = 0;
      }
      used += (page.isEmpty() ? 0 : GAP) + row;
      page.add(row);
    }
    pages.add(page);
    return new Plan(turn, columns, type, pages);
  }

  private static List<PageDraft> pages(SheetContext c, List<Ticket> tickets, Plan plan) {
    List<PageDraft> drafts = new ArrayList<>();
    int next = 0;
    String last = "";
    for (List<Double> rows : plan.pages) {
      int here = Math.min(tickets.size() - next, rows.size() * plan.columns);
      String first = tickets.get(next).piece().mark();
      String to = tickets.get(next + here - 1).piece().mark();
      String marks = here == 1 ? first : first + " … " + to;
      PageDraft page = c.page(plan.turn, marks, c.say("ticket.title"));
      Box area = page.area();
      double w = (area.width() - GAP * (plan.columns - 1)) / plan.columns;
      double spare = area.height() - GAP * (rows.size() - 1);
      for (double row : rows) {
        spare -= row;
      }
      double y = area.minY();
      for (double row : rows) {
        double h = Math.max(row, Math.min(row + spare / rows.size(), w * TALLEST));
        for (int i = 0; i < plan.columns && next < tickets.size(); i++) {
          Ticket t = tickets.get(next++);
          Box box = Box.of(area.minX() + i * (w + GAP), y, w, h);
          String opening = t.head().layout().opening().mark();
          if (!opening.equals(last)) {
            page.bookmark(1, opening, "tickets-" + opening, y);
          }
          last = opening;
          page.bookmark(2, t.piece().mark(), "ticket-" + t.piece().mark(), y);
          new TicketPanels(c, t, plan.type).draw(page.board(), box);
        }
        y += h + GAP;
      }
      drafts.add(page);
    }
    return drafts;
  }
}
