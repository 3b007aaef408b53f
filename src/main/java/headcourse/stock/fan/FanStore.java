package headcourse.stock.fan;

import headcourse.stock.pile.PileSide;
import headcourse.stock.pile.PileTypes;
import java.util.ArrayList;
import java.util.List;

/**
 * What is worked out once for one head whatever its key: extents, and what is left to its sides if
 * every piece of the yard lay there as often as it is asked for.
 */
public final class FanStore {
  /** Stones whose extents are kept: feet by widths by striking points. */
  private static final long ROOM = 6_000_000;

  private final FanPile.Head head;
  private final long longest;
  private final int pieces;
  private final int[] waste;
  private final List<FanRows> first = new ArrayList<>();
  private final List<Tail> tails = new ArrayList<>();
  private final List<Both> both = new ArrayList<>();
  private final int[] count;
  private long room = ROOM;
  private long work;

  private record Tail(FanRows like, FanTail tail) {}

  private record Both(FanRows left, FanRows right, FanPairs pairs) {}

  /**
   * @param head the head, with any key
   * @param types the pieces
   * @param h which head
   */
  public FanStore(FanPile.Head head, PileTypes types, int h) {
    this.head = head;
    long far = 0;
    int sum = 0;
    for (int t = 0; t < types.size(); t++) {
      far = types.fits.get(t).get(h) ? Math.max(far, types.usable[t]) : far;
      sum += types.count[t];
    }
    this.longest = far;
    this.pieces = sum;
    this.count = new int[(int) far + 1];
    for (int t = 0; t < types.size(); t++) {
      if (types.fits.get(t).get(h)) {
        this.count[(int) types.usable[t]] += types.count[t];
      }
    }
    this.waste = waste(head, types, h, types.count, far);
  }

  /** What is sawn off the shortest pieces at hand that hold an extent, for all copies. */
  static int[] waste(FanPile.Head head, PileTypes types, int h, int[] left, long longest) {
    int[] waste = new int[(int) longest + 1];
    for (int e = 0; e < waste.length; e++) {
      int need = head.copies();
      long off = 0;
      for (int t = 0; t < types.size() && need > 0; t++) {
        if (types.usable[t] >= e && types.fits.get(t).get(h)) {
          int take = Math.min(need, left[t]);
          off += take * (types.usable[t] - e);
          need -= take;
        }
      }
      waste[e] = need > 0 ? FanReach.NEVER : (int) off;
    }
    return waste;
  }

  /** Length of the longest piece. */
  long longest() {
    return longest;
  }

  /** Both sides beside a striking point, or null where there is no room for more. */
  FanRows[] both(FanPile.Fan fan) {
    int far = fan.left().lastEnd() >= fan.right().lastEnd() ? 0 : 1;
    FanRows one = rows(fan.side(far));
    FanRows two = one;
    if (one != null && !fan.left().equals(fan.right())) {
      two = rows(fan.side(1 - far));
    }
    if (one == null || two == null) {
      return null;
    }
    return far == 0 ? new FanRows[] {one, two} : new FanRows[] {two, one};
  }

  private FanRows rows(PileSide side) {
    for (FanRows f : first) {
      if (f.serves(side)) {
        return new FanRows(head, side, longest, pieces, f);
      }
    }
    FanRows rows = new FanRows(head, side, longest, pieces, null);
    room -= rows.cells();
    if (room < 0 && !first.isEmpty()) {
      return null;
    }
    first.add(rows);
    return rows;
  }

  /** What a side can do from its key on. */
  FanReach reach(FanRows rows) {
    FanTail tail = null;
    for (Tail t : tails) {
      if (same(t.like, rows)) {
        tail = t.tail;
        break;
      }
    }
    int most = Math.min(rows.lastEnd(), rows.last);
    if (tail == null) {
      int from = (int) (Math.min(0, rows.start()) - rows.start());
      tail = new FanTail(rows, waste, rows.first(), most, head.eachSide(), from);
      work += tail.work();
      tails.add(new Tail(rows, tail));
    }
    FanReach reach = new FanReach(rows, waste, rows.first(), most, head.eachSide(), tail);
    work += reach.work();
    return reach;
  }

  /** Whether what lies ahead is the same once all stones follow one rule. */
  private static boolean same(FanRows one, FanRows other) {
    return one.serves(other.side) && one.side.sameEnds(other.side);
  }

  /** What both sides can do together, or null where they need not be alike or begin unlike. */
  FanPairs pairs(FanRows left, FanRows right) {
    if (!head.mirror() || left.start() != right.start() || !left.side.sameJoints(right.side)) {
      return null;
    }
    for (Both b : both) {
      if (same(b.left, left) && same(b.right, right)) {
        return b.pairs;
      }
    }
    FanPairs pairs = new FanPairs(left, right, count, head.copies(), head.eachSide());
    both.add(new Both(left, right, pairs));
    return pairs;
  }

  /** How much was worked out. */
  public long work() {
    // An entry of the table takes less than an extent.
    long all = work / 5;
    for (FanRows r : first) {
      all += r.work();
    }
    return all;
  }
}
