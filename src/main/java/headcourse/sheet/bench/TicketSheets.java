package headcourse.sheet.bench;

import headcourse.geom.Box;
import headcourse.job.Bundle;
import headcourse.sheet.NoRoom;
import headcourse.sheet.PageDraft;
import headcourse.sheet.SheetComposer;
import headcourse.sheet.SheetContext;
import headcourse.sheet.SheetContext.Turn;
import headcourse.sheet.bench.TicketPlan.Way;
import java.util.ArrayList;
import java.util.List;

/** A ticket for every stone that is cut, as many to a page as the paper holds. */
public final class TicketSheets implements SheetComposer {
  private static final double LEAST_WIDTH = 180;
  private static final double GAP = 4;

  @Override
  public Bundle bundle() {
    return Bundle.BENCH;
  }

  /**
   * A page of tickets in rows.
   *
   * @param turn how the page lies
   * @param columns tickets side by side
   * @param type lettering
   * @param way how panels stand
   * @param apart whether soffit pieces follow on pages of their own
   * @param scale of the first ticket's face if it has the page to itself
   */
  private record Filled(
      Turn turn,
      int columns,
      TicketType type,
      Way way,
      boolean apart,
      List<Row> rows,
      double scale) {
    int count() {
      return rows.stream().mapToInt(r -> r.tickets.size()).sum();
    }

    // More tickets, or one with its face larger; then larger lettering; then the fewer columns,
    // the larger the tickets.
    boolean better(Filled o) {
      if (count() != o.count()) {
        return count() > o.count();
      }
      if (count() == 1 && Math.abs(scale - o.scale) > 1e-9) {
        return scale > o.scale;
      }
      double size = type.note().height() + type.body().height();
      double other = o.type.note().height() + o.type.body().height();
      return size != other ? size > other : columns < o.columns;
    }
  }

  /**
   * Tickets side by side.
   *
   * @param height the least, mm
   */
  private record Row(List<Ticket> tickets, List<TicketPlan> panels, double height) {
    static Row of(
        SheetContext c,
        List<Ticket> tickets,
        TicketType type,
        double width,
        Way way,
        boolean apart) {
      List<TicketPlan> panels = new ArrayList<>();
      double height = 0;
      for (Ticket t : tickets) {
        TicketPlan p = way.of(c.of(t.head()), t, type, width, apart);
        panels.add(p);
        height = Math.max(height, p.height());
      }
      return new Row(tickets, panels, height);
    }

    boolean fits(double room) {
      return height <= room && panels.stream().allMatch(TicketPlan::fits);
    }
  }

  @Override
  public List<PageDraft> compose(SheetContext c) {
    List<Ticket> tickets = Ticket.of(c.work());
    List<PageDraft> drafts = new ArrayList<>();
    SoffitPages apart = new SoffitPages(c);
    String last = "";
    int next = 0;
    while (next < tickets.size()) {
      Filled page = next(c, tickets.subList(next, tickets.size()));
      next += page.count();
      drafts.add(page(c, page, last));
      last = tickets.get(next - 1).head().layout().opening().mark();
      if (page.apart) {
        page.rows.forEach(r -> r.tickets.forEach(t -> apart.add(t, page.turn)));
      }
    }
    drafts.addAll(apart.all());
    return drafts;
  }

  private static Filled next(SheetContext c, List<Ticket> left) {
    Filled best = null;
    for (TicketType type : List.of(TicketType.LARGE, TicketType.SMALL)) {
      best = better(c, left, type, Way.ABREAST, false, best);
    }
    if (best == null || best.count() < 2 && left.size() > 1) {
      best = better(c, left, TicketType.TIGHT, Way.ABREAST, false, best);
    }
    // A frame of the user's own may leave little of a page: the shop's paper comes before large
    // figures.
    for (boolean apart : new boolean[] {false, true}) {
      for (Way way : Way.values()) {
        for (TicketType type : TicketType.ALL) {
          if (best == null) {
            best = better(c, left, type, way, apart, null);
          }
        }
      }
    }
    if (best == null) {
      throw new NoRoom("a ticket");
    }
    if (best.count() == 1) {
      for (Way way : Way.values()) {
        for (TicketType type : TicketType.ALL) {
          best = better(c, left.subList(0, 1), type, way, best.apart, best);
        }
      }
    }
    return best;
  }

  private static Filled better(
      SheetContext c, List<Ticket> left, TicketType type, Way way, boolean apart, Filled so) {
    Filled best = so;
    for (Turn turn : Turn.values()) {
      double width = c.area(turn).width();
      int widest = Math.max(1, (int) Math.floor((width + GAP) / (LEAST_WIDTH + GAP)));
      for (int columns = 1; columns <= widest; columns++) {
        double w = (width - GAP * (columns - 1)) / columns;
        // Larger lettering wants more width; a page to itself gives height for it instead.
        if (type == TicketType.LARGE && columns > 1 && w < LEAST_WIDTH * type.factor()) {
          continue;
        }
        Filled page = fill(c, left, turn, columns, w, type, way, apart);
        if (page.count() > 0 && (best == null || page.better(best))) {
          best = page;
        }
      }
    }
    return best;
  }

  private static Filled fill(
      SheetContext c,
      List<Ticket> left,
      Turn turn,
      int columns,
      double w,
      TicketType type,
      Way way,
      boolean apart) {
    double room = c.area(turn).height();
    List<Row> rows = new ArrayList<>();
    double used = 0;
    for (int i = 0; i < left.size(); i += columns) {
      List<Ticket> abreast = left.subList(i, Math.min(left.size(), i + columns));
      Row row = Row.of(c, abreast, type, w, way, apart);
      double gap = rows.isEmpty() ? 0 : GAP;
      if (!row.fits(room - used - gap)) {
        break;
      }
      used += gap + row.height;
      rows.add(row);
    }
    double scale = rows.isEmpty() ? 0 : rows.get(0).panels.get(0).scale(room);
    return new Filled(turn, columns, type, way, apart, rows, scale);
  }

  /**
   * The page, drawn.
   *
   * @param before the opening of the ticket before its first
   */
  private static PageDraft page(SheetContext c, Filled plan, String before) {
    String last = before;
    List<Row> rows = plan.rows;
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
      double h = row.height + spare / rows.size();
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
    return page;
  }
}
