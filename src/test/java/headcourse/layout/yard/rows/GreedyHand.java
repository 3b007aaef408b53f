package headcourse.layout.yard.rows;

import java.util.ArrayList;
import java.util.List;

/**
 * What a quick hand does: outwards from the key, left and right in turn, each time the piece that
 * is left whose length is nearest the middle of what is allowed, sawn down only where it must be;
 * the last one sawn to land on the bearing.
 */
final class GreedyHand {
  private final Pile pile;
  private final List<Integer> left = new ArrayList<>();
  private long sawn;

  GreedyHand(Pile pile) {
    this.pile = pile;
    for (int i = 0; i < pile.pieces().size(); i++) {
      left.add(i);
    }
  }

  /** What it saws off, or −1 where it doesn't come out. */
  long sawn() {
    for (int h = 0; h < pile.heads().size(); h++) {
      for (int s = 0; s < 2; s++) {
        if (!side(h, pile.heads().get(h), pile.heads().get(h).ways().get(0).row(s))) {
          return -1;
        }
      }
    }
    return sawn;
  }

  private boolean side(int h, Pile.Head head, Pile.Row row) {
    RowSide side = row.side();
    long foot = side.start();
    long before = -1;
    for (int i = 1; row.each() == 0 || i <= row.each(); i++) {
      List<Integer> of = new ArrayList<>();
      for (int c = 0; c < head.copies(); c++) {
        int piece = next(h, head);
        if (piece < 0) {
          return false;
        }
        of.add(piece);
      }
      long most = head.max();
      for (int p : of) {
        most = Math.min(most, pile.pieces().get(p).usable());
      }
      most = before < 0 || head.jump() > before ? most : Math.min(most, before + head.jump());
      long inner = foot;
      long end = Math.min(side.lastEnd(), inner + side.joint() + most);
      long width = end - inner - side.joint();
      boolean last = side.bearingOff(end) >= 0 && width >= head.min();
      width = last ? width : most;
      if (width < head.min() || before >= 0 && Math.abs(width - before) > head.jump()) {
        return false;
      }
      for (int p : of) {
        sawn += pile.pieces().get(p).usable() - width;
      }
      foot = inner + side.joint() + width;
      before = width;
      if (last && (row.each() == 0 || i == row.each())) {
        return side.bearingOff(foot) >= 0;
      }
      if (!side.stands(i, inner, foot, false)) {
        return false;
      }
    }
    return false;
  }

  private int next(int h, Pile.Head head) {
    int best = -1;
    long middle = (head.min() + head.max()) / 2;
    for (int k = 0; k < left.size(); k++) {
      Pile.Piece p = pile.pieces().get(left.get(k));
      if (p.fits(h, false)
          && (best < 0
              || Math.abs(p.usable() - middle)
                  < Math.abs(pile.pieces().get(left.get(best)).usable() - middle))) {
        best = k;
      }
    }
    return best < 0 ? -1 : left.remove(best);
  }
}
