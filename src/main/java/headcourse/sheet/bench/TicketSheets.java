package headcourse.sheet.bench;

import headcourse.geom.Box;
import headcourse.job.Bundle;
import headcourse.sheet.NoRoom;
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
   * @param apart whether soffit pieces follow on pages of their own
   * @param pages rows of each page
   */
  private record Plan(
      Turn turn, int columns, TicketType type, boolean apart, List<List<Row>> pages) {
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

  /**
   * Tickets side by side.
   *
   * @param height the least, mm
   */
  private record Row(List<Ticket> tickets, List<TicketPanels> panels, double height) {
    static Row of(
        SheetContext c, List<Ticket> tickets, TicketType type, double width, boolean apart) {
      List<TicketPanels> panels = new ArrayList<>();
      double height = 0;
      for (Ticket t : tickets) {
        TicketPanels p = new TicketPanels(c.of(t.head()), t, type, width, apart);
        panels.add(p);
        height = Math.max(height, p.height());
      }
      return new Row(tickets, panels, height);
    }
  }

  @Override
  public List<PageDraft> compose(SheetContext c) {
    List<Ticket> tickets = Ticket.of(c.work());
    Plan plan = null;
    for (Turn turn : Turn.values()) {
      double width = c.area(turn).width();
      int widest = Math.max(1, (int) Math.floor((width + GAP) / (LEAST_WIDTH + GAP)));
      for (int columns = 1; columns <= widest; columns++) {
        double w = (width - GAP * (columns - 1)) / columns;
        for (TicketType type : List.of(TicketType.SMALL, TicketType.LARGE)) {
          if (type == TicketType.LARGE && w < LEAST_WIDTH * type.factor()) {
            continue;
          }
          int most = plan == null ? Integer.MAX_VALUE : plan.pages.size();
          Plan p = plan(c, tickets, turn, columns, w, type, false, most);
          if (p != null && (plan == null || p.better(plan))) {
            plan = p;
          }
        }
      }
    }
    for (boolean apart : new boolean[] {false, true}) {
      for (Turn turn : plan == null ? Turn.values() : new Turn[0]) {
        double w = c.area(turn).width();
        Plan p = plan(c, tickets, turn, 1, w, TicketType.TIGHT, apart, Integer.MAX_VALUE);
        if (p != null && (plan == null || p.better(plan))) {
          plan = p;
        }
      }
    }
    if (plan == null) {
      throw new NoRoom("a ticket");
    }
    return pages(c, plan);
  }

  // Null where a ticket is too tall, or where there would be more pages than so many.
  private static Plan plan(
      SheetContext c,
      List<Ticket> tickets,
      Turn turn,
      int columns,
      double w,
      TicketType type,
      boolean apart,
      int most) {
    double room = c.area(turn).height();
    // No ticket is lower than its mark and its view.
    double lowest = TicketSide.least(type);
    int perPage = columns * Math.max(1, (int) Math.floor((room + GAP) / (lowest + GAP)));
    if (leastPages(tickets.size(), perPage) > most) {
      return null;
    }
    List<List<Row>> pages = new ArrayList<>();
    List<Row> page = new ArrayList<>();
    pages.add(page);
    double used = 0;
    for (int i = 0; i < tickets.size(); i += columns) {
      List<Ticket> abreast = tickets.subList(i, Math.min(tickets.size(), i + columns));
      Row row = Row.of(c, abreast, type, w, apart);
      if (row.height > room) {
        return null;
      }
      if (!page.isEmpty() && used + GAP + row.height > room) {
        if (pages.size() + leastPages(tickets.size() - i, perPage) > most) {
          return null;
        }
        page = new ArrayList<>();
        pages.add(page);
        used = 0;
      }
      used += (page.isEmpty() ? 0 : GAP) + row.height;
      page.add(row);
    }
    return new Plan(turn, columns, type, apart, pages);
  }

  private static int leastPages(int tickets, int perPage) {
    return (tickets + perPage - 1) / perPage;
  }

  private static List<PageDraft> pages(SheetContext c, Plan plan) {
    List<PageDraft> drafts = new ArrayList<>();
    String last = "";
    for (List<Row> rows : plan.pages) {
      List<Ticket> ends = rows.get(rows.size() - 1).tickets;
      String first = rows.get(0).tickets.get(0).piece().mark();
      String to = ends.get(ends.size() - 1).piece().mark();
      boolean lone = rows.size() == 1 && ends.size() == 1;
      String marks = lone ? first : first + " … " + to;
      PageDraft page = c.page(plan.turn, marks, c.say("ticket.title"));
      Box area = page.area();
      double w = (area.width() - GAP * (plan.columns - 1)) / plan.columns;
      double spare = area.height() - GAP * (rows.size() - 1);
      for (Row row : rows) {
        spare -= row.height;
      }
      double y = area.minY();
      for (Row row : rows) {
        double least = row.height;
        double h = Math.max(least, Math.min(least + spare / rows.size(), w * TALLEST));
        for (int i = 0; i < row.tickets.size(); i++) {
          Ticket t = row.tickets.get(i);
          Box box = Box.of(area.minX() + i * (w + GAP), y, w, h);
          String opening = t.head().layout().opening().mark();
          if (!opening.equals(last)) {
            page.bookmark(1, opening, "tickets-" + opening, y);
          }
          last = opening;
          page.bookmark(2, t.piece().mark(), "ticket-" + t.piece().mark(), y);
          row.panels.get(i).draw(page.board(), box);
        }
        y += h + GAP;
      }
      drafts.add(page);
    }
    if (plan.apart) {
      drafts.addAll(soffits(c, plan));
    }
    return drafts;
  }

  // Soffit pieces for which their tickets have no room, one under another.
  private static List<PageDraft> soffits(SheetContext c, Plan plan) {
    List<PageDraft> drafts = new ArrayList<>();
    PageDraft page = null;
    double y = 0;
    for (List<Row> rows : plan.pages) {
      for (Row row : rows) {
        for (Ticket t : row.tickets) {
          TicketSoffit soffit = new TicketSoffit(c, t, plan.type);
          Box area = c.area(plan.turn);
          double h = soffit.height(area.width());
          if (h == 0) {
            continue;
          }
          if (page == null || y + h > page.area().maxY()) {
            page = c.page(plan.turn, t.piece().mark() + "-S", c.say("ticket.soffits"));
            drafts.add(page);
            y = page.area().minY();
          }
          soffit.drawApart(page.board(), Box.of(page.area().minX(), y, area.width(), h));
          y += h + GAP;
        }
      }
    }
    return drafts;
  }
}
