package headcourse.stock.fan;

import headcourse.stock.pile.Pile;
import headcourse.stock.pile.PileDraft.Slot;
import headcourse.stock.pile.PileTypes;
import java.util.ArrayList;
import java.util.List;

/**
 * Quick choices, one head after another with the pieces that are left, aimed at the ends that are
 * nearest the target; then each head anew with the pieces of the others left alone, for less sawn
 * off and sides more alike.
 */
final class FanQuick {
  private static final int MOST = 4_000;
  private static final int FEW = 6;
  private static final int TRIES = 20;
  private static final int SHORT = 2_000;
  private static final int LONG = 60_000;
  private static final int VERY_SHORT = 400;
  private static final long[] ROOM = {0, 1, 3, 8, 20};
  private static final int ROUNDS = 3;
  private static final long FAR = 1L << 40;
  private static final Pile.Cost ANY =
      new Pile.Cost(Long.MAX_VALUE / 4, Long.MAX_VALUE / 4, Long.MAX_VALUE / 4);

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

  /** How many heads there are. */
  int heads() {
    return pile.heads().size();
  }

  long steps() {
    return steps;
  }

  /** A choice with the heads taken in an order, or null. */
  FanDraft find(List<Integer> order) {
    int[] left = types.count.clone();
    FanDraft[] found = new FanDraft[pile.heads().size()];
    for (int h : order) {
      found[h] = any(h, left);
      if (found[h] == null) {
        return null;
      }
      take(found[h], left, -1);
    }
    boolean better = true;
    for (int round = 0; better && round < ROUNDS; round++) {
      better = false;
      for (int h : order) {
        take(found[h], left, 1);
        FanDraft other = improved(h, left, found[h]);
        better |= other != found[h];
        found[h] = other;
        take(found[h], left, -1);
      }
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

  /** The stones of one head with as little sawn off as is soon found. */
  private FanDraft any(int h, int[] left) {
    Pile.Cost least = floor.cost(h);
    if (least == null) {
      return null;
    }
    Aims aims = new Aims(h, left);
    for (long more : ROOM) {
      FanDraft found = aims.find(least.sawn() + more, FAR, FEW, VERY_SHORT);
      if (found != null) {
        return found;
      }
    }
    FanSearch search = search(h, ways.get(h).all(), left, ANY, 1, LONG).untilFirst();
    search.run();
    steps += search.steps();
    return search.best();
  }

  /** Less sawn off, or sides more alike, if that is found. */
  private FanDraft improved(int h, int[] left, FanDraft known) {
    FanDraft best = known;
    Pile.Cost least = floor.cost(h);
    int copies = pile.heads().get(h).copies();
    Aims aims = new Aims(h, left);
    for (long more = 0; least.sawn() + more < best.cost().sawn(); more += 1 + more / 2) {
      FanDraft found = aims.find(least.sawn() + more, FAR, more < FEW ? TRIES : FEW, SHORT);
      best = found != null && found.betterThan(best) ? found : best;
    }
    long low = 0;
    long high = pile.heads().get(h).mirror() ? best.cost().imbalance() / copies : 0;
    while (low < high) {
      long middle = (low + high) / 2;
      FanDraft found = aims.find(best.cost().sawn(), middle, TRIES, SHORT);
      if (found != null && found.betterThan(best)) {
        best = found;
        high = best.cost().imbalance() / copies;
      } else {
        low = middle + 1;
      }
    }
    return best;
  }

  private FanSearch search(
      int h, List<FanWay> of, int[] left, Pile.Cost cap, long seed, long most) {
    long rest = Math.min(most, limit - steps);
    return new FanSearch(pile, types, new int[] {h}, List.of(of), left, cap, seed, rest);
  }

  /** The ends to aim at, with what is at hand. */
  private final class Aims {
    private final int h;
    private final int[] left;
    private final List<FanWays.Aim> aims;
    private final FanWays.Aimed aimed;

    Aims(int h, int[] left) {
      this.h = h;
      this.left = left;
      this.aims = ways.get(h).aims(MOST);
      this.aimed = ways.get(h).new Aimed(types, left);
    }

    /** A choice for the nearest ends with no more sawn off, and sides no more apart. */
    FanDraft find(long sawn, long apart, int tries, int most) {
      FanPile.Head head = pile.heads().get(h);
      int tried = 0;
      int skipped = 0;
      for (FanWays.Aim aim : aims) {
        if (head.mirror() && Math.abs(aim.left() - aim.right()) > apart) {
          continue;
        }
        if (tried >= tries || skipped >= 4 * tries || steps >= limit) {
          return null;
        }
        long before = ways.get(h).work();
        FanWay way = aimed.of(aim);
        steps += (ways.get(h).work() - before) / FanSolver.WORK;
        if (!way.comesOut() || way.leastSawn() > sawn) {
          skipped++;
          continue;
        }
        tried++;
        Pile.Cost cap = new Pile.Cost(sawn, head.copies() * apart, aim.off() + 1);
        FanSearch search = search(h, List.of(way), left, cap, aim.left(), most).untilFirst();
        (apart < FAR ? search.boxed() : search).run();
        steps += search.steps();
        if (search.best() != null) {
          return search.best();
        }
      }
      return null;
    }
  }
}
