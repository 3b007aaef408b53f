package headcourse.sheet.choose;

import headcourse.choose.Choice;
import headcourse.choose.Choices;
import headcourse.drawing.Board;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.TextFlow;
import headcourse.geom.Box;
import headcourse.sheet.PageDraft;
import headcourse.sheet.SheetContext;
import headcourse.sheet.SheetContext.Turn;
import headcourse.sheet.elevation.ScaleBar;
import headcourse.sheet.picture.Pictures;
import headcourse.sheet.picture.Pictures.Seen;
import java.util.ArrayList;
import java.util.List;

/** The choices in their wall, for the client: as they will be seen, all to one scale. */
final class ChoicesInWall {
  private static final Lettering TITLE = new Lettering(5, true);
  private static final Lettering NOTE = Lettering.NOTE;

  /** What stands under the pictures, mm. */
  private static final double BAR = 14;

  /** Air at the left: a height too short for its figure may have it farther out, mm. */
  private static final double INSET = 10;

  private ChoicesInWall() {}

  static List<PageDraft> pages(SheetContext c, Choices choices) {
    List<Seen> all = new ArrayList<>();
    for (Choice choice : choices.pictured()) {
      all.add(
          new Seen(choice.job(), choice.worked().orElseThrow().heads().get(0), choice.letter()));
    }
    String mark = choices.opening().mark();
    String title = c.say("choose.in-wall", mark);
    Turn turn = Turn.LANDSCAPE;
    Box area = c.area(turn);
    double head = TextFlow.height(title, area.width(), TITLE) + 2;
    String veneer = c.say("choose.veneer");
    double foot = BAR + TextFlow.height(veneer, area.width(), NOTE);
    Pictures pictures =
        Pictures.of(all, c.words(), area.width() - INSET, area.height() - head - foot);
    List<PageDraft> pages = new ArrayList<>();
    for (int i = 0; i < pictures.pages(); i++) {
      PageDraft page = c.page(turn, mark + "-W" + (i == 0 ? "" : i + 1), title);
      page.scale(pictures.scale().name());
      Board b = page.board();
      b.group(
          Role.TITLE,
          "",
          "",
          g -> TextFlow.paragraph(g, area.minX(), area.minY(), area.width(), title, TITLE));
      pictures.draw(b, i, area.minX() + INSET, area.minY() + head);
      double y = area.minY() + head + pictures.height(i) + 2;
      String seen = c.say("picture.seen", pictures.scale().name());
      b.text(area.minX(), y + 2.5, seen, NOTE, Align.START);
      double below =
          ScaleBar.draw(
              b, c.words(), c.job().units(), pictures.scale(), area.minX(), y + 5, area.width());
      TextFlow.paragraph(b, area.minX(), below + 1, area.width(), veneer, NOTE);
      pages.add(page);
    }
    return pages;
  }
}
