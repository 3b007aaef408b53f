package headcourse.stock;

import java.util.List;

/**
 * Raises the floor under the cost until it meets a choice: what costs no more than the floor is
 * searched completely, and where there is nothing the floor goes up a tick.
 */
final class FanProof {
  private static final Pile.Cost ANY =
      new Pile.Cost(Long.MAX_VALUE / 4, Long.MAX_VALUE / 4, Long.MAX_VALUE / 4);

  private final FanPile pile;
  private final PileTypes types;
  private final List<List<FanWay>> ways;
  private final int[] heads;
  private final long limit;
  private Pile.Cost floor;
  private FanDraft best;
  private long steps;

  /**
   * @param ways by head: all ends of every striking point looked at
   * @param floor no choice from those costs less
   * @param best the best known, or null
   * @param limit how many steps it may take
   */
  FanProof(
      FanPile pile,
      PileTypes types,
      List<List<FanWay>> ways,
      Pile.Cost floor,
      FanDraft best,
      long limit) {
    this.pile = pile;
    this.types = types;
    this.ways = ways;
    this.floor = floor;
    this.best = best;
    this.limit = limit;
    this.heads = new int[pile.heads().size()];
    for (int h = 0; h < heads.length; h++) {
      heads[h] = h;
    }
  }

  FanDraft best() {
    return best;
  }

  /** What no choice from the ways looked at costs less than. */
  Pile.Cost floor() {
    return floor;
  }

  long steps() {
    return steps;
  }

  /** True where the best is proved, or that there is none. */
  boolean run() {
    boolean open = true;
    while (open && !met() && (best == null || best.cost().sawn() > floor.sawn())) {
      open = level(new Pile.Cost(floor.sawn() + 1, 0, 0), true);
      if (open && (best == null || best.cost().sawn() > floor.sawn())) {
        floor = new Pile.Cost(floor.sawn() + 1, 0, floor.bearing());
      }
      open &= best != null || floor.sawn() < types.usable[types.size() - 1];
    }
    while (open && !met() && best.cost().imbalance() > floor.imbalance()) {
      open = level(new Pile.Cost(floor.sawn(), floor.imbalance() + 1, 0), false);
      if (open && best.cost().imbalance() > floor.imbalance()) {
        floor = new Pile.Cost(floor.sawn(), floor.imbalance() + 1, floor.bearing());
      } else if (open) {
        floor = best.cost();
      }
    }
    if (met()) {
      return true;
    }
    FanSearch last = search(best == null ? ANY : best.cost(), limit - steps);
    boolean all = last.run();
    steps += last.steps();
    best = last.best() == null ? best : last.best();
    floor = all && best != null ? best.cost() : floor;
    return all || met();
  }

  private boolean met() {
    return best != null && best.cost().compareTo(floor) <= 0;
  }

  private FanSearch search(Pile.Cost cap, long most) {
    return new FanSearch(pile, types, heads, ways, types.count, cap, 0, most);
  }

  /** Looks for a choice that costs less than so much; true where all was looked at. */
  private boolean level(Pile.Cost cap, boolean one) {
    boolean less = best != null && best.cost().compareTo(cap) < 0;
    FanSearch search = search(less ? best.cost() : cap, (limit - steps) / 2);
    boolean all = (one ? search.untilFirst() : search).run();
    steps += search.steps();
    best = search.best() == null ? best : search.best();
    return all;
  }
}
