package headcourse.layout.yard.rows;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What the rest of every side costs at least, by head, way and side. */
final class Reaches {
  /** With no more ways than this each is looked at beforehand. */
  private static final int FEW = 8;

  private final Pile pile;
  private final Store store;
  private final List<List<Integer>> order = new ArrayList<>();
  private final Reach[][][] all;
  private final Map<List<Object>, long[][]> layers = new HashMap<>();

  Reaches(Store store) {
    pile = store.pile;
    this.store = store;
    all = new Reach[pile.heads().size()][][];
    for (int h = 0; h < all.length; h++) {
      all[h] = new Reach[pile.heads().get(h).ways().size()][2];
      order.add(new ArrayList<>());
    }
  }

  Reach of(int h, int way, int s) {
    if (all[h][way][s] == null) {
      Pile.Head head = pile.heads().get(h);
      Pile.Row row = head.ways().get(way).row(s);
      // Beside one key, where nothing is there yet, the two sides differ in their rule alone.
      int own = row.there().isEmpty() ? 0 : 1 + s;
      all[h][way][s] =
          new Reach(
              store,
              h,
              head,
              row,
              i ->
                  layers.computeIfAbsent(
                      i == 0
                          ? List.of(h, row.side().rule())
                          : List.of(h, row.side().rule(), row.each(), i, way, own),
                      k -> Reach.layer(row.side())));
    }
    return all[h][way][s];
  }

  /** The least of a way: sawn off, off the bearing, shortfall; NEVER where it can't come out. */
  long[] least(int h, int way) {
    Pile.Way w = pile.heads().get(h).ways().get(way);
    long[] out = {w.key() < 0 ? 0 : store.waste(h, true, w.key()), 0, 0};
    for (int s = 0; s < 2; s++) {
      Pile.Row row = w.row(s);
      if (!row.mayEnd()) {
        RowSide side = row.side();
        long[] least = side == null ? Reach.DEAD : of(h, way, s).least(1, side.start());
        out[0] += least[0];
        out[1] += least[1];
        out[2] = Math.max(out[2], least[2]);
      }
    }
    return out;
  }

  /**
   * The least of a head whichever way is taken, with what the heads after it cost at least; where
   * there are many ways, only what is known without looking at each.
   */
  long[] ahead(int h, long[] after) {
    boolean many = all[h].length > FEW;
    long[] least = {Store.NEVER, Store.NEVER, Store.NEVER};
    for (int way = 0; way < all[h].length; way++) {
      long[] of = many ? new long[] {0, nearest(h, way), 0} : least(h, way);
      for (int i = 0; i < 3 && of[0] < Store.NEVER; i++) {
        least[i] = Math.min(least[i], of[i]);
      }
    }
    return new long[] {
      Math.min(Store.NEVER, least[0] + after[0]),
      Math.min(Store.NEVER, least[1] + after[1]),
      Math.max(least[2], after[2])
    };
  }

  /** The ways of a head, those first that may bear nearest the target. */
  List<Integer> byBearing(int h) {
    if (order.get(h).isEmpty()) {
      List<Long> off = new ArrayList<>();
      for (int way = 0; way < all[h].length; way++) {
        order.get(h).add(way);
        off.add(nearest(h, way));
      }
      order.get(h).sort(Comparator.comparing(off::get));
    }
    return order.get(h);
  }

  /** How far the bearings of a way are off at least, pm. */
  private long nearest(int h, int way) {
    Pile.Way w = pile.heads().get(h).ways().get(way);
    return pile.heads().get(h).copies() * (nearest(w.left()) + nearest(w.right()));
  }

  private static long nearest(Pile.Row row) {
    long least = Store.NEVER / 8;
    RowSide side = row.side();
    for (long e = side == null ? 1 : side.start(); side != null && e <= side.lastEnd(); e++) {
      long off = side.bearingOff(e);
      least = off >= 0 ? Math.min(least, off) : least;
    }
    return row.mayEnd() ? 0 : least;
  }
}
