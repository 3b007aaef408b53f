package headcourse.sheet.bench;

import headcourse.geom.Box;
import headcourse.sheet.PageDraft;
import headcourse.sheet.SheetContext;
import headcourse.sheet.SheetContext.Turn;
import java.util.ArrayList;
import java.util.List;

/** Soffit pieces for which their tickets have no room, one under another on pages of their own. */
final class SoffitPages {
  private static final double GAP = 4;

  /** What a panel may be given of a page's spare height, of its own. */
  private static final double MOST = 0.5;

  private final SheetContext context;
  private final List<Wanted> wanted = new ArrayList<>();

  SoffitPages(SheetContext context) {
    this.context = context;
  }

  private record Wanted(Ticket ticket, Turn turn) {}

  /**
   * A panel and its least height, mm.
   *
   * @param mark the stone's
   */
  private record Panel(TicketSoffit soffit, String mark, double height) {}

  /** Panels on one page. */
  private record Filled(Turn turn, List<Panel> panels) {
    double used() {
      return panels.stream().mapToDouble(Panel::height).sum() + GAP * (panels.size() - 1);
    }
  }

  /** Adds a ticket's soffit pieces, if it has any, to be printed on paper turned so. */
  void add(Ticket ticket, Turn turn) {
    wanted.add(new Wanted(ticket, turn));
  }

  /** The pages: as few as there can be, and then in the largest lettering. */
  List<PageDraft> all() {
    List<Filled> best = null;
    for (TicketType type : TicketType.ALL) {
      List<Filled> filled = filled(type);
      boolean fits = filled.stream().allMatch(f -> f.used() <= context.area(f.turn).height());
      boolean last = type == TicketType.ALL.get(TicketType.ALL.size() - 1);
      if ((fits || last) && (best == null || filled.size() < best.size())) {
        best = filled;
      }
    }
    return best.stream().map(this::page).toList();
  }

  private List<Filled> filled(TicketType type) {
    List<Filled> pages = new ArrayList<>();
    for (Wanted w : wanted) {
      Box area = context.area(w.turn);
      TicketSoffit soffit = new TicketSoffit(context, w.ticket, type);
      double h = soffit.height(area.width());
      if (h == 0) {
        continue;
      }
      Filled page = pages.isEmpty() ? null : pages.get(pages.size() - 1);
      if (page == null || page.turn != w.turn || page.used() + GAP + h > area.height()) {
        page = new Filled(w.turn, new ArrayList<>());
        pages.add(page);
      }
      page.panels.add(new Panel(soffit, w.ticket.piece().mark(), h));
    }
    return pages;
  }

  private PageDraft page(Filled filled) {
    String label = filled.panels.get(0).mark() + "-S";
    PageDraft page = context.page(filled.turn, label, context.say("ticket.soffits"));
    Box area = page.area();
    double spare = Math.max(0, area.height() - filled.used()) / filled.panels.size();
    double y = area.minY();
    for (Panel p : filled.panels) {
      double h = p.height + Math.min(spare, MOST * p.height);
      p.soffit.drawApart(page.board(), Box.of(area.minX(), y, area.width(), h));
      y += h + GAP;
    }
    return page;
  }
}
