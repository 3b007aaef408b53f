package headcourse.sheet;

import headcourse.drawing.Translation;
import headcourse.geom.Box;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Puts pages that leave much of a large paper white together on one sheet, in their order: beside
 * the one before where there is room, else under it.
 */
public final class SheetPacker {
  /** White between two, mm. */
  private static final double GAP = 14;

  private final List<PageDraft> sheets = new ArrayList<>();
  private PageDraft sheet;
  private double shelfTop;
  private double shelfBottom;
  private double right;

  private SheetPacker() {}

  /**
   * The sheets.
   *
   * @param drafts pages of one bundle
   */
  public static List<PageDraft> of(List<PageDraft> drafts) {
    SheetPacker g = new SheetPacker();
    drafts.forEach(g::add);
    return g.sheets;
  }

  private void add(PageDraft draft) {
    Optional<Box> found = Translation.room(draft.board().marks());
    if (sheet == null || found.isEmpty() || !alike(draft)) {
      begin(draft, found);
      return;
    }
    Box room = found.get();
    Box area = sheet.area();
    if (fits(room, right + GAP, shelfTop, area)) {
      join(draft, right + GAP - room.minX(), shelfTop - room.minY());
      right += GAP + room.width();
      shelfBottom = Math.max(shelfBottom, shelfTop + room.height());
    } else if (fits(room, area.minX(), shelfBottom + GAP, area)) {
      shelfTop = shelfBottom + GAP;
      join(draft, area.minX() - room.minX(), shelfTop - room.minY());
      right = area.minX() + room.width();
      shelfBottom = shelfTop + room.height();
    } else {
      begin(draft, found);
    }
  }

  private boolean alike(PageDraft draft) {
    return draft.width() == sheet.width()
        && draft.height() == sheet.height()
        && draft.area().equals(sheet.area());
  }

  private static boolean fits(Box room, double x, double y, Box area) {
    return x + room.width() <= area.maxX() + 1e-9 && y + room.height() <= area.maxY() + 1e-9;
  }

  private void begin(PageDraft draft, Optional<Box> room) {
    sheet = draft;
    sheets.add(draft);
    shelfTop = room.map(Box::minY).orElse(draft.area().minY());
    shelfBottom = room.map(Box::maxY).orElse(draft.area().maxY());
    right = room.map(Box::maxX).orElse(draft.area().maxX());
  }

  private void join(PageDraft more, double dx, double dy) {
    PageDraft both = sheet.with(more, dx, dy);
    sheets.set(sheets.size() - 1, both);
    sheet = both;
  }
}
