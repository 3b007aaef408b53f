package headcourse.stock.fan;

import headcourse.stock.pile.PileSearch;
import headcourse.stock.pile.PileTypes;
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
public final class FanWays {
  private final FanPile.Head head;
  private final int h;
  private final FanStore store;
  private final List<FanRows[]> rows = new ArrayList<>();
  private final List<Integer> fans = new ArrayList<>();
  private List<FanWay> all;
  private List<Aim> aims;
  private long work;

  /**
   * @param head the head
   * @param store what is worked out for it whatever its key
   * @param h which head
   * @param most how many striking points are looked at at most
   */
  public FanWays(FanPile.Head head, FanStore store, int h, int most) {
    this.head = head;
    this.h = h;
    this.store = store;
    List<Integer> order = new ArrayList<>();
    for (int f = 0; f < head.fans().size(); f++) {
      order.add(f);
    }
    order.sort(
        Comparator.comparingLong((Integer f) -> leastOff(head.fans().get(f)))
            .thenComparing(f -> f));
    for (int f : order) {
      FanRows[] both = fans.size() == most ? null : store.both(head.fans().get(f));
      if (both == null) {
        break;
      }
      fans.add(f);
      rows.add(both);
    }
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

  /** All ends of every striking point looked at, as if all pieces of the yard were at hand. */
  public List<FanWay> all() {
    if (all != null) {
      return all;
    }
    List<FanWay> out = new ArrayList<>();
    for (int k = 0; k < fans.size(); k++) {
      FanRows l = rows(k, 0);
      FanRows r = rows(k, 1);
      FanReach lr = store.reach(l);
      FanReach rr = l == r ? lr : store.reach(r);
      out.add(new FanWay(fan(k), head.fans().get(fan(k)).sawn(), lr, rr, store.pairs(l, r)));
    }
    all = List.copyOf(out);
    return all;
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

    Aimed(PileTypes types, int[] left) {
      this.waste = FanStore.waste(head, types, h, left, store.longest());
    }

    FanWay of(Aim aim) {
      return new FanWay(
          fan(aim.k),
          head.fans().get(fan(aim.k)).sawn(),
          one(aim.k, 0, aim.left),
          one(aim.k, 1, aim.right),
          store.pairs(rows(aim.k, 0), rows(aim.k, 1)));
    }

    private FanReach one(int k, int s, int end) {
      int side = rows(k, 0) == rows(k, 1) ? 0 : s;
      FanRows r = rows(k, side);
      return known.computeIfAbsent(List.of(k, side, end), x -> reach(r, waste, end));
    }
  }

  private FanReach reach(FanRows r, int[] waste, int end) {
    FanReach reach = new FanReach(r, waste, end, end, head.eachSide(), null);
    work += reach.work() / 5;
    return reach;
  }

  /** How much was worked out, what goes into the store aside. */
  public long work() {
    return work;
  }
}
