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
  private final Pile.Cost beat;
  private FanDraft best;
  private long steps;

  /**
   * @param ways by head: all ends of every striking point looked at
   * @param floor no choice from those costs less
   * @param best the best known, or null
   * @param beat only what costs less than this is of use, or null
   * @param limit how many steps it may take
   */
  FanProof(
      FanPile pile,
      PileTypes types,
      List<List<FanWay>> ways,
      Pile.Cost floor,
      FanDraft best,
      Pile.Cost beat,
      long limit) {
    this.pile = pile;
    this.types = types;
    this.ways = ways;
    this.floor = floor;
    this.best = best;
    this.beat = beat == null ? ANY : beat;
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

  /** True where it is proved that nothing costs less than the best and what was to be beaten. */
  boolean run() {
    boolean open = true;
    while (open && !met() && cap().sawn() > floor.sawn()) {
      open = level(new Pile.Cost(floor.sawn() + 1, 0, 0), true);
      if (open && cap().sawn() > floor.sawn()) {
        floor = new Pile.Cost(floor.sawn() + 1, 0, floor.bearing());
      }
      open &= cap() != ANY || floor.sawn() < types.usable[types.size() - 1];
    }
    while (open && !met() && cap().imbalance() > floor.imbalance()) {
      open = level(new Pile.Cost(floor.sawn(), floor.imbalance() + 1, 0), false);
      if (open && cap().imbalance() > floor.imbalance()) {
        floor = new Pile.Cost(floor.sawn(), floor.imbalance() + 1, floor.bearing());
      } else if (open) {
        floor = cap();
      }
    }
    if (met()) {
      return true;
    }
    FanSearch last = search(cap(), limit - steps);
    boolean all = last.run();
    steps += last.steps();
    best = last.best() == null ? best : last.best();
    floor = all && cap() != ANY ? cap() : floor;
    return all || met();
  }

  /** What a choice must cost less than to be of use. */
  private Pile.Cost cap() {
    return best == null || best.cost().compareTo(beat) >= 0 ? beat : best.cost();
  }

  private boolean met() {
    return cap().compareTo(floor) <= 0;
  }

  private FanSearch search(Pile.Cost cap, long most) {
    return new FanSearch(pile, types, heads, ways, types.count, cap, 0, most);
  }

  /** Looks for a choice that costs less than so much; true where all was looked at. */
  private boolean level(Pile.Cost most, boolean one) {
    Pile.Cost cap = cap().compareTo(most) < 0 ? cap() : most;
    FanSearch search = search(cap, (limit - steps) / 2);
    boolean all = (one ? search.untilFirst() : search).run();
    steps += search.steps();
    best = search.best() == null ? best : search.best();
    return all;
  }
}
