package headcourse.stock.fan;

import headcourse.stock.pile.Pile;
import headcourse.stock.pile.PileSearch;
import headcourse.stock.pile.PileSide;
import headcourse.stock.pile.PileTypes;
import java.util.ArrayList;
import java.util.List;

/** What no choice for heads of which some are fans can do better than. */
public final class FanFloor {
  private final FanPile pile;
  private final PileTypes types;
  private final List<List<FanWay>> ways;
  private final List<FanWays> all;

  /**
   * @param ways by head: all ends of every striking point looked at
   * @param all by head: the striking points looked at
   */
  FanFloor(FanPile pile, PileTypes types, List<List<FanWay>> ways, List<FanWays> all) {
    this.pile = pile;
    this.types = types;
    this.ways = ways;
    this.all = all;
  }

  /** The floor, or null where some head can't be set at all. */
  public Pile.Cost cost() {
    Pile.Cost sum = Pile.Cost.NONE;
    if (!pile.suffices()) {
      return null;
    }
    for (int h = 0; h < ways.size(); h++) {
      Pile.Cost one = cost(h);
      if (one == null) {
        return null;
      }
      sum = sum.plus(one.sawn(), 0, one.bearing());
    }
    if (sum.sawn() == 0) {
      for (int h = 0; h < ways.size(); h++) {
        sum = sum.plus(0, unlike(h), 0);
      }
    }
    return sum;
  }

  /** The floor of one head by itself, sides that may differ; null where it can't be set. */
  public Pile.Cost cost(int h) {
    return cost(pile.heads().get(h), ways.get(h), all.get(h));
  }

  /**
   * The same.
   *
   * @param of all ends of every striking point looked at
   * @param all the striking points looked at
   */
  public static Pile.Cost cost(FanPile.Head head, List<FanWay> of, FanWays all) {
    long sawn = Long.MAX_VALUE;
    long off = Long.MAX_VALUE;
    for (FanWay w : of) {
      if (w.comesOut()) {
        sawn = Math.min(sawn, w.leastSawn());
        off = Math.min(off, head.copies() * w.leastOff());
      }
    }
    if (!all.complete()) {
      for (FanPile.Fan f : head.fans()) {
        long least = PileSearch.leastOff(f.left()) + PileSearch.leastOff(f.right());
        sawn = Math.min(sawn, f.sawn());
        off = Math.min(off, head.copies() * least);
      }
    }
    return sawn == Long.MAX_VALUE ? null : new Pile.Cost(sawn, 0, off);
  }

  /**
   * With nothing sawn off, stones of one width across from each other come from pieces of one
   * length; where there are too few of these, some pair must differ.
   */
  long unlike(int h) {
    FanPile.Head head = pile.heads().get(h);
    if (!head.mirror()) {
      return 0;
    }
    long alike = 0;
    List<Long> lengths = new ArrayList<>();
    List<Integer> counts = new ArrayList<>();
    for (int t = 0; t < types.size(); t++) {
      if (types.fits.get(t).get(h)) {
        int last = lengths.size() - 1;
        if (last >= 0 && lengths.get(last) == types.usable[t]) {
          counts.set(last, counts.get(last) + types.count[t]);
        } else {
          lengths.add(types.usable[t]);
          counts.add(types.count[t]);
        }
      }
    }
    for (int c : counts) {
      alike += c / (2 * head.copies());
    }
    long fewest = Long.MAX_VALUE;
    for (FanPile.Fan f : head.fans()) {
      if (!f.left().equals(f.right()) && f.left().start() != f.right().start()) {
        return 0;
      }
      long run = Math.min(run(head, f.left()), run(head, f.right()));
      fewest = Math.min(fewest, run);
    }
    return alike < fewest ? head.copies() : 0;
  }

  /** The least number of stones that a side takes. */
  private static long run(FanPile.Head head, PileSide side) {
    long each = head.max() + side.joint();
    long least = Math.max(1, -Math.floorDiv(side.start() - side.firstEnd(), each));
    return Math.max(least, head.eachSide());
  }
}
