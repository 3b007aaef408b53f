package headcourse.stock;

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

  private static final int NODES = 250_000;
  private static final int ROUNDS = 300;

  /** After so many rounds without gain prices change half as much; below the least, not at all. */
  private static final int PATIENCE = 12;

  private static final double LEAST = 0.05;

  private static final double BENT = 1.5;

  /** No price is higher. */
  private static final double TOP = 1L << 34;

  private static final long GAIN = SCALE / 16;

  /** So many nodes made, or looked at, count as a step. */
  private static final int MADE = 40;

  private static final int LOOKED_AT = 400;

  private final SweepSide[] sides;
  private final Pile.Cost cap;
  private final long limit;
  private final PileUnits units;
  private final RowValues[] values;
  private final RankPrices[] ranks;
  private final double[] price;

  /** What the price of a difference is at most. */
  private double most;

  private double range = 1;

  /** The way in which the prices were changed last. */
  private final double[] way;

  private final long[] after;
  private final long[][] open;
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
    price = new double[types.size()];
    after = new long[units.size() + 1];
    values = new RowValues[sides.length];
    ranks = new RankPrices[sides.length / 2];
    open = new long[ranks.length][units.size() + 1];
    ends = new long[2 * sides.length];
    for (int s = 0; s < sides.length && !full; s++) {
      int h = s / 2;
      ends[2 * s] = sides[s].row.firstEnd();
      ends[2 * s + 1] = sides[s].row.lastEnd();
      boolean same = s % 2 == 1 && bounds.alike(h) && sides[s].labelled == sides[s - 1].labelled;
      RowGraph g = same ? values[s - 1].graph() : graph(sides[s], units.pieces(sides[s]));
      values[s] = full ? null : new RowValues(g, sides[s].copies);
      ranks[h] = new RankPrices(sides[s].pair);
    }
    known = bounds.prices();
    for (RankPrices r : ranks) {
      range = r == null ? range : Math.max(range, r.range());
    }
    way = full ? new double[0] : new double[variables()];
    if (!full && known.price.length == variables()) {
      restore(known.price);
    }
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

  private int variables() {
    int n = price.length + 1;
    for (RankPrices r : ranks) {
      n += r.size();
    }
    return n;
  }

  private double[] variablesNow() {
    double[] out = Arrays.copyOf(price, variables());
    int at = price.length;
    for (RankPrices r : ranks) {
      for (int i = 0; i < r.size(); i++) {
        out[at++] = r.get(i);
      }
    }
    out[at] = most;
    return out;
  }

  private void restore(double[] from) {
    System.arraycopy(from, 0, price, 0, price.length);
    int at = price.length;
    for (RankPrices r : ranks) {
      for (int i = 0; i < r.size(); i++) {
        r.set(i, differences() ? from[at] : 0);
        at++;
      }
    }
    most = differences() ? from[at] : 0;
  }

  /** Whether no choice keeps to the cap; changes prices as far as that needs. */
  boolean above() {
    if (full) {
      return false;
    }
    double[] best = variablesNow();
    double step = 1;
    long before = Long.MIN_VALUE;
    for (int i = 1; i <= ROUNDS && step > LEAST && (i == 1 || steps() < limit); i++) {
      long now = settle();
      if (now > highest) {
        highest = now;
        best = variablesNow();
      }
      if (now > 0 || known.reached(ends, cap)) {
        return now > 0;
      }
      if (i % PATIENCE == 0) {
        step /= highest - before < Math.max(GAIN, (SCALE - highest) / 50) ? 2 : 1;
        before = highest;
      }
      if (!change(step * (SCALE - now))) {
        break;
      }
    }
    restore(best);
    settle();
    known = new Known(best, ends, cap);
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
      after[u] = after[u + 1] + (long) price[units.type(u)];
    }
    long sum = -after[0];
    for (int s = 0; s < sides.length; s++) {
      int h = s / 2;
      if (s % 2 == 0) {
        units.cheapest(sides[s], this::each, open[h]);
      }
      values[s].settle(cost(s), ranks[h].of(s % 2, most), SCALE);
      nodes += values[s].graph().size();
      sum = Math.min(RowGraph.NEVER, sum + values[s].root());
    }
    return sum >= RowGraph.NEVER / 2 ? RowGraph.NEVER : sum - allowed();
  }

  /** What a choice within the cap may cost. */
  private long allowed() {
    long differ = differences() ? (long) Math.ceil(most * cap.imbalance()) : 0;
    return SCALE * cap.sawn() + differ;
  }

  private long each(int u) {
    return SCALE * units.usable(u) + (long) price[units.type(u)];
  }

  private long[] cost(int s) {
    long[] out = new long[units.size()];
    int more = sides[s].copies - 1;
    for (int u = 0; u < out.length; u++) {
      out[u] = each(u) + (more == 0 ? 0 : Math.min(RowGraph.NEVER, more * open[s / 2][u + 1]));
    }
    return out;
  }

  /** Changes the prices so that the bound might go up by so much; false where it can't. */
  private boolean change(double by) {
    double[] slope = slope();
    double steep = product(slope, slope);
    double along = product(slope, way);
    // Not back and forth: what turns against the way so far is bent towards it.
    double bent = along < 0 ? -BENT * along / product(way, way) : 0;
    for (int i = 0; i < slope.length; i++) {
      way[i] = slope[i] + bent * way[i];
    }
    double length = product(way, way);
    if (4 * length < steep) {
      System.arraycopy(slope, 0, way, 0, way.length);
      length = steep;
    }
    if (length == 0) {
      return false;
    }
    for (int t = 0; t < price.length; t++) {
      price[t] = Math.min(TOP, Math.max(0, price[t] + by / length * way[t]));
    }
    int at = price.length;
    for (RankPrices r : ranks) {
      for (int i = 0; i < r.size(); i++) {
        r.set(i, r.get(i) + by / length * way[at++] / r.range());
      }
    }
    most += by / length * way[at] / range;
    within();
    return true;
  }

  private static double product(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  /** How the bound changes with each of the prices. */
  private double[] slope() {
    double[] out = new double[variables()];
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
    for (int t = 0; t < price.length; t++) {
      out[t] -= units.count(t);
      out[t] = out[t] < 0 && price[t] <= 0 ? 0 : out[t];
    }
    if (differences()) {
      int at = price.length;
      double alone = -cap.imbalance();
      for (int h = 0; h < ranks.length; h++) {
        double[] own = new double[ranks[h].size()];
        alone += ranks[h].slope(new double[][] {width[2 * h], width[2 * h + 1]}, own);
        for (double d : own) {
          out[at++] = d / ranks[h].range();
        }
      }
      out[at] = alone < 0 && most <= 0 ? 0 : alone / range;
    }
    return out;
  }

  /** Moves the prices of differences to the nearest that are within the most. */
  private void within() {
    double sum = most;
    int n = 1;
    double level = Math.max(0, most);
    for (boolean more = true; more; ) {
      double s = most;
      n = 1;
      for (RankPrices r : ranks) {
        for (int i = 0; i < r.size(); i++) {
          if (Math.abs(r.get(i)) > level) {
            s += Math.abs(r.get(i));
            n++;
          }
        }
      }
      double next = Math.max(0, s / n);
      more = next < level - 1e-9 || next > level + 1e-9 && sum != s;
      sum = s;
      level = Math.max(next, 0);
    }
    most = Math.min(TOP, level);
    for (RankPrices r : ranks) {
      for (int i = 0; i < r.size(); i++) {
        r.set(i, Math.max(-most, Math.min(most, r.get(i))));
      }
    }
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
    boolean never = over >= RowGraph.NEVER / 4 || most < 1e-6 || !differences();
    return never ? RowGraph.NEVER : cap.imbalance() + 1 + (long) Math.floor((over - 1) / most);
  }
}
