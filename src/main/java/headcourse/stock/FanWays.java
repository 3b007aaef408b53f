package headcourse.stock;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The ways to set one head: for each striking point the ends aimed at, all of them or one on either
 * side. Where there are more striking points than can be looked at, those whose ends are nearest
 * the target are.
 */
final class FanWays {
  /** Stones whose extents are kept: feet by widths by striking points. */
  private static final long ROOM = 12_000_000;

  private final FanPile.Head head;
  private final int h;
  private final PileTypes types;
  private final int pieces;
  private final long longest;
  private final List<FanRows[]> rows = new ArrayList<>();
  private final List<Integer> fans = new ArrayList<>();
  private List<Aim> aims;
  private long work;

  /**
   * @param h which head
   * @param most how many striking points are looked at at most
   */
  FanWays(FanPile pile, PileTypes types, int h, int most) {
    this.head = pile.heads().get(h);
    this.h = h;
    this.types = types;
    this.pieces = pile.pieces().size();
    long far = 0;
    for (int t = 0; t < types.size(); t++) {
      far = types.fits.get(t).get(h) ? Math.max(far, types.usable[t]) : far;
    }
    this.longest = far;
    List<Integer> order = new ArrayList<>();
    for (int f = 0; f < head.fans().size(); f++) {
      order.add(f);
    }
    order.sort(
        Comparator.comparingLong((Integer f) -> leastOff(head.fans().get(f)))
            .thenComparing(f -> f));
    long room = ROOM;
    for (int f : order) {
      FanPile.Fan fan = head.fans().get(f);
      FanRows[] both = both(fan);
      FanRows l = both[0];
      FanRows r = both[1];
      room -= cells(l) + (fan.left().sameJoints(fan.right()) ? 0 : cells(r));
      if ((room < 0 || fans.size() == most) && !fans.isEmpty()) {
        break;
      }
      fans.add(f);
      rows.add(both);
    }
  }

  private FanRows[] both(FanPile.Fan fan) {
    int far = fan.left().lastEnd() >= fan.right().lastEnd() ? 0 : 1;
    FanRows one = new FanRows(head, fan.side(far), longest, pieces, null);
    FanRows two = one;
    if (!fan.left().equals(fan.right())) {
      FanRows like = fan.left().sameJoints(fan.right()) ? one : null;
      two = new FanRows(head, fan.side(1 - far), longest, pieces, like);
    }
    return far == 0 ? new FanRows[] {one, two} : new FanRows[] {two, one};
  }

  private static long cells(FanRows r) {
    return (long) (r.last + 1) * Math.max(1, r.max - r.min + 1);
  }

  private static long leastOff(FanPile.Fan fan) {
    return PileSearch.leastOff(fan.left()) + PileSearch.leastOff(fan.right());
  }

  /** Whether all striking points are looked at. */
  boolean complete() {
    return fans.size() == head.fans().size();
  }

  /** How many striking points are looked at. */
  int size() {
    return fans.size();
  }

  FanRows rows(int k, int s) {
    return rows.get(k)[s];
  }

  int fan(int k) {
    return fans.get(k);
  }

  /** What is sawn off the shortest pieces at hand that hold an extent, for all copies. */
  int[] waste(int[] left) {
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

  /** All ends of every striking point looked at. */
  List<FanWay> all(int[] left) {
    int[] waste = waste(left);
    List<FanWay> out = new ArrayList<>();
    for (int k = 0; k < fans.size(); k++) {
      FanRows l = rows(k, 0);
      FanRows r = rows(k, 1);
      FanReach lr = reach(l, waste, l.first(), l.last);
      FanReach rr = l == r ? lr : reach(r, waste, r.first(), r.last);
      out.add(new FanWay(fan(k), head.fans().get(fan(k)).sawn(), lr, rr));
    }
    return out;
  }

  private FanReach reach(FanRows r, int[] waste, int first, int last) {
    int fewest = Math.max(1, head.eachSide());
    FanReach reach = new FanReach(r, waste, first, last, fewest, r.most);
    // An entry of the table takes less than an extent.
    work += reach.work() / 5;
    return reach;
  }

  /** Ends aimed at on both sides. */
  record Aim(int k, int left, int right, long off) {}

  /** Pairs of ends, the nearest to the target first; sides that are to be alike end alike first. */
  List<Aim> aims(int most) {
    if (aims != null) {
      return aims;
    }
    List<Aim> out = new ArrayList<>();
    for (int k = 0; k < fans.size(); k++) {
      FanRows l = rows(k, 0);
      FanRows r = rows(k, 1);
      for (int a = l.first(); a <= l.last; a++) {
        long one = l.off(a);
        for (int b = r.first(); one >= 0 && b <= r.last; b++) {
          if (r.off(b) >= 0) {
            out.add(new Aim(k, a, b, head.copies() * (one + r.off(b))));
          }
        }
      }
    }
    Comparator<Aim> nearest = Comparator.comparingLong(Aim::off);
    out.sort(nearest.thenComparing(a -> Math.abs(a.left - a.right)).thenComparing(Aim::k));
    aims = List.copyOf(out.subList(0, Math.min(most, out.size())));
    return aims;
  }

  /** Makes ways of aims, with what is at hand. */
  final class Aimed {
    private final int[] waste;
    private final Map<List<Integer>, FanReach> known = new HashMap<>();

    Aimed(int[] left) {
      this.waste = waste(left);
    }

    FanWay of(Aim aim) {
      return new FanWay(
          fan(aim.k),
          head.fans().get(fan(aim.k)).sawn(),
          one(aim.k, 0, aim.left),
          one(aim.k, 1, aim.right));
    }

    private FanReach one(int k, int s, int end) {
      int side = rows(k, 0) == rows(k, 1) ? 0 : s;
      FanRows r = rows(k, side);
      return known.computeIfAbsent(List.of(k, side, end), x -> reach(r, waste, end, end));
    }
  }

  /** How much was worked out. */
  long work() {
    long all = work;
    for (FanRows[] r : rows) {
      all += r[0].work() + (r[0] == r[1] ? 0 : r[1].work());
    }
    return all;
  }
}
