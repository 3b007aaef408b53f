package headcourse.stock;

import headcourse.stock.ChangeProblem.Row;
import headcourse.stock.ChangeProblem.Rows;
import headcourse.stock.ChangeProblem.Stone;
import headcourse.stock.pile.PileSide;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.LongUnaryOperator;

/**
 * Whether a side can still come out with so many changes, if there were pieces of every length up
 * to the longest. What it says no to no pile can do.
 */
final class RowReach {
  private static final int MEMORY = 400_000;

  private final Rows head;
  private final Row row;
  private final long longest;
  private final int each;
  private final Map<Long, Boolean> known = new HashMap<>();
  private long steps;

  /**
   * @param longest usable length of the longest piece
   * @param each what the change of a stone counts
   */
  RowReach(Rows head, Row row, long longest, int each) {
    this.head = head;
    this.row = row;
    this.longest = longest;
    this.each = each;
  }

  long steps() {
    return steps;
  }

  /**
   * How a stone of some width may stand.
   *
   * @param extent how long it is along its blank
   * @param ends whether it may be the end stone
   * @param goesOn whether another may follow
   */
  record Stand(long extent, boolean ends, boolean goesOn) {}

  /**
   * How stone {@code i} may stand: as the end stone or not, where that decides how long it is; else
   * either way, which is still to be looked at.
   */
  List<Stand> stands(int i, long foot, long width) {
    PileSide side = row.side();
    if (!side.fanned()) {
      return List.of(new Stand(width + side.extra(i), true, true));
    }
    long outer = foot + side.joint() + width;
    List<Stand> all = new ArrayList<>();
    if (goesOn(i, foot, outer)) {
      all.add(new Stand(side.extent(i, foot, outer, false), false, true));
    }
    if (ends(i, foot, outer)) {
      all.add(new Stand(side.extent(i, foot, outer, true), true, false));
    }
    return all;
  }

  /**
   * A width to try.
   *
   * @param sawn what is sawn off the shortest piece that holds it
   * @param off how far it is from the width hoped for
   */
  record Try(long width, Stand stand, long sawn, long off) {}

  /**
   * Widths to try for stone {@code i}: those for which least is sawn first, then those nearest the
   * width hoped for.
   *
   * @param near that width; negative for none
   * @param least what is sawn off the shortest piece for an extent; negative where there is none
   */
  List<Try> tries(int i, long foot, long last, long near, LongUnaryOperator least) {
    List<Try> all = new ArrayList<>();
    for (long w = least(last); w <= most(i, foot, last); w++) {
      for (Stand stand : stands(i, foot, w)) {
        long sawn = least.applyAsLong(stand.extent());
        if (sawn >= 0) {
          all.add(new Try(w, stand, sawn, near < 0 ? 0 : Math.abs(w - near)));
        }
      }
    }
    all.sort(Comparator.comparingLong(Try::sawn).thenComparingLong(Try::off));
    return all;
  }

  /** Widths that stone {@code i} may have beside one of width {@code last}; −1 for none. */
  long least(long last) {
    return last < 0 ? head.min() : Math.max(head.min(), last - Math.min(last, head.jump()));
  }

  /** The greatest width there. */
  long most(int i, long foot, long last) {
    long most = Math.min(head.max(), longest - row.side().extra(i));
    if (last >= 0 && head.jump() < Long.MAX_VALUE - last) {
      most = Math.min(most, last + head.jump());
    }
    return Math.min(most, row.side().lastEnd() - foot - row.side().joint());
  }

  /**
   * Whether stone {@code i} may be as wide as planned where it now stands. In a fan it is another
   * stone wherever else it stands.
   */
  boolean keeps(int i, long foot, long last) {
    if (i > row.before().size()) {
      return false;
    }
    long w = row.before().get(i - 1).width();
    return w >= least(last) && w <= most(i, foot, last) && row.stays(i, foot + w);
  }

  /** The same if it stands so. */
  boolean keeps(int i, long foot, long last, Stand stand) {
    return keeps(i, foot, last)
        && (!row.side().fanned() || stand.ends() == (i == row.before().size()));
  }

  /** Whether the side may end with stone {@code i}. */
  boolean ends(int i, long inner, long outer) {
    PileSide side = row.side();
    return (row.each() == 0 || row.each() == i)
        && outer >= side.firstEnd()
        && outer <= side.lastEnd()
        && side.bearingOff(outer) >= 0
        && side.endFits(i, inner, outer);
  }

  /** Whether a stone may follow stone {@code i}. */
  boolean goesOn(int i, long inner, long outer) {
    PileSide side = row.side();
    return (row.each() == 0 || i < row.each())
        && outer + side.joint() + head.min() <= side.lastEnd()
        && side.jointStands(i, outer)
        && side.stoneFits(i, inner, outer);
  }

  /** What it counts to have no more stones after so many; −1 where one of them must stay. */
  int dropped(int after) {
    int n = 0;
    for (int i = after; i < row.before().size(); i++) {
      if (row.before().get(i).pinned()) {
        return -1;
      }
      n += each;
    }
    return n;
  }

  /** Whether stones from the {@code i}th on, from a foot, come out with so many changes. */
  boolean comesOut(int i, long foot, long last, int left) {
    if (left < 0) {
      return false;
    }
    long beside = head.jump() == Long.MAX_VALUE ? 0 : last + 1;
    long key = ((((foot + (1L << 20)) << 17 | beside) << 10 | i) << 6) | Math.min(left, 63);
    Boolean before = known.get(key);
    if (before == null) {
      before = search(i, foot, last, left);
      if (known.size() < MEMORY) {
        known.put(key, before);
      }
    }
    return before;
  }

  private boolean search(int i, long foot, long last, int left) {
    steps++;
    boolean planned = i <= row.before().size();
    Stone stone = planned ? row.before().get(i - 1) : null;
    if (keeps(i, foot, last)) {
      int gone = each == 0 ? 0 : stone.gone();
      if (gone <= left && goes(i, foot, stone.width(), left - gone)) {
        return true;
      }
    }
    if (each > left || planned && stone.pinned()) {
      return false;
    }
    long least = least(last);
    for (long w = most(i, foot, last); w >= least; w--) {
      if (goes(i, foot, w, left - each)) {
        return true;
      }
    }
    return false;
  }

  private boolean goes(int i, long foot, long w, int left) {
    long outer = foot + row.side().joint() + w;
    int drop = dropped(i);
    return drop >= 0 && drop <= left && ends(i, foot, outer)
        || goesOn(i, foot, outer) && comesOut(i + 1, outer, w, left);
  }
}
