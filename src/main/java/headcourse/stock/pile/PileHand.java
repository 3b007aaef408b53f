package headcourse.stock.pile;

import headcourse.stock.pile.PileDraft.Slot;
import java.util.ArrayList;
import java.util.List;

/**
 * What a quick hand does: outwards from the key, left side first, each time the piece that is left
 * whose length is nearest the middle of what is allowed, sawn down only where it must be; the last
 * one sawn to land on the bearing.
 */
final class PileHand {
  private final Pile pile;
  private final PileTypes types;
  private final int[] left;
  private Pile.Cost cost = Pile.Cost.NONE;

  PileHand(Pile pile, PileTypes types) {
    this.pile = pile;
    this.types = types;
    this.left = types.count.clone();
  }

  /** A choice, or null where it doesn't come out. */
  PileDraft find() {
    List<List<List<Slot>>> heads = new ArrayList<>();
    for (int h = 0; h < pile.heads().size(); h++) {
      List<List<Slot>> sides = new ArrayList<>();
      for (int s = 0; s < 2; s++) {
        List<Slot> row = side(h, pile.heads().get(h), pile.heads().get(h).side(s));
        if (row == null) {
          return null;
        }
        sides.add(row);
      }
      heads.add(sides);
    }
    return new PileDraft(heads, cost).under(pile);
  }

  private List<Slot> side(int h, Pile.Head head, PileSide side) {
    List<Slot> row = new ArrayList<>();
    long foot = side.start();
    for (int i = 1; head.eachSide() == 0 || i <= head.eachSide(); i++) {
      int[] of = new int[head.copies()];
      long most = head.max();
      for (int c = 0; c < of.length; c++) {
        of[c] = next(h, head, side.extra(i));
        if (of[c] < 0) {
          return null;
        }
        left[of[c]]--;
        most = Math.min(most, types.usable[of[c]] - side.extra(i));
      }
      long before = row.isEmpty() ? -1 : row.get(i - 2).width();
      most = before < 0 || head.jump() > before ? most : Math.min(most, before + head.jump());
      long end = Math.min(side.lastEnd(), foot + side.joint() + most);
      long width = end - foot - side.joint();
      boolean last =
          end >= side.firstEnd()
              && width >= head.min()
              && side.bearingOff(end) >= 0
              && side.endFits(i, foot, end)
              && (head.eachSide() == 0 || i == head.eachSide());
      width = last ? width : most;
      if (width < head.min() || before >= 0 && Math.abs(width - before) > head.jump()) {
        return null;
      }
      long sawn = 0;
      for (int t : of) {
        sawn += types.usable[t] - width - side.extra(i);
      }
      long outer = foot + side.joint() + width;
      row.add(new Slot(width, of));
      cost = cost.plus(sawn, 0, last ? head.copies() * side.bearingOff(outer) : 0);
      if (last) {
        return row;
      }
      if (!side.jointStands(i, outer) || !side.stoneFits(i, foot, outer)) {
        return null;
      }
      foot = outer;
    }
    return null;
  }

  private int next(int h, Pile.Head head, long extra) {
    int best = -1;
    long middle = (head.min() + head.max()) / 2 + extra;
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
