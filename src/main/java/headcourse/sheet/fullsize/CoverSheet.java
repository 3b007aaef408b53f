package headcourse.sheet.fullsize;

import headcourse.drawing.Board;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.TextFlow;
import headcourse.geom.Box;
import headcourse.job.Bundle;
import headcourse.sheet.ColumnShares;
import headcourse.sheet.NoRoom;
import headcourse.sheet.PageDraft;
import headcourse.sheet.SheetComposer;
import headcourse.sheet.SheetContext;
import headcourse.sheet.SheetContext.Turn;
import headcourse.sheet.Table;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.List;

/** How to print the full-size sheets, and which outlines they hold. */
public final class CoverSheet implements SheetComposer {
  /** No row of the list is taller, mm. */
  private static final double ROW = 80;

  @Override
  public Bundle bundle() {
    return Bundle.FULL_SIZE;
  }

  @Override
  public List<PageDraft> compose(SheetContext c) {
    Table table = table(c).cut(ROW);
    List<PageDraft> pages = new ArrayList<>();
    int row = 0;
    do {
      PageDraft page =
          c.page(
              Turn.PORTRAIT,
              c.label("fullsize.label") + (pages.isEmpty() ? "" : "-" + (pages.size() + 1)),
              "");
      Box w = TilePage.window(page);
      Board b = page.board();
      TilePage.bars(c, page);
      double y = w.minY();
      if (pages.isEmpty()) {
        page.bookmark(1, c.say("fullsize.how"), "how", y);
        y = instructions(c, b, w);
      }
      Table.Drawn drawn = table.draw(b, w.minX(), y, w.maxY(), row);
      if (drawn.nextRow() == row && !pages.isEmpty()) {
        throw new NoRoom("a row of the outlines' list");
      }
      row = drawn.nextRow();
      pages.add(page);
    } while (row < table.rows().size());
    return pages;
  }

  private static double instructions(SheetContext c, Board b, Box w) {
    double[] y = {w.minY()};
    b.group(
        Role.TITLE,
        "",
        c.say("fullsize.how"),
        g ->
            y[0] =
                TextFlow.paragraph(
                    g, w.minX(), y[0], w.width(), c.say("fullsize.how"), new Lettering(7, true)));
    b.group(
        Role.NOTES,
        "",
        "",
        g -> {
          for (String key :
              List.of("fullsize.scaling", "fullsize.bars", "fullsize.join", "fullsize.caution")) {
            y[0] =
                TextFlow.paragraph(
                        g, w.minX(), y[0] + 1.5, w.width(), c.say(key), new Lettering(3.5, false))
                    + 1;
          }
        });
    return y[0] + 3;
  }

  private static Table table(SheetContext c) {
    Tiling.Room portrait = TilePage.room(c, Turn.PORTRAIT);
    Tiling.Room landscape = TilePage.room(c, Turn.LANDSCAPE);
    if (c.paper().roll()) {
      portrait = new Tiling.Room(portrait.width(), 1e6);
      landscape = portrait;
    }
    List<List<String>> rows = new ArrayList<>();
    for (Template all : Template.of(c.work())) {
      Template t = all.laid(portrait, landscape);
      Tiling tiling = Tiling.fewest(t.width(), t.height(), portrait, landscape);
      rows.add(
          List.of(
              t.marks(),
              Integer.toString(t.count()),
              c.format().tape(Length.mm(all.width())),
              c.format().tape(Length.mm(all.height())),
              Integer.toString(tiling.tiles())));
    }
    for (Template t : Template.leftOut(c.work())) {
      rows.add(
          List.of(
              t.marks(),
              Integer.toString(t.count()),
              c.format().tape(Length.mm(t.width())),
              c.format().tape(Length.mm(t.height())),
              c.say("fullsize.rectangle")));
    }
    double room = TilePage.window(c.page(Turn.PORTRAIT, "", "")).width();
    List<Table.Column> columns =
        List.of(
            new Table.Column(c.say("fullsize.marks"), 5, Align.START, true),
            new Table.Column(c.say("fullsize.count"), 1, Align.END, false),
            new Table.Column(c.say("fullsize.wide"), 1, Align.END, false),
            new Table.Column(c.say("fullsize.high"), 1, Align.END, false),
            new Table.Column(c.say("fullsize.tiles"), 1, Align.END, false));
    return ColumnShares.table(columns, rows, new Lettering(3.5, false), room);
  }
}
