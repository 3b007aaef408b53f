package headcourse.stock.fan;

import headcourse.stock.pile.Pile;
import headcourse.stock.pile.PileSide;
import java.util.ArrayList;
import java.util.List;

/**
 * What a quick hand does with a fan: outwards from the key, left side first, each time the piece
 * that is left whose length is nearest the middle of what is allowed, as wide as it gives, and the
 * last one where the side may end; with the striking point that comes out best.
 */
final class GreedyFan {
  private final FanPile pile;
  private List<Integer> left = new ArrayList<>();
  private long sawn;

  GreedyFan(FanPile pile) {
    this.pile = pile;
    for (int i = 0; i < pile.pieces().size(); i++) {
      left.add(i);
    }
  }

  /** What it saws off, or −1 where it doesn't come out. */
  long sawn() {
    long all = 0;
    for (int h = 0; h < pile.heads().size(); h++) {
      List<Integer> before = left;
      List<Integer> after = null;
      long least = Long.MAX_VALUE;
      for (FanPile.Fan fan : pile.heads().get(h).fans()) {
        left = new ArrayList<>(before);
        sawn = fan.sawn();
        if (side(h, fan.left()) && side(h, fan.right()) && sawn < least) {
          least = sawn;
          after = left;
        }
      }
      if (after == null) {
        return -1;
      }
      left = after;
      all += least;
    }
    return all;
  }

  private boolean side(int h, PileSide side) {
    FanPile.Head head = pile.heads().get(h);
    long foot = side.start();
    long before = -1;
    for (int i = 1; head.eachSide() == 0 || i <= head.eachSide(); i++) {
      List<Integer> of = new ArrayList<>();
      long shortest = Long.MAX_VALUE;
      for (int c = 0; c < head.copies(); c++) {
        int piece = next(h, head);
        if (piece < 0) {
          return false;
        }
        of.add(piece);
        shortest = Math.min(shortest, pile.pieces().get(piece).usable());
      }
      boolean may = head.eachSide() == 0 || i == head.eachSide();
      long width = may ? widest(head, side, i, foot, before, shortest, true) : -1;
      boolean end = width >= 0;
      width = end ? width : widest(head, side, i, foot, before, shortest, false);
      if (width < 0) {
        return false;
      }
      long outer = foot + side.joint() + width;
      for (int p : of) {
        sawn += pile.pieces().get(p).usable() - side.extent(i, foot, outer, end);
      }
      if (end) {
        return true;
      }
      foot = outer;
      before = width;
    }
    return false;
  }

  private static long widest(
      FanPile.Head head,
      PileSide side,
      int index,
      long foot,
      long before,
      long usable,
      boolean end) {
    for (long w = head.max(); w >= head.min(); w--) {
      long outer = foot + side.joint() + w;
      boolean room = end || side.lastEnd() - outer >= side.joint() + head.min();
      if (outer <= side.lastEnd()
          && room
          && (before < 0 || Math.abs(w - before) <= head.jump())
          && (end
              ? side.bearingOff(outer) >= 0 && side.endFits(index, foot, outer)
              : side.jointStands(index, outer) && side.stoneFits(index, foot, outer))
          && side.extent(index, foot, outer, end) <= usable) {
        return w;
      }
    }
    return -1;
  }

  private int next(int h, FanPile.Head head) {
    int best = -1;
    long middle = (head.min() + head.max()) / 2;
    for (int k = 0; k < left.size(); k++) {
      Pile.Piece p = pile.pieces().get(left.get(k));
      if (p.fits().get(h)
          && (best < 0
              || Math.abs(p.usable() - middle)
                  < Math.abs(pile.pieces().get(left.get(best)).usable() - middle))) {
        best = k;
      }
    }
    return best < 0 ? -1 : left.remove(best);
  }
}
