package headcourse.stock.fan;

import headcourse.stock.pile.Pile;
import headcourse.stock.pile.PileSide;
import java.util.ArrayList;
import java.util.List;

/** Every choice there is, one after another: for small piles, without a thought. */
public final class FanBrute {
  private final FanPile pile;
  private final boolean[] used;
  private final List<List<List<Long>>> rows = new ArrayList<>();
  private Pile.Cost best;

  public FanBrute(FanPile pile) {
    this.pile = pile;
    this.used = new boolean[pile.pieces().size()];
    pile.heads().forEach(h -> rows.add(List.of(new ArrayList<>(), new ArrayList<>())));
  }

  /** The least cost, or null where there is no choice. */
  public Pile.Cost least() {
    head(0, Pile.Cost.NONE);
    return best;
  }

  private void head(int h, Pile.Cost cost) {
    if (h == pile.heads().size()) {
      best = best == null || cost.compareTo(best) < 0 ? cost : best;
      return;
    }
    for (FanPile.Fan f : pile.heads().get(h).fans()) {
      side(h, f, 0, f.left().start(), cost.plus(f.sawn(), 0, 0));
    }
  }

  private void side(int h, FanPile.Fan fan, int s, long foot, Pile.Cost cost) {
    FanPile.Head head = pile.heads().get(h);
    PileSide side = fan.side(s);
    List<Long> row = rows.get(h).get(s);
    int index = row.size() + 1;
    if (head.eachSide() > 0 && index > head.eachSide()) {
      return;
    }
    for (long w = head.min(); w <= head.max(); w++) {
      long outer = foot + side.joint() + w;
      if (outer > side.lastEnd() || index > 1 && Math.abs(w - row.get(index - 2)) > head.jump()) {
        continue;
      }
      row.add(w);
      if ((head.eachSide() == 0 || index == head.eachSide())
          && side.bearingOff(outer) >= 0
          && side.endFits(index, foot, outer)) {
        Pile.Cost more = cost.plus(0, 0, head.copies() * side.bearingOff(outer));
        pieces(h, fan, s, side.extent(index, foot, outer, true), -1, outer, 0, 0, more);
      }
      if (side.jointStands(index, outer) && side.stoneFits(index, foot, outer)) {
        pieces(h, fan, s, side.extent(index, foot, outer, false), outer, 0, 0, 0, cost);
      }
      row.remove(index - 1);
    }
  }

  /** Takes pieces for all copies of a stone; goes on at {@code next}, or ends where that is −1. */
  private void pieces(
      int h,
      FanPile.Fan fan,
      int s,
      long extent,
      long next,
      long end,
      int copy,
      int from,
      Pile.Cost cost) {
    FanPile.Head head = pile.heads().get(h);
    if (copy == head.copies()) {
      if (next >= 0) {
        side(h, fan, s, next, cost);
      } else if (s == 0) {
        side(h, fan, 1, fan.right().start(), cost);
      } else {
        head(h + 1, cost.plus(0, unlike(h), 0));
      }
      return;
    }
    for (int p = from; p < used.length; p++) {
      long off = pile.pieces().get(p).usable() - extent;
      if (!used[p] && off >= 0 && pile.pieces().get(p).fits().get(h)) {
        used[p] = true;
        pieces(h, fan, s, extent, next, end, copy + 1, p + 1, cost.plus(off, 0, 0));
        used[p] = false;
      }
    }
  }

  private long unlike(int h) {
    FanPile.Head head = pile.heads().get(h);
    List<Long> l = rows.get(h).get(0);
    List<Long> r = rows.get(h).get(1);
    long sum = 0;
    for (int i = 0; head.mirror() && i < Math.max(l.size(), r.size()); i++) {
      long a = i < l.size() ? l.get(i) : 0;
      long b = i < r.size() ? r.get(i) : 0;
      sum += head.copies() * Math.abs(a - b);
    }
    return sum;
  }
}
