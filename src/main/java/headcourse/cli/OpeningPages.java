package headcourse.cli;

import headcourse.drawing.Mark;
import headcourse.drawing.Page;
import headcourse.drawing.PageSet;
import java.util.List;
import java.util.regex.Pattern;

/**
 * The pages of a bundle that one opening needs, as they are in the whole set: nothing is composed
 * anew, because openings share blanks, and a ticket or an outline may stand for stones of several.
 */
final class OpeningPages {
  /** What stands before the pages of the openings, for all of them. */
  private static final Pattern FOR_ALL = Pattern.compile("(index|plan)(-[0-9]+)?");

  /** It has the bars by which a print at full size is checked. */
  private static final Pattern COVER = Pattern.compile("cover(-[0-9]+)?");

  private OpeningPages() {}

  /**
   * The pages.
   *
   * @param openings the marks of all openings, in the job's order
   */
  static PageSet of(PageSet set, String opening, List<String> openings) {
    Pattern stone =
        Pattern.compile("(^|.*[^\\w-])" + Pattern.quote(opening) + "-(K|[LR][0-9]+)\\b.*");
    List<Page> own =
        set.pages().stream()
            .filter(p -> belongs(p, opening, stone) || between(p.label(), opening, openings))
            .toList();
    return new PageSet(
        set.bundle(),
        set.title() + ", " + opening,
        set.author(),
        set.language(),
        set.second(),
        set.date(),
        own);
  }

  private static boolean belongs(Page page, String opening, Pattern stone) {
    String label = page.label();
    return COVER.matcher(label).matches()
        || label.equals(opening)
        || label.startsWith(opening + "-")
        || !FOR_ALL.matcher(label).matches() && names(page.marks(), stone);
  }

  /** Whether a label as {@code W1-R6 … W3-K} has the opening between its ends. */
  private static boolean between(String label, String opening, List<String> openings) {
    String[] ends = label.split(" … ");
    int at = openings.indexOf(opening);
    return ends.length == 2
        && openings.stream().anyMatch(o -> ends[0].startsWith(o + "-") && openings.indexOf(o) <= at)
        && openings.stream()
            .anyMatch(o -> ends[1].startsWith(o + "-") && openings.indexOf(o) >= at);
  }

  private static boolean names(List<Mark> marks, Pattern stone) {
    for (Mark m : marks) {
      if (m instanceof Mark.Label l && stone.matcher(l.text()).matches()
          || m instanceof Mark.Group g && names(g.marks(), stone)) {
        return true;
      }
    }
    return false;
  }
}
