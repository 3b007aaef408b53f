package headcourse.sheet;

import java.util.ArrayList;
import java.util.List;

/**
 * The sheets of a set by their codes, for lists of sheets and for marks that send the reader to
 * another one.
 *
 * @param entries the sheets in order
 */
public record SheetIndex(List<Entry> entries) {
  /** Before anything is composed. */
  public static final SheetIndex EMPTY = new SheetIndex(List.of());

  /**
   * The letter that the US National CAD Standard gives to contractors' shop drawings (from memory),
   * and a dot, which no opening's mark has: read neither as a structural or electrical sheet nor as
   * an opening.
   */
  private static final String CODE = "Z.";

  /** Copies the list. */
  public SheetIndex {
    entries = List.copyOf(entries);
  }

  /**
   * A sheet.
   *
   * @param code its code
   * @param title its title
   * @param anchors what is on it
   */
  public record Entry(String code, String title, List<String> anchors) {
    /** Copies the list. */
    public Entry {
      anchors = List.copyOf(anchors);
    }
  }

  /** The code of the sheet that something is on; a code of usual length where it is not known. */
  public String code(String anchor) {
    return entries.stream()
        .filter(e -> e.anchors.contains(anchor))
        .map(Entry::code)
        .findFirst()
        .orElse(CODE + "8");
  }

  /** The sheets with codes for labels. */
  public static List<PageDraft> coded(List<PageDraft> drafts) {
    List<PageDraft> all = new ArrayList<>();
    for (PageDraft d : drafts) {
      all.add(d.labelled(CODE + (all.size() + 1)));
    }
    return all;
  }

  /** What is on some sheets. */
  public static SheetIndex of(List<PageDraft> drafts) {
    return new SheetIndex(
        drafts.stream()
            .map(
                d ->
                    new Entry(
                        d.label(), d.title(), d.bookmarks().stream().map(b -> b.anchor()).toList()))
            .toList());
  }
}
