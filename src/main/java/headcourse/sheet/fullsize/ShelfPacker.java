package headcourse.sheet.fullsize;

import headcourse.sheet.SheetContext.Turn;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Puts outlines that fit a page whole together on as few pages as shelves allow. */
final class ShelfPacker {
  private static final double AIR = 6;

  private ShelfPacker() {}

  /** An outline's place in the window, its box's upper left corner. */
  record Place(Template template, boolean rotated, double x, double y) {}

  /** A page full. */
  record Filled(Turn turn, List<Place> places) {
    /** How far down the page they reach, mm. */
    double depth() {
      return places.stream().mapToDouble(p -> p.y + height(p)).max().orElse(0);
    }
  }

  /** How outlines may be put in order and laid. */
  private static final List<Comparator<Place>> ORDERS =
      List.of(
          Comparator.comparingDouble((Place p) -> -height(p)),
          Comparator.comparingDouble((Place p) -> -width(p) * height(p)),
          Comparator.comparingDouble((Place p) -> -width(p)));

  /**
   * The best of both turns of the page, three orders, and outlines lying, standing or as they are:
   * fewest pages, then the least depth; upright where they need as much.
   */
  static List<Filled> fewestPages(
      List<Template> templates, Tiling.Room portrait, Tiling.Room landscape) {
    List<Filled> best = null;
    for (Turn turn : Turn.values()) {
      Tiling.Room room = turn == Turn.PORTRAIT ? portrait : landscape;
      Tiling.Room other = turn == Turn.PORTRAIT ? landscape : portrait;
      for (Comparator<Place> order : ORDERS) {
        for (Lie lie : Lie.values()) {
          List<Filled> filled = fill(templates, turn, room, other, order, lie);
          if (best == null || better(filled, best)) {
            best = filled;
          }
        }
      }
    }
    return best;
  }

  private enum Lie {
    LYING,
    STANDING,
    AS_IS
  }

  private static boolean better(List<Filled> a, List<Filled> b) {
    return a.size() != b.size() ? a.size() < b.size() : depth(a) < depth(b) - 1e-6;
  }

  private static double depth(List<Filled> pages) {
    return pages.stream().mapToDouble(Filled::depth).sum();
  }

  // First fit; an outline that fits only the other turn gets a page of its own.
  private static List<Filled> fill(
      List<Template> templates,
      Turn turn,
      Tiling.Room room,
      Tiling.Room other,
      Comparator<Place> order,
      Lie lie) {
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
        boolean tall = t.height() > t.width();
        boolean wanted = lie == Lie.LYING ? tall : lie == Lie.STANDING && !tall;
        flat.add(new Place(t, !upright || over && wanted, 0, 0));
      }
    }
    flat.sort(order);
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
