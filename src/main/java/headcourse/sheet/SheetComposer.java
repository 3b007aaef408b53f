package headcourse.sheet;

import headcourse.job.Bundle;
import java.util.List;

/** A kind of sheet: one file each, registered in {@code headcourse.sheet.book.SheetBook}. */
public interface SheetComposer {
  /** The bundle it belongs to. */
  Bundle bundle();

  /**
   * Whether its first page may begin where the sheet before it ends: it then asks {@link
   * SheetContext#first} for it.
   */
  default boolean follows() {
    return false;
  }

  /** Its pages; none where the job has nothing for it. */
  List<PageDraft> compose(SheetContext context);
}
