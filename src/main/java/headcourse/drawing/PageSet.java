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
  /** Copies the pages, but for those that are made as they are asked for. */
  public PageSet {
    pages = pages instanceof PageRun ? pages : List.copyOf(pages);
  }

  /** The pages without their marks: what they are called, their size, their bookmarks. */
  public List<Page> blank() {
    return pages instanceof PageRun run
        ? run.blank()
        : pages.stream().map(p -> p.with(List.of())).toList();
  }

  /**
   * The same for one reader that asks for each page once: pages are forgotten as he has them, in
   * this set too, so that a large bundle is never held in two forms.
   */
  public PageSet once() {
    return pages instanceof PageRun run
        ? new PageSet(bundle, title, author, language, second, date, run.once())
        : this;
  }
}
