package headcourse.stock.pile;

import java.util.Arrays;
import java.util.function.IntToLongFunction;

/** The pieces of a pile one by one, ascending. */
final class PileUnits {
  private final PileTypes types;
  private final int[] first;
  private final int[] type;

  PileUnits(PileTypes types) {
    this.types = types;
    first = new int[types.size() + 1];
    for (int t = 0; t < types.size(); t++) {
      first[t + 1] = first[t] + types.count[t];
    }
    type = new int[first[types.size()]];
    for (int t = 0; t < types.size(); t++) {
      Arrays.fill(type, first[t], first[t + 1], t);
    }
  }

  int size() {
    return type.length;
  }

  int types() {
    return types.size();
  }

  int type(int u) {
    return type[u];
  }

  long usable(int u) {
    return types.usable[type[u]];
  }

  /** Number of the first piece of a type. */
  int first(int t) {
    return first[t];
  }

  int count(int t) {
    return types.count[t];
  }

  private boolean fits(int u, SweepSide side) {
    return types.fits.get(type[u]).get(side.pair.h());
  }

  /** The pieces as one side may use them. */
  RowGraph.Pieces pieces(SweepSide side) {
    long[] covers = new long[type.length];
    for (int u = 0; u < covers.length; u++) {
      covers[u] = fits(u, side) ? side.covers(usable(u)) : 0;
    }
    return new RowGraph.Pieces(type, covers);
  }

  /** The cheapest piece that a side may use, from each on. */
  void cheapest(SweepSide side, IntToLongFunction cost, long[] out) {
    out[type.length] = RowGraph.NEVER / 64;
    for (int u = type.length - 1; u >= 0; u--) {
      out[u] = fits(u, side) ? Math.min(out[u + 1], cost.applyAsLong(u)) : out[u + 1];
    }
  }
}
