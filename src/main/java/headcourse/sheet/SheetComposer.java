package headcourse.sheet;

import headcourse.job.Bundle;
import java.util.List;

/** A kind of sheet: one file each, registered in {@code headcourse.sheet.book.SheetBook}. */
public interface SheetComposer {
  /** The bundle it belongs to. */
  Bundle bundle();

  /** Its pages; none where the job has nothing for it. */
  List<PageDraft> compose(SheetContext context);
}
