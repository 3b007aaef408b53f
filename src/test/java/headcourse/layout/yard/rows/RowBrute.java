package headcourse.layout.yard.rows;

import java.util.ArrayList;
import java.util.List;

/** Every choice there is, one after another: for small piles, without a thought. */
final class RowBrute {
  private final Pile pile;
  private final boolean[] used;
  private final int[] ways;
  private final List<List<List<Answer.Picked>>> rows = new ArrayList<>();
  private final List<List<Integer>> keys = new ArrayList<>();
  private Cost best;
  private long cap;

  RowBrute(Pile pile) {
    this.pile = pile;
    used = new boolean[pile.pieces().size()];
    ways = new int[pile.heads().size()];
    pile.heads().forEach(h -> rows.add(List.of(new ArrayList<>(), new ArrayList<>())));
    pile.heads().forEach(h -> keys.add(new ArrayList<>()));
  }

  /** The least cost, or null where there is no choice. */
  Cost least() {
    head(0);
    if (best == null) {
      return null;
    }
    cap = best.sawn() + pile.give();
    best = null;
    head(0);
    return best;
  }

  private Pile.Way way(int h) {
    return pile.heads().get(h).ways().get(ways[h]);
  }

  private void head(int h) {
    if (h == ways.length) {
      Cost cost = RowChecker.cost(pile, chosen());
      best = best == null || cost.compare(best, cap) < 0 ? cost : best;
      return;
    }
    for (ways[h] = 0; ways[h] < pile.heads().get(h).ways().size(); ways[h]++) {
      int way = ways[h];
      key(h);
      ways[h] = way;
    }
  }

  private void key(int h) {
    List<Integer> of = keys.get(h);
    if (way(h).key() < 0 || of.size() == pile.heads().get(h).copies()) {
      side(h, 0);
      return;
    }
    for (int p = 0; p < used.length; p++) {
      Pile.Piece piece = pile.pieces().get(p);
      if (!used[p] && piece.fits(h, true) && piece.usable() >= way(h).key()) {
        used[p] = true;
        of.add(p);
        key(h);
        of.remove(of.size() - 1);
        used[p] = false;
      }
    }
  }

  private void side(int h, int s) {
    if (s == 2) {
      head(h + 1);
      return;
    }
    Pile.Row row = way(h).row(s);
    if (row.mayEnd()) {
      side(h, s + 1);
    }
    if (row.side() != null) {
      stone(h, s, row.side().start());
    }
  }

  private void stone(int h, int s, long foot) {
    Pile.Head head = pile.heads().get(h);
    RowSide side = way(h).row(s).side();
    List<Answer.Picked> mine = rows.get(h).get(s);
    int i = mine.size() + 1;
    for (long w = head.min(); w <= head.max(); w++) {
      boolean near = i == 1 || Math.abs(mine.get(i - 2).width() - w) <= head.jump();
      if (near && foot + side.joint() + w <= side.lastEnd()) {
        pieces(h, s, foot, w, new ArrayList<>());
      }
    }
  }

  private void pieces(int h, int s, long foot, long w, List<Integer> of) {
    Pile.Head head = pile.heads().get(h);
    Pile.Row row = way(h).row(s);
    RowSide side = row.side();
    List<Answer.Picked> mine = rows.get(h).get(s);
    if (of.size() < head.copies()) {
      int from = pile.ticketed() || of.isEmpty() ? 0 : of.get(of.size() - 1) + 1;
      for (int p = from; p < used.length; p++) {
        if (!used[p] && pile.pieces().get(p).fits(h, false) && pile.pieces().get(p).usable() >= w) {
          used[p] = true;
          of.add(p);
          pieces(h, s, foot, w, of);
          of.remove(of.size() - 1);
          used[p] = false;
        }
      }
      return;
    }
    int i = mine.size() + 1;
    long outer = foot + side.joint() + w;
    mine.add(new Answer.Picked(w, of));
    boolean last = row.each() == 0 || row.each() == i;
    if (last && side.stands(i, foot, outer, true) && holds(of, side.extent(i, foot, outer, true))) {
      side(h, s + 1);
    }
    if (i != row.each()
        && side.stands(i, foot, outer, false)
        && holds(of, side.extent(i, foot, outer, false))) {
      stone(h, s, outer);
    }
    mine.remove(mine.size() - 1);
  }

  private boolean holds(List<Integer> of, long extent) {
    return of.stream().allMatch(p -> pile.pieces().get(p).usable() >= extent);
  }

  private List<Answer.Chosen> chosen() {
    List<Answer.Chosen> out = new ArrayList<>();
    for (int h = 0; h < ways.length; h++) {
      out.add(new Answer.Chosen(ways[h], keys.get(h), rows.get(h).get(0), rows.get(h).get(1)));
    }
    return out;
  }
}
