package headcourse.stock;

import headcourse.stock.PileDraft.Slot;
import java.util.ArrayList;
import java.util.List;

/**
 * Quick choices, one head after another with the pieces that are left: first those that meet the
 * floor, then a little more sawn off or a little less alike, each aimed at the ends that are
 * nearest the target.
 */
final class FanQuick {
  private static final int AIMS = 4_000;
  private static final int TRIES = 30;
  private static final int SHORT = 3_000;
  private static final int LONG = 60_000;
  private static final int MORE = 5;
  private static final long[] APART = {0, 1, 2, 4, 8, 16, 1L << 40};

  private final FanPile pile;
  private final PileTypes types;
  private final List<FanWays> ways;
  private final FanFloor floor;
  private final long limit;
  private long steps;

  FanQuick(FanPile pile, PileTypes types, List<FanWays> ways, FanFloor floor, long limit) {
    this.pile = pile;
    this.types = types;
    this.ways = ways;
    this.floor = floor;
    this.limit = limit;
  }

  long steps() {
    return steps;
  }

  /** A choice with the heads taken in an order, or null. */
  FanDraft find(List<Integer> order) {
    int[] left = types.count.clone();
    FanDraft[] found = new FanDraft[pile.heads().size()];
    for (int h : order) {
      FanDraft one = head(h, left);
      if (one == null) {
        return null;
      }
      found[h] = one;
      take(one, left, -1);
    }
    return joined(found);
  }

  private static FanDraft joined(FanDraft[] found) {
    List<Integer> fans = new ArrayList<>();
    List<List<List<Slot>>> heads = new ArrayList<>();
    Pile.Cost cost = Pile.Cost.NONE;
    for (FanDraft d : found) {
      fans.add(d.fans().get(0));
      heads.add(d.heads().get(0));
      cost = cost.plus(d.cost().sawn(), d.cost().imbalance(), d.cost().bearing());
    }
    return new FanDraft(fans, heads, cost);
  }

  private static void take(FanDraft one, int[] left, int sign) {
    for (List<Slot> side : one.heads().get(0)) {
      for (Slot s : side) {
        for (int t : s.types()) {
          left[t] += sign;
        }
      }
    }
  }

  private FanDraft head(int h, int[] left) {
    FanPile.Head head = pile.heads().get(h);
    Pile.Cost least = floor.cost(h);
    if (least == null) {
      return null;
    }
    List<FanWays.Aim> aims = ways.get(h).aims(AIMS);
    FanWays.Aimed aimed = ways.get(h).new Aimed(left);
    FanDraft best = null;
    for (long more = 0; more < MORE && best == null; more++) {
      for (long apart : APART) {
        best = aimed(h, left, aims, aimed, least.sawn() + more, apart);
        if (best != null || !head.mirror()) {
          break;
        }
      }
    }
    if (best == null) {
      Pile.Cost any = new Pile.Cost(Long.MAX_VALUE / 4, Long.MAX_VALUE / 4, Long.MAX_VALUE / 4);
      FanSearch search = search(h, ways.get(h).all(left), left, any, 1, LONG);
      search.run();
      steps += search.steps();
      best = search.best();
    }
    return best;
  }

  private FanSearch search(
      int h, List<FanWay> of, int[] left, Pile.Cost cap, long seed, long most) {
    long rest = Math.min(most, limit - steps);
    return new FanSearch(pile, types, new int[] {h}, List.of(of), left, cap, seed, rest);
  }

  private FanDraft aimed(
      int h,
      int[] left,
      List<FanWays.Aim> aims,
      FanWays.Aimed aimed,
      long sawn,
      long apart) {
    FanPile.Head head = pile.heads().get(h);
    int tried = 0;
    for (FanWays.Aim aim : aims) {
      if (head.mirror() && Math.abs(aim.left() - aim.right()) > apart) {
        continue;
      }
      if (tried >= TRIES || steps >= limit) {
        return null;
      }
      FanWay way = aimed.of(aim);
      if (!way.comesOut() || way.leastSawn() > sawn) {
        continue;
      }
      tried++;
      Pile.Cost cap = new Pile.Cost(sawn, head.copies() * apart, aim.off() + 1);
      FanSearch search = search(h, List.of(way), left, cap, aim.left(), SHORT).untilFirst();
      search.run();
      steps += search.steps();
      if (search.best() != null) {
        return search.best();
      }
    }
    return null;
  }
}
