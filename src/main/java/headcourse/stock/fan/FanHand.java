package headcourse.stock.fan;

import headcourse.stock.pile.Pile;
import headcourse.stock.pile.PileDraft.Slot;
import headcourse.stock.pile.PileTypes;
import java.util.ArrayList;
import java.util.List;

/**
 * What a quick hand does: outwards from the key, left side first, each time the piece that is left
 * whose length is nearest the middle of what is allowed, sawn down only where it must be; the last
 * one sawn to land on the bearing. It tries every striking point and keeps the best.
 */
final class FanHand {
  private final FanPile pile;
  private final PileTypes types;
  private final List<FanWays> ways;
  private int[] left;
  private long sawn;
  private long bearing;

  FanHand(FanPile pile, PileTypes types, List<FanWays> ways) {
    this.pile = pile;
    this.types = types;
    this.ways = ways;
  }

  /** A choice, or null where it doesn't come out. */
  FanDraft find() {
    int[] rest = types.count.clone();
    List<Integer> fans = new ArrayList<>();
    List<List<List<Slot>>> heads = new ArrayList<>();
    Pile.Cost cost = Pile.Cost.NONE;
    for (int h = 0; h < pile.heads().size(); h++) {
      FanPile.Head head = pile.heads().get(h);
      Pile.Cost least = null;
      List<List<Slot>> best = null;
      int[] after = null;
      for (int k = 0; k < ways.get(h).size(); k++) {
        left = rest.clone();
        sawn = head.fans().get(ways.get(h).fan(k)).sawn();
        bearing = 0;
        List<Slot> l = side(h, ways.get(h).rows(k, 0));
        List<Slot> r = l == null ? null : side(h, ways.get(h).rows(k, 1));
        if (r == null) {
          continue;
        }
        Pile.Cost c = new Pile.Cost(sawn, imbalance(head, l, r), bearing);
        if (least == null || c.compareTo(least) < 0) {
          least = c;
          best = List.of(l, r);
          after = left;
          if (fans.size() > h) {
            fans.remove(h);
          }
          fans.add(ways.get(h).fan(k));
        }
      }
      if (best == null) {
        return null;
      }
      rest = after;
      heads.add(best);
      cost = cost.plus(least.sawn(), least.imbalance(), least.bearing());
    }
    return new FanDraft(fans, heads, cost);
  }

  private static long imbalance(FanPile.Head head, List<Slot> l, List<Slot> r) {
    long sum = 0;
    for (int i = 0; head.mirror() && i < Math.max(l.size(), r.size()); i++) {
      long a = i < l.size() ? l.get(i).width() : 0;
      long b = i < r.size() ? r.get(i).width() : 0;
      sum += head.copies() * Math.abs(a - b);
    }
    return sum;
  }

  private List<Slot> side(int h, FanRows rows) {
    FanPile.Head head = pile.heads().get(h);
    List<Slot> row = new ArrayList<>();
    int foot = 0;
    for (int i = 1; i <= rows.most; i++) {
      int[] of = new int[head.copies()];
      long shortest = Long.MAX_VALUE;
      for (int c = 0; c < of.length; c++) {
        of[c] = next(h, head);
        if (of[c] < 0) {
          return null;
        }
        left[of[c]]--;
        shortest = Math.min(shortest, types.usable[of[c]]);
      }
      long before = row.isEmpty() ? -1 : row.get(i - 2).width();
      boolean may = head.eachSide() == 0 || i == head.eachSide();
      int w = may ? widest(head, rows, rows.ends(i, foot), shortest, before) : -1;
      boolean last = w >= 0;
      short[] extents = last ? rows.ends(i, foot) : rows.on(i, foot);
      w = last ? w : widest(head, rows, extents, shortest, before);
      if (w < 0) {
        return null;
      }
      for (int t : of) {
        sawn += types.usable[t] - extents[w];
      }
      row.add(new Slot(rows.min + w, of));
      foot += rows.joint + rows.min + w;
      if (last) {
        bearing += head.copies() * rows.off(foot);
        return row;
      }
    }
    return null;
  }

  private static int widest(
      FanPile.Head head, FanRows rows, short[] extents, long usable, long before) {
    for (int w = extents.length - 1; w >= 0; w--) {
      boolean follows = before < 0 || Math.abs(rows.min + w - before) <= head.jump();
      if (extents[w] >= 0 && extents[w] <= usable && follows) {
        return w;
      }
    }
    return -1;
  }

  private int next(int h, FanPile.Head head) {
    int best = -1;
    long middle = (head.min() + head.max()) / 2;
    for (int t = 0; t < types.size(); t++) {
      if (left[t] > 0
          && types.fits.get(t).get(h)
          && (best < 0
              || Math.abs(types.usable[t] - middle) < Math.abs(types.usable[best] - middle))) {
        best = t;
      }
    }
    return best;
  }
}
