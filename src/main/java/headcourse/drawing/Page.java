package headcourse.drawing;

import java.util.List;

/**
 * One page.
 *
 * @param width mm
 * @param height mm
 * @param label page label, as in {@code D1-2}
 * @param title what a reader's list of pages calls it
 * @param marks in the order of painting
 * @param bookmarks entries for the outline tree that lead to this page
 */
public record Page(
    double width,
    double height,
    String label,
    String title,
    List<Mark> marks,
    List<Bookmark> bookmarks) {
  /** Copies the lists. */
  public Page {
    marks = List.copyOf(marks);
    bookmarks = List.copyOf(bookmarks);
  }

  /** The same page with other marks. */
  public Page with(List<Mark> others) {
    return new Page(width, height, label, title, others, bookmarks);
  }

  /**
   * An entry in the outline tree.
   *
   * @param level 1 for openings, 2 for stones
   * @param text what it says
   * @param anchor name for links, unique in the bundle
   * @param y where on the page, mm from the top
   */
  public record Bookmark(int level, String text, String anchor, double y) {}
}
