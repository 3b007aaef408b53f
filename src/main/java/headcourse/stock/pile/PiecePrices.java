package headcourse.stock.pile;

import java.util.Arrays;

/**
 * Bounds what the sides of all heads saw off together, and how they differ: each piece has a price,
 * and every side takes those that cost it least, as though it were alone. The prices go up where
 * more is taken than the pile holds and down where less is, until the bound is as high as it goes.
 *
 * <p>Source: the Lagrangian relaxation of a set partition, M. L. Fisher, "The Lagrangian relaxation
 * method for solving integer programming problems", Management Science 27 (1981), 1–18.
 */
final class PiecePrices {
  /** What a tick sawn off costs. */
  private static final long SCALE = 1 << 10;

  private static final int NODES = 150_000;
  private static final int ROUNDS = 300;

  /** After so many rounds without gain prices change half as much; below the least, not at all. */
  private static final int PATIENCE = 12;

  private static final double LEAST = 0.05;

  /** Less is no gain. */
  private static final long GAIN = SCALE / 16;

  /** So many nodes made, or looked at, count as a step. */
  private static final int MADE = 40;

  private static final int LOOKED_AT = 400;

  private final SweepSide[] sides;
  private final Pile.Cost cap;
  private final long limit;
  private final PileUnits units;
  private final RowValues[] values;
  private final PriceList prices;

  /** What the prices of all pieces from one on come to. */
  private final long[] after;

  /** By head: the cheapest piece from one on. */
  private final long[][] open;

  /** The first and the last foot where each side may end. */
  private final long[] ends;

  private Known known;
  private boolean full;
  private long highest = Long.MIN_VALUE;
  private long nodes;

  /**
   * Prices that the bound is not known to go higher than with.
   *
   * @param price by type, then by pair of stones, then the most
   * @param ends the first and the last foot where each side might end
   * @param cap that was not to be ruled out
   */
  record Known(double[] price, long[] ends, Pile.Cost cap) {
    static final Known NONE = new Known(new double[0], new long[0], Pile.Cost.NONE);

    /** Whether there is nothing to gain for the same ends. */
    boolean reached(long[] of, Pile.Cost to) {
      return Arrays.equals(ends, of)
          && cap.sawn() <= to.sawn()
          && cap.imbalance() <= to.imbalance();
    }
  }

  /**
   * @param cap what is to be ruled out
   * @param limit how many steps it may take, more or less
   */
  PiecePrices(PileTypes types, SweepBounds bounds, Pile.Cost cap, long limit) {
    this.cap = cap;
    this.limit = limit;
    sides = bounds.sides();
    units = new PileUnits(types);
    after = new long[units.size() + 1];
    values = new RowValues[sides.length];
    open = new long[sides.length / 2][units.size() + 1];
    ends = new long[2 * sides.length];
    for (int s = 0; s < sides.length && !full; s++) {
      int h = s / 2;
      ends[2 * s] = sides[s].row.firstEnd();
      ends[2 * s + 1] = sides[s].row.lastEnd();
      boolean same = s % 2 == 1 && bounds.alike(h) && sides[s].labelled == sides[s - 1].labelled;
      RowGraph g = same ? values[s - 1].graph() : graph(sides[s], units.pieces(sides[s]));
      values[s] = full ? null : new RowValues(g, sides[s].copies);
    }
    known = bounds.prices();
    prices = new PriceList(types.size(), bounds.pairs(), differences());
    prices.restore(known.price);
  }

  private RowGraph graph(SweepSide side, RowGraph.Pieces of) {
    int most = (int) Math.min(NODES, limit * MADE / 4);
    for (long grain = 1; grain <= 64 && steps() < limit; grain *= 2) {
      RowGraph g = new RowGraph(side, of, most, grain);
      nodes += g.size() * (long) (LOOKED_AT / MADE);
      if (!g.full()) {
        return g;
      }
    }
    full = true;
    return null;
  }

  long steps() {
    return nodes / LOOKED_AT;
  }

  /** Whether the rows are too many to be of use. */
  boolean full() {
    return full;
  }

  /** What was found of the prices, for the next time. */
  Known known() {
    return known;
  }

  private boolean differences() {
    return cap.imbalance() < Long.MAX_VALUE / 16;
  }

  /** Whether no choice keeps to the cap; changes prices as far as that needs. */
  boolean above() {
    if (full) {
      return false;
    }
    double[] best = prices.all();
    double step = 1;
    long before = Long.MIN_VALUE;
    for (int i = 1; i <= ROUNDS && step > LEAST && (i == 1 || steps() < limit); i++) {
      long now = settle();
      if (now > highest) {
        highest = now;
        best = prices.all();
      }
      if (now > 0 || known.reached(ends, cap)) {
        return now > 0;
      }
      if (i % PATIENCE == 0) {
        step /= highest - before < Math.max(GAIN, (SCALE - highest) / 50) ? 2 : 1;
        before = highest;
      }
      if (!prices.change(step * (SCALE - now), slope())) {
        break;
      }
    }
    prices.restore(best);
    settle();
    known = new Known(best, steps() < limit ? ends : new long[0], cap);
    return false;
  }

  /** By how much the bound is above the cap. */
  long highest() {
    return highest;
  }

  /** The same for the prices as they are now. */
  private long settle() {
    int n = units.size();
    for (int u = n - 1; u >= 0; u--) {
      after[u] = after[u + 1] + prices.of(units.type(u));
    }
    long sum = -after[0];
    for (int s = 0; s < sides.length; s++) {
      int h = s / 2;
      if (s % 2 == 0) {
        units.cheapest(sides[s], this::each, open[h]);
      }
      values[s].settle(cost(s), prices.widths(h, s % 2), SCALE);
      nodes += values[s].graph().size();
      sum = Math.min(RowGraph.NEVER, sum + values[s].root());
    }
    return sum >= RowGraph.NEVER / 2 ? RowGraph.NEVER : sum - allowed();
  }

  /** What a choice within the cap may cost. */
  private long allowed() {
    long differ = differences() ? (long) Math.ceil(prices.most() * cap.imbalance()) : 0;
    return SCALE * cap.sawn() + differ;
  }

  private long each(int u) {
    return SCALE * units.usable(u) + prices.of(units.type(u));
  }

  private long[] cost(int s) {
    long[] out = new long[units.size()];
    int more = sides[s].copies - 1;
    for (int u = 0; u < out.length; u++) {
      out[u] = each(u) + (more == 0 ? 0 : Math.min(RowGraph.NEVER, more * open[s / 2][u + 1]));
    }
    return out;
  }

  /** How the bound changes with each of the prices. */
  private double[] slope() {
    double[] out = new double[prices.size()];
    double[][] width = new double[sides.length][];
    for (int s = 0; s < sides.length; s++) {
      int[] count = new int[units.size()];
      width[s] = new double[sides[s].bodyStones() + 1];
      values[s].follow(count, width[s]);
      for (int u = 0; u < count.length; u++) {
        out[units.type(u)] += count[u];
        if (count[u] > 0 && sides[s].copies > 1) {
          int v = u + 1;
          while (open[s / 2][v] != each(v)) {
            v++;
          }
          out[units.type(v)] += count[u] * (sides[s].copies - 1);
        }
      }
    }
    for (int t = 0; t < units.types(); t++) {
      out[t] -= units.count(t);
    }
    prices.slope(width, -cap.imbalance(), out);
    return out;
  }

  /** Where all sides are with nothing given to them, and what that cost; or null. */
  long[] start() {
    long[] at = new long[sides.length + 1];
    for (int s = 0; s < sides.length; s++) {
      at[s] = values[s].graph().root();
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
  long[] next(long[] at, int side, boolean asEnd) {
    long[] out = at.clone();
    for (int s = 0; s < sides.length; s++) {
      RowGraph g = values[s].graph();
      int node = (int) at[s];
      if (s == side) {
        out[s] = g.taken(node, asEnd);
        out[sides.length] += out[s] == RowGraph.NONE ? 0 : values[s].more(node, asEnd);
      } else {
        out[s] = g.skipped(node);
      }
      if (out[s] == RowGraph.NONE) {
        return null;
      }
    }
    return out;
  }

  /** Number of the first piece of a type. */
  int first(int t) {
    return units.first(t);
  }

  /**
   * By how much choices cost more than the cap allows.
   *
   * @param at where the sides are
   * @param u pieces given or left lying so far
   * @param given length of those given
   * @param missing by head: pieces still missing for the stone that was begun
   */
  long over(long[] at, int u, long given, int[] missing) {
    long sum = SCALE * given + at[sides.length] - after[u];
    for (int s = 0; s < sides.length; s++) {
      sum += values[s].of((int) at[s]);
    }
    for (int h = 0; h < missing.length; h++) {
      sum += missing[h] == 0 ? 0 : missing[h] * open[h][u];
    }
    return sum - allowed();
  }

  /** What is sawn off at least where the bound is so much above the cap. */
  long sawn(long over) {
    return differences() ? cap.sawn() + 1 : cap.sawn() + (over + SCALE - 1) / SCALE;
  }

  /** How much the sides differ at least then. */
  long imbalance(long over) {
    boolean never = over >= RowGraph.NEVER / 4 || prices.most() < 1e-6;
    return never
        ? RowGraph.NEVER
        : cap.imbalance() + 1 + (long) Math.floor((over - 1) / prices.most());
  }
}
