package headcourse.sheet;

import headcourse.drawing.Translation;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Sheets of a bundle one after another, where that saves paper the next on the page that the one
 * before leaves half white.
 */
public final class SheetRun {
  /** White between two, mm. */
  private static final double GAP = 10;

  /** With less room than this nothing is begun, mm. */
  private static final double LEAST = 60;

  private final SheetContext context;
  private final List<SheetComposer> sheets;
  private final List<List<PageDraft>> alone;

  private SheetRun(SheetContext context, List<SheetComposer> sheets) {
    this.context = context;
    this.sheets = sheets;
    this.alone = sheets.stream().map(s -> s.compose(context)).toList();
  }

  /** Their pages: as few as there can be, and of those the most sheets on pages of their own. */
  public static List<PageDraft> of(SheetContext context, List<SheetComposer> sheets) {
    return new SheetRun(context, sheets).from(0, null);
  }

  /** The pages from a sheet on; where it shares the page before, that is the first of them. */
  private List<PageDraft> from(int next, PageDraft before) {
    if (next == sheets.size()) {
      return before == null ? List.of() : List.of(before);
    }
    SheetComposer sheet = sheets.get(next);
    List<PageDraft> best = after(before, alone.get(next), next);
    if (before == null || !sheet.follows()) {
      return best;
    }
    Optional<List<PageDraft>> shared = shared(before, sheet);
    if (shared.isPresent()) {
      List<PageDraft> all = after(null, shared.get(), next);
      best = all.size() < best.size() ? all : best;
    }
    return best;
  }

  // The last page is left open for the sheet that follows.
  private List<PageDraft> after(PageDraft before, List<PageDraft> pages, int sheet) {
    List<PageDraft> all = new ArrayList<>();
    if (pages.isEmpty()) {
      return from(sheet + 1, before);
    }
    if (before != null) {
      all.add(before);
    }
    all.addAll(pages.subList(0, pages.size() - 1));
    all.addAll(from(sheet + 1, pages.get(pages.size() - 1)));
    return all;
  }

  private Optional<List<PageDraft>> shared(PageDraft before, SheetComposer sheet) {
    double down =
        GAP + Translation.room(before.board().marks()).map(r -> r.maxY()).orElse(Double.MAX_VALUE);
    if (before.area().maxY() - down < LEAST) {
      return Optional.empty();
    }
    List<PageDraft> pages;
    try {
      pages = sheet.compose(context.beginning(down));
    } catch (NoRoom e) {
      return Optional.empty();
    }
    if (pages.isEmpty()
        || pages.get(0).width() != before.width()
        || pages.get(0).height() != before.height()) {
      return Optional.empty();
    }
    List<PageDraft> all = new ArrayList<>(pages);
    all.set(0, before.with(pages.get(0), 0, 0));
    return Optional.of(all);
  }
}
