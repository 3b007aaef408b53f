package headcourse.stock;

import java.util.Arrays;

/**
 * Bounds what the sides of all heads saw off together: each piece has a price, and every side takes
 * those that cost it least, as though it were alone. The prices go up where more is taken than the
 * pile holds and down where less is, until the bound is as high as it will go.
 *
 * <p>Source: the Lagrangian relaxation of a set partition, M. L. Fisher, "The Lagrangian relaxation
 * method for solving integer programming problems", Management Science 27 (1981), 1–18.
 */
final class PiecePrices {
  private static final long SCALE = 1 << 10;
  private static final int NODES = 400_000;
  private static final int ROUNDS = 300;

  /** After so many rounds without gain prices change half as much; below the least, not at all. */
  private static final int PATIENCE = 12;

  private static final double LEAST = 0.01;

  /** So many nodes made, or looked at, count as a step. */
  private static final int MADE = 40;

  private static final int LOOKED_AT = 400;

  private final SweepSide[] sides;
  private final int[] type;
  private final long[] usable;
  private final int[] first;
  private final RowGraph[] graphs;
  private final RowGraph.Pieces[] pieces;

  /** Prices of pieces, and what all from one on come to. */
  private long[] price;

  private final long[] after;
  private final long[][] open;
  private final long[] ends;
  private Known known;
  private long bound = Long.MIN_VALUE;
  private boolean full;
  private long nodes;

  /**
   * Prices that the bound is not known to go higher than with.
   *
   * @param price by piece
   * @param ends the first and the last foot where each side might end
   * @param bound what is sawn off at least
   */
  record Known(long[] price, long[] ends, long bound) {
    static final Known NONE = new Known(new long[0], new long[0], 0);

    /** Whether there is nothing to gain for the same ends. */
    boolean reached(long[] of, long sawn) {
      return bound <= sawn && Arrays.equals(ends, of);
    }
  }

  PiecePrices(PileTypes types, SweepBounds bounds) {
    sides = bounds.sides();
    first = new int[types.size() + 1];
    for (int t = 0; t < types.size(); t++) {
      first[t + 1] = first[t] + types.count[t];
    }
    int n = first[types.size()];
    type = new int[n];
    usable = new long[n];
    for (int t = 0; t < types.size(); t++) {
      for (int u = first[t]; u < first[t + 1]; u++) {
        type[u] = t;
        usable[u] = types.usable[t];
      }
    }
    price = new long[n];
    after = new long[n + 1];
    graphs = new RowGraph[sides.length];
    pieces = new RowGraph.Pieces[sides.length / 2];
    open = new long[sides.length / 2][n + 1];
    for (int s = 0; s < sides.length && !full; s++) {
      int h = s / 2;
      if (s % 2 == 0) {
        long[] covers = new long[n];
        for (int u = 0; u < n; u++) {
          covers[u] = types.fits.get(type[u]).get(h) ? sides[s].covers(usable[u]) : 0;
        }
        pieces[h] = new RowGraph.Pieces(type, covers);
      }
      graphs[s] = s % 2 == 1 && bounds.alike(h) && sides[s].labelled == sides[s - 1].labelled ? graphs[s - 1] : graph(sides[s], pieces[h]);
    }
    known = bounds.prices();
    if (known.price.length == n) {
      price = known.price.clone();
    }
    ends = new long[2 * sides.length];
    for (int s = 0; s < sides.length; s++) {
      ends[2 * s] = sides[s].row.firstEnd();
      ends[2 * s + 1] = sides[s].row.lastEnd();
    }
  }

  private RowGraph graph(SweepSide side, RowGraph.Pieces of) {
    RowGraph g = null;
    for (long grain = 1; grain <= 64; grain *= 2) {
      g = new RowGraph(side, of, NODES, grain);
      nodes += g.size() * (long) (LOOKED_AT / MADE);
      if (!g.full()) {
        return g;
      }
    }
    full = true;
    return g;
  }

  long steps() {
    return nodes / LOOKED_AT;
  }
  boolean full(){return full;}
  long priceOf(int t){return price[first[t]];}
  long value(int s){return graphs[s].value(graphs[s].root(),SCALE);}
  long bound(){return bound;}
  int[] sizes(){int[] o=new int[graphs.length]; for(int i=0;i<o.length;i++)o[i]=graphs[i].size(); return o;}

  /** Whether no choice saws off so little; changes prices as far as that needs. */
  boolean above(long sawn) {
    if (full) {
      return false;
    }
    long[] best = price.clone();
    long most = Long.MIN_VALUE;
    double step = 1;
    int since = 0;
    for (int i = 0; i < ROUNDS && step > LEAST; i++) {
      long now = settle();
      if (now > most) {
        most = now;
        best = price.clone();
        since = 0;
      } else if (++since % PATIENCE == 0) {
        step /= 2;
      }
      bound = now >= RowGraph.NEVER / 2 ? RowGraph.NEVER : Math.floorDiv(most + SCALE - 1, SCALE);
      if (bound > sawn || known.reached(ends, sawn)) {
        return bound > sawn;
      }
      int[] over = new int[type.length];
      long length = taken(over);
      if (length == 0) {
        break;
      }
      double by = step * ((sawn + 1) * SCALE - now) / length;
      for (int u = 0; u < type.length; u++) {
        price[u] = Math.max(0, price[u] + (long) (by * over[first[type[u]]]));
      }
    }
    price = best;
    settle();
    known = new Known(price.clone(), ends, bound);
    return false;
  }

  /** What was found of the prices, for the next time. */
  Known known() {
    return known;
  }

  /** Where all sides are with nothing given to them, or null. */
  int[] start() {
    int[] at = new int[sides.length];
    for (int s = 0; s < at.length; s++) {
      at[s] = graphs[s].root();
      if (at[s] == RowGraph.NONE) {
        return null;
      }
    }
    return at;
  }

  /**
   * Where the sides are after the next piece, or null where one of them can't come out.
   *
   * @param side the side that gets it, or −1
   * @param asEnd whether it is that side's end stone
   */
  int[] next(int[] at, int side, boolean asEnd) {
    int[] out = new int[at.length];
    for (int s = 0; s < out.length; s++) {
      out[s] = s == side ? graphs[s].taken(at[s], asEnd) : graphs[s].skipped(at[s]);
      if (out[s] == RowGraph.NONE) {
        return null;
      }
    }
    return out;
  }

  /** Number of the first piece of a type. */
  int first(int t) {
    return first[t];
  }

  /**
   * What is sawn off at least.
   *
   * @param at where the sides are
   * @param u pieces given or left lying so far
   * @param given length of those given
   * @param missing by head: pieces still missing for the stone that was begun
   */
  long sawn(int[] at, int u, long given, int[] missing) {
    long sum = SCALE * given - after[u];
    for (int s = 0; s < at.length; s++) {
      sum += graphs[s].value(at[s], SCALE);
    }
    for (int h = 0; h < missing.length; h++) {
      sum += missing[h] == 0 ? 0 : missing[h] * open[h][u];
    }
    return Math.floorDiv(sum + SCALE - 1, SCALE);
  }

  /** How much more is taken of each type than there is; the sum of the squares. */
  private long taken(int[] over) {
    for (int s = 0; s < sides.length; s++) {
      int h = s / 2;
      int[] count = new int[type.length];
      graphs[s].use(cost(s), SCALE, count);
      for (int u = 0; u < count.length; u++) {
        over[first[type[u]]] += count[u];
        if (count[u] > 0 && sides[s].copies > 1) {
          int v = u + 1;
          while (open[h][v] != each(v)) {
            v++;
          }
          over[first[type[v]]] += count[u] * (sides[s].copies - 1);
        }
      }
    }
    long sum = 0;
    for (int t = 0; t + 1 < first.length; t++) {
      int u = first[t];
      over[u] -= first[t + 1] - u;
      if (over[u] < 0 && price[u] == 0) {
        over[u] = 0;
      }
      sum += (long) over[u] * over[u];
    }
    return sum;
  }

  private long each(int u) {
    return SCALE * usable[u] + price[u];
  }

  private long[] cost(int s) {
    long[] out = new long[type.length];
    int more = sides[s].copies - 1;
    for (int u = 0; u < out.length; u++) {
      out[u] = each(u) + (more == 0 ? 0 : Math.min(RowGraph.NEVER, more * open[s / 2][u + 1]));
    }
    return out;
  }

  /** Settles the graphs for the prices; the bound at these. */
  private long settle() {
    int n = type.length;
    for (int u = n - 1; u >= 0; u--) {
      after[u] = after[u + 1] + price[u];
    }
    for (int h = 0; h < open.length; h++) {
      open[h][n] = RowGraph.NEVER / 64;
      for (int u = n - 1; u >= 0; u--) {
        open[h][u] = pieces[h].covers()[u] > 0 ? Math.min(open[h][u + 1], each(u)) : open[h][u + 1];
      }
    }
    long sum = -after[0];
    for (int s = 0; s < sides.length; s++) {
      if (s % 2 == 0 || graphs[s] != graphs[s - 1]) {
        graphs[s].price(cost(s), SCALE);
        nodes += graphs[s].size();
      }
      sum = Math.min(RowGraph.NEVER, sum + graphs[s].value(graphs[s].root(), SCALE));
    }
    return sum;
  }
}
