package headcourse.stock;

import headcourse.stock.ChangeModel.Site;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/**
 * Ways in which several heads may go on, each with one of its own choices.
 *
 * @param ways by way and head the choice taken; those with fewest other keys first
 * @param beyond least number of keys, copies counted, that are otherwise in a way that is not
 *     listed; {@link Integer#MAX_VALUE} where all are
 */
record ChangeWays(List<List<Site>> ways, int beyond) {
  static final ChangeWays NONE = new ChangeWays(List.of(), Integer.MAX_VALUE);

  /** Copies the list. */
  ChangeWays {
    ways = List.copyOf(ways);
  }

  /**
   * All ways of putting choices together, as many as are asked for.
   *
   * @param choices by head, as planned first; those of the first heads change last
   * @param most how many ways to list
   */
  static ChangeWays product(List<List<Site>> choices, int most) {
    int keys = 0;
    for (List<Site> own : choices) {
      keys += own.stream().mapToInt(ChangeWays::other).max().orElse(0);
    }
    List<List<Site>> all = new ArrayList<>();
    for (int others = 0; others <= keys; others++) {
      if (!add(choices, new ArrayList<>(), others, most, all)) {
        return new ChangeWays(all, others);
      }
    }
    return new ChangeWays(all, Integer.MAX_VALUE);
  }

  private static boolean add(
      List<List<Site>> choices, List<Site> way, int others, int most, List<List<Site>> all) {
    if (way.size() == choices.size()) {
      boolean room = others > 0 || all.size() < most;
      if (others == 0 && room) {
        all.add(List.copyOf(way));
      }
      return room;
    }
    for (Site site : choices.get(way.size())) {
      int of = other(site);
      if (of <= others) {
        way.add(site);
        boolean room = add(choices, way, others - of, most, all);
        way.remove(way.size() - 1);
        if (!room) {
          return false;
        }
      }
    }
    return true;
  }

  private static int other(Site site) {
    return site.other() ? site.made().head().terms().opening().count() : 0;
  }

  /** Those in which no head is as told. */
  ChangeWays without(Predicate<Site> not) {
    return new ChangeWays(ways.stream().filter(w -> w.stream().noneMatch(not)).toList(), beyond);
  }

  /** Whether all are listed. */
  boolean complete() {
    return beyond == Integer.MAX_VALUE;
  }
}
