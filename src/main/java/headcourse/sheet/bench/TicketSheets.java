package headcourse.sheet.bench;

import headcourse.drawing.Mark.Role;
import headcourse.drawing.Pen;
import headcourse.geom.Box;
import headcourse.geom.Path;
import headcourse.job.Bundle;
import headcourse.job.Language;
import headcourse.sheet.Board;
import headcourse.sheet.PageDraft;
import headcourse.sheet.SheetComposer;
import headcourse.sheet.SheetContext;
import headcourse.sheet.SheetContext.Turn;
import java.util.ArrayList;
import java.util.List;

/** A ticket for every stone that is cut, as many to a page as the paper holds. */
public final class TicketSheets implements SheetComposer {
  private static final double LEAST_WIDTH = 180;
  private static final double LEAST_HEIGHT = 116;

  /** Two languages take more lines. */
  private static final double LEAST_HEIGHT_TWO = 150;

  private static final double GAP = 4;
  private static final double STRIP = 7;
  private static final double STRIP_TWO = 11;

  @Override
  public Bundle bundle() {
    return Bundle.BENCH;
  }

  @Override
  public List<PageDraft> compose(SheetContext c) {
    List<Ticket> tickets = Ticket.of(c.work());
    Turn turn =
        perPage(c, Turn.LANDSCAPE) > perPage(c, Turn.PORTRAIT) ? Turn.LANDSCAPE : Turn.PORTRAIT;
    int columns = columns(c.area(turn));
    int perPage = perPage(c, turn);
    int rows = perPage / columns;
    List<PageDraft> pages = new ArrayList<>();
    for (int first = 0; first < tickets.size(); first += perPage) {
      List<Ticket> some = tickets.subList(first, Math.min(tickets.size(), first + perPage));
      String marks =
          some.size() == 1
              ? some.get(0).piece().mark()
              : some.get(0).piece().mark() + " … " + some.get(some.size() - 1).piece().mark();
      PageDraft page = c.page(turn, marks, c.say("ticket.title"));
      Box area = page.area();
      double w = (area.width() - GAP * (columns - 1)) / columns;
      double h = (area.height() - GAP * (rows - 1)) / rows;
      for (int i = 0; i < some.size(); i++) {
        double x = area.minX() + (i % columns) * (w + GAP);
        double y = area.minY() + (i / columns) * (h + GAP);
        Box box = Box.of(x, y, w, h);
        Ticket t = some.get(i);
        String anchor = "ticket-" + t.piece().mark();
        page.bookmark(2, t.piece().mark(), anchor, y);
        draw(c, page.board(), t, box);
      }
      pages.add(page);
    }
    return pages;
  }

  private static int columns(Box area) {
    return Math.max(1, (int) Math.floor((area.width() + GAP) / (LEAST_WIDTH + GAP)));
  }

  private static int perPage(SheetContext c, Turn turn) {
    Box area = c.area(turn);
    int rows = Math.max(1, (int) Math.floor((area.height() + GAP) / (least(c) + GAP)));
    boolean holds = area.width() >= LEAST_WIDTH && area.height() >= least(c);
    return holds || turn == Turn.PORTRAIT ? columns(area) * rows : 0;
  }

  private static double least(SheetContext c) {
    return c.job().language() == Language.EN_ES ? LEAST_HEIGHT_TWO : LEAST_HEIGHT;
  }

  private static void draw(SheetContext c, Board board, Ticket t, Box box) {
    double left = box.minX() + Math.min(42, box.width() * 0.17);
    double right = box.maxX() - Math.min(108, box.width() * 0.475);
    double middle = right + (box.maxX() - right) * 0.4;
    // The notch is at 1:1, so the stone's thickness sets how deep its panel is.
    double notch = t.piece().thickness().mm() + (c.job().language() == Language.EN_ES ? 36 : 25.5);
    double figures = box.minY() + Math.min(notch, box.height() * 0.56);
    double split = figures + 14;
    double strip = box.maxY() - (c.job().language() == Language.EN_ES ? STRIP_TWO : STRIP);
    board.group(
        Role.TABLE,
        "",
        "",
        b -> {
          b.stroke(Path.rect(box.minX(), box.minY(), box.width(), box.height()), Pen.CUT);
          b.line(left, box.minY(), left, strip, Pen.EDGE);
          b.line(box.minX(), strip, right, strip, Pen.EDGE);
          b.line(right, box.minY(), right, box.maxY(), Pen.EDGE);
          b.line(right, split, box.maxX(), split, Pen.EDGE);
          b.line(right, figures, box.maxX(), figures, Pen.FINE);
          b.line(middle, box.minY(), middle, figures, Pen.FINE);
        });
    new TicketSide(c, t).draw(board, new Box(box.minX(), box.minY(), left, strip));
    new TicketBoxes(c).draw(board, new Box(box.minX(), strip, right, box.maxY()));
    new TicketFace(c, t).draw(board, new Box(left, box.minY(), right, strip));
    new TicketSection(c, t).draw(board, new Box(right, box.minY(), middle, figures));
    new TicketNotch(c, t)
        .draw(
            board,
            new Box(middle, box.minY(), box.maxX(), figures),
            new Box(right, figures, box.maxX(), split));
    new TicketCuts(c, t).draw(board, new Box(right, split, box.maxX(), box.maxY()));
  }
}
