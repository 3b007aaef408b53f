package headcourse.sheet;

import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.geom.Box;
import headcourse.job.Bundle;
import headcourse.sheet.SheetContext.Turn;
import java.util.List;

/** A sheet of the tests' own: one page for notes at the end of the wall bundle. */
public final class NotepadSheet implements SheetComposer {
  @Override
  public Bundle bundle() {
    return Bundle.WALL;
  }

  @Override
  public List<PageDraft> compose(SheetContext c) {
    PageDraft page = c.page(Turn.PORTRAIT, "notes", c.say("added.notepad"));
    Box area = page.area();
    page.board()
        .text(
            area.minX(),
            area.minY() + 20,
            c.say("added.notepad"),
            new Lettering(10, true),
            Align.START);
    return List.of(page);
  }
}
