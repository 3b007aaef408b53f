package headcourse.stock;

import java.util.ArrayList;
import java.util.List;

/**
 * What is worked out once for one head whatever its key: extents, and what is left to its sides if
 * every piece of the yard lay there as often as it is asked for.
 */
final class FanStore {
  /** Stones whose extents are kept: feet by widths by striking points. */
  private static final long ROOM = 12_000_000;

  private final FanPile.Head head;
  private final long longest;
  private final int pieces;
  private final int[] waste;
  private final List<FanRows> first = new ArrayList<>();
  private final List<Tail> tails = new ArrayList<>();
  private long room = ROOM;
  private long work;

  private record Tail(FanRows like, PileSide side, FanTail tail) {}

  /**
   * @param head the head, with any key
   * @param types the pieces
   * @param h which head
   */
  FanStore(FanPile.Head head, PileTypes types, int h) {
    this.head = head;
    long far = 0;
    int count = 0;
    for (int t = 0; t < types.size(); t++) {
      far = types.fits.get(t).get(h) ? Math.max(far, types.usable[t]) : far;
      count += types.count[t];
    }
    this.longest = far;
    this.pieces = count;
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
      if (t.like.serves(rows.side) && t.side.sameEnds(rows.side)) {
        tail = t.tail;
        break;
      }
    }
    int most = Math.min(rows.lastEnd(), rows.last);
    if (tail == null) {
      int from = (int) (Math.min(0, rows.start()) - rows.start());
      tail = new FanTail(rows, waste, rows.first(), most, head.eachSide(), from);
      work += tail.work();
      tails.add(new Tail(rows, rows.side, tail));
    }
    FanReach reach = new FanReach(rows, waste, rows.first(), most, head.eachSide(), tail);
    work += reach.work();
    return reach;
  }

  /** How much was worked out. */
  long work() {
    // An entry of the table takes less than an extent.
    long all = work / 5;
    for (FanRows r : first) {
      all += r.work();
    }
    return all;
  }
}
