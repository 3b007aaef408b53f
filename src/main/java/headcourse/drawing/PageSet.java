package headcourse.drawing;

import headcourse.job.Bundle;
import java.util.List;

/**
 * The pages of a bundle.
 *
 * @param bundle which
 * @param title title of the document
 * @param author who drew it; may be empty
 * @param language BCP 47 tag
 * @param second BCP 47 tag of the language that {@link headcourse.text.SecondLanguage} marks, or
 *     empty
 * @param date ISO 8601 date from the job, or empty
 * @param pages at least one
 */
public record PageSet(
    Bundle bundle,
    String title,
    String author,
    String language,
    String second,
    String date,
    List<Page> pages) {
  /** Copies the pages. */
  public PageSet {
    pages = List.copyOf(pages);
  }
}
