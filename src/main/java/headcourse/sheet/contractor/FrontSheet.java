package headcourse.sheet.contractor;

import headcourse.drawing.Board;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.TextFlow;
import headcourse.geom.Box;
import headcourse.job.Bundle;
import headcourse.job.JobInfo;
import headcourse.sheet.NoRoom;
import headcourse.sheet.PageDraft;
import headcourse.sheet.SheetComposer;
import headcourse.sheet.SheetContext;
import headcourse.sheet.SheetContext.Turn;
import headcourse.sheet.SheetIndex;
import headcourse.sheet.Table;
import headcourse.sheet.Table.Column;
import headcourse.sheet.elevation.ScaleBar;
import headcourse.sheet.picture.Pictures;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The cover: what the job is, its openings in their wall, and the sheets of the set. */
public final class FrontSheet implements SheetComposer {
  private static final Lettering TITLE = new Lettering(7, true);
  private static final Lettering TEXT = new Lettering(3.5, false);
  private static final Lettering NOTE = Lettering.NOTE;
  private static final double SIDE = 72;
  private static final double CODES = 24;
  private static final double WIDEST = 160;
  private static final double GAP = 6;
  private static final double LINE = NOTE.height() * TextFlow.LEADING;
  private static final double BAR = 14;

  /** The cover of a contractor's set. */
  public FrontSheet() {}

  @Override
  public Bundle bundle() {
    return Bundle.CONTRACTOR;
  }

  /** What the set is called on its cover. */
  private static String title(SheetContext c) {
    String title = c.job().info().title();
    return title.isBlank() ? c.say("picture.title") : title;
  }

  @Override
  public List<PageDraft> compose(SheetContext c) {
    List<PageDraft> pages = new ArrayList<>();
    Box area = c.area(Turn.LANDSCAPE);
    double top = head(c, new Board(), area);
    Place place = place(c, area, top);
    Pictures all = place.pictures;
    if (!all.fits()) {
      throw new NoRoom("the picture of the openings");
    }
    for (int i = 0; i < all.pages(); i++) {
      PageDraft page = c.page(Turn.LANDSCAPE, "", c.say("picture.title"));
      page.scale(all.scale().name());
      Board b = page.board();
      double y = head(c, b, area);
      if (i == 0) {
        page.bookmark(1, c.say("picture.title"), "picture", area.minY());
      }
      all.draw(b, i, area.minX(), y);
      y += all.height(i) + 2;
      double room = area.width() - (place.at == At.BESIDE ? SIDE + GAP : 0);
      String seen = c.say("picture.seen", all.scale().name());
      y = TextFlow.paragraph(b, area.minX(), y, room, seen, NOTE) - LINE;
      ScaleBar.draw(b, c.words(), c.job().units(), all.scale(), area.minX(), y + 5, room);
      if (i == 0 && place.at == At.BESIDE) {
        list(c, SIDE).draw(b, area.maxX() - SIDE, top, area.maxY(), 0);
      } else if (i == 0 && place.at == At.BELOW) {
        list(c, Math.min(WIDEST, area.width()))
            .draw(b, area.minX(), y + BAR + GAP / 2, area.maxY() + 9, 0);
      }
      if (i == 0 && place.at == At.RUN) {
        TextFlow.paragraph(b, area.minX(), y + BAR, area.width(), run(c), NOTE);
      }
      pages.add(page);
    }
    return pages;
  }

  // What the words under the pictures take beyond one line; the longest name of a scale stands for
  // the one that is chosen later.
  private static double more(SheetContext c, double width) {
    String seen = c.say("picture.seen", "1 1/2\" = 1'-0\"");
    return TextFlow.height(seen, Math.max(width, 1), NOTE) - LINE;
  }

  /** Where the list of sheets stands. */
  private enum At {
    BESIDE,
    BELOW,
    /** Below as running text: a table would make the pictures smaller. */
    RUN
  }

  private record Place(At at, Pictures pictures) {}

  private static Place place(SheetContext c, Box area, double top) {
    double high = area.maxY() - top;
    double list = list(c, Math.min(WIDEST, area.width())).height() + GAP;
    high -= more(c, area.width());
    Pictures alone = pictures(c, area.width(), high);
    double side = area.width() - SIDE - GAP;
    Pictures beside = pictures(c, side, high - more(c, side) + more(c, area.width()));
    Pictures over = pictures(c, area.width(), high - list);
    if (as(beside, alone)) {
      return new Place(At.BESIDE, beside);
    }
    if (as(over, alone)) {
      return new Place(At.BELOW, over);
    }
    double run = TextFlow.height(run(c), area.width(), NOTE) + 2;
    return new Place(At.RUN, pictures(c, area.width(), high - run));
  }

  private static boolean as(Pictures one, Pictures other) {
    return one.scale().equals(other.scale()) && one.pages() == other.pages();
  }

  private static Pictures pictures(SheetContext c, double width, double height) {
    return Pictures.of(c.work(), c.words(), width, height - BAR - 2);
  }

  // The job's title and particulars; the upper edge of what follows.
  private static double head(SheetContext c, Board board, Box area) {
    double[] y = {area.minY()};
    board.group(
        Role.TITLE,
        "",
        title(c),
        b ->
            y[0] =
                TextFlow.paragraph(b, area.minX(), area.minY(), area.width(), title(c), TITLE) - 2);
    String said = String.join(" · ", particulars(c));
    return TextFlow.paragraph(board, area.minX(), y[0], area.width(), said, TEXT) + 2;
  }

  private static List<String> particulars(SheetContext c) {
    JobInfo info = c.job().info();
    List<String> all = new ArrayList<>();
    for (String s :
        List.of(
            info.client(),
            info.site(),
            info.mason(),
            info.contract().masonAddress(),
            c.job().stone().name())) {
      if (!s.isBlank()) {
        all.add(s);
      }
    }
    return all;
  }

  private static Table list(SheetContext c, double width) {
    return new Table(
        List.of(
            new Column(c.say("picture.sheet"), CODES, Align.START, true),
            new Column(c.say("picture.shows"), width - CODES, Align.START, false)),
        rows(c),
        NOTE);
  }

  private static String run(SheetContext c) {
    String all =
        rows(c).stream().map(r -> r.get(0) + " " + r.get(1)).collect(Collectors.joining(" · "));
    return c.say("picture.sheets") + ": " + all;
  }

  /** The list of sheets; those of one title share a row. */
  private static List<List<String>> rows(SheetContext c) {
    List<List<String>> rows = new ArrayList<>();
    List<SheetIndex.Entry> all = c.index().entries();
    int from = 0;
    for (int i = 0; i < all.size(); i++) {
      SheetIndex.Entry e = all.get(i);
      if (i + 1 < all.size() && all.get(i + 1).title().equals(e.title())) {
        continue;
      }
      String first = all.get(from).code();
      rows.add(List.of(from == i ? first : first + " … " + e.code(), e.title()));
      from = i + 1;
    }
    return rows;
  }
}
