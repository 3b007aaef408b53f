package headcourse.sheet.fullsize;

import headcourse.sheet.SheetContext.Turn;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Puts outlines that fit a page whole together on as few pages as shelves allow. */
final class Shelves {
  private static final double AIR = 6;

  private Shelves() {}

  /** An outline's place in the window, its box's upper left corner. */
  record Place(Template template, boolean rotated, double x, double y) {}

  /** A page full. */
  record Filled(Turn turn, List<Place> places) {}

  /** The better of upright and turned pages; upright where they need as many. */
  static List<Filled> fewestPages(
      List<Template> templates, Tiling.Room portrait, Tiling.Room landscape) {
    List<Filled> upright = fill(templates, Turn.PORTRAIT, portrait, landscape);
    List<Filled> turned = fill(templates, Turn.LANDSCAPE, landscape, portrait);
    return turned.size() < upright.size() ? turned : upright;
  }

  // First fit by falling height; an outline that fits only the other turn gets a page of its own.
  private static List<Filled> fill(
      List<Template> templates, Turn turn, Tiling.Room room, Tiling.Room other) {
    List<Page> pages = new ArrayList<>();
    List<Filled> alone = new ArrayList<>();
    List<Place> flat = new ArrayList<>();
    for (Template t : templates) {
      boolean upright = fits(t.width(), t.height(), room);
      boolean over = fits(t.height(), t.width(), room);
      if (!upright && !over) {
        boolean rotated = !fits(t.width(), t.height(), other);
        Turn opposite = turn == Turn.PORTRAIT ? Turn.LANDSCAPE : Turn.PORTRAIT;
        alone.add(new Filled(opposite, List.of(new Place(t, rotated, 0, 0))));
      } else {
        // Lying down keeps shelves low.
        boolean rotated = !upright || (over && t.height() > t.width());
        flat.add(new Place(t, rotated, 0, 0));
      }
    }
    flat.sort(Comparator.comparingDouble((Place p) -> -height(p)));
    for (Place p : flat) {
      if (pages.stream().noneMatch(page -> page.take(p))) {
        Page page = new Page(room);
        page.take(p);
        pages.add(page);
      }
    }
    List<Filled> filled = new ArrayList<>();
    pages.forEach(p -> filled.add(new Filled(turn, List.copyOf(p.places))));
    filled.addAll(alone);
    return filled;
  }

  private static boolean fits(double w, double h, Tiling.Room room) {
    return w <= room.width() && h <= room.height();
  }

  private static double width(Place p) {
    return p.rotated ? p.template.height() : p.template.width();
  }

  private static double height(Place p) {
    return p.rotated ? p.template.width() : p.template.height();
  }

  private static final class Page {
    private final Tiling.Room room;
    private final List<Place> places = new ArrayList<>();
    private final List<double[]> shelves = new ArrayList<>();

    Page(Tiling.Room room) {
      this.room = room;
    }

    // A shelf is {top, height, next x}.
    boolean take(Place p) {
      for (double[] shelf : shelves) {
        if (height(p) <= shelf[1] + 1e-9 && shelf[2] + width(p) <= room.width() + 1e-9) {
          places.add(new Place(p.template, p.rotated, shelf[2], shelf[0]));
          shelf[2] += width(p) + AIR;
          return true;
        }
      }
      double top = 0;
      if (!shelves.isEmpty()) {
        double[] last = shelves.get(shelves.size() - 1);
        top = last[0] + last[1] + AIR;
      }
      if (top + height(p) > room.height() + 1e-9) {
        return false;
      }
      places.add(new Place(p.template, p.rotated, 0, top));
      shelves.add(new double[] {top, height(p), width(p) + AIR});
      return true;
    }
  }
}
