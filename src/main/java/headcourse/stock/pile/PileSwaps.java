package headcourse.stock.pile;

import headcourse.stock.pile.PileDraft.Slot;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Betters a choice by letting pieces change places, with each other or with those left lying. A
 * change for the worse is taken too, less and less readily as it goes on (simulated annealing,
 * Kirkpatrick, Gelatt and Vecchi, Science 220, 1983); the best choice on the way is kept.
 *
 * <p>What pieces cost at least is soon known; only where that is less than the best does {@link
 * HeadFit} look for rows that keep to all rules.
 */
final class PileSwaps {
  private static final int MEMORY = 50_000;

  /** So many looks at heads count as a step. */
  private static final long LOOKS = 8;

  /** How much sawn off, in ticks, weighs at the beginning and at the end. */
  private static final double FIRST = 2;

  private static final double LAST = 120;

  private final SwapRows rows;
  private final int heads;
  private final double range;
  private final double bearings;
  private final Map<SearchState, Pile.Cost> fitted = new HashMap<>();
  private final Pile.Cost[] least;
  private final int[] order;
  private final int[] at;
  private PileDraft best;
  private long mix;
  private double weight = FIRST;
  private double none;
  private double sawn;
  private long steps;
  private long looks;
  private long tries;

  /**
   * @param rows the pieces as they lie
   * @param seed of the changes that are tried
   */
  PileSwaps(SweepBounds bounds, SwapRows rows, long seed) {
    this.rows = rows;
    this.mix = seed * 0x9E3779B97F4A7C15L + 1;
    this.heads = bounds.pairs().size();
    this.least = new Pile.Cost[heads];
    double widths = 0;
    double off = 1;
    for (SweepSide s : bounds.sides()) {
      widths = Math.max(widths, s.pair.head().max() - s.pair.head().min());
      for (long e = s.row.side.firstEnd(); e <= s.row.side.lastEnd(); e++) {
        off = Math.max(off, (double) s.copies * s.row.side.bearingOff(e));
      }
    }
    this.range = Math.max(1, widths);
    this.bearings = off * heads;
    this.order = new int[rows.size()];
    this.at = new int[rows.size()];
  }

  long steps() {
    return steps;
  }

  /** What it ended with, the less the better. */
  double worth() {
    return worth(least);
  }

  /**
   * Looks for a better choice, or gives back what is known.
   *
   * @param known the best known
   * @param goal none costs less
   * @param most how many steps it may take
   */
  PileDraft run(PileDraft known, Pile.Cost goal, long most) {
    best = known;
    // No rows at all are worse than the best.
    none = known.cost().imbalance() / 2.0 + 4 * range;
    sawn = known.cost().sawn() / 2.0 + range / 4;
    long from = steps;
    long limit = steps + most;
    for (int h = 0; h < heads; h++) {
      least[h] = rows.least(h);
    }
    double now = worth(least);
    double heat = range / 4;
    byLength();
    while (steps < limit && best.cost().compareTo(goal) > 0) {
      if (tries++ % 64 == 0) {
        double done = (double) (steps - from) / most;
        heat = range / 4 * StrictMath.pow(0.8 / range, done);
        weight = FIRST * StrictMath.pow(LAST / FIRST, done);
        now = worth(least);
        byLength();
      }
      int[] was = rows.pieces();
      Pile.Cost[] before = least.clone();
      boolean[] touched = new boolean[heads];
      int swaps = random(10) < 6 ? 1 : random(10) < 6 ? 2 : 3;
      int last = -1;
      for (int k = 0; k < swaps; k++) {
        last = change(last, touched);
      }
      for (int h = 0; h < heads; h++) {
        if (touched[h]) {
          least[h] = rows.least(h);
          looks++;
        }
      }
      looks++;
      steps += looks / LOOKS;
      looks %= LOOKS;
      double then = worth(least);
      if (promising()) {
        verify(limit);
        then = worth(least);
      }
      if (then <= now || StrictMath.exp((now - then) / heat) * 1_000_000 > random(1_000_000)) {
        now = then;
      } else {
        rows.lay(was);
        System.arraycopy(before, 0, least, 0, heads);
      }
    }
    return best;
  }

  /** Swaps two pieces, near each other in length as often as not; a place to go on from. */
  private int change(int from, boolean[] touched) {
    int n = rows.size();
    int i = from >= 0 && random(2) == 0 ? from : random(n);
    int j = random(n);
    if (random(2) == 0) {
      int near = at[i] + (random(2) == 0 ? 1 : -1) * (1 + random(6));
      j = order[Math.max(0, Math.min(n - 1, near))];
    }
    if (i == j || !rows.may(i, j)) {
      return from;
    }
    rows.swap(i, j);
    for (int p : new int[] {i, j}) {
      if (rows.head(p) >= 0) {
        touched[rows.head(p)] = true;
      }
    }
    return j;
  }

  private void byLength() {
    long[] key = new long[order.length];
    for (int p = 0; p < key.length; p++) {
      key[p] = (long) rows.type(p) * key.length + p;
    }
    Arrays.sort(key);
    for (int k = 0; k < key.length; k++) {
      order[k] = (int) (key[k] % key.length);
      at[order[k]] = k;
    }
  }

  private double worth(Pile.Cost[] of) {
    double sum = 0;
    for (int h = 0; h < heads; h++) {
      sum +=
          of[h] == null
              ? none + weight * (rows.wanting(h) + sawn)
              : weight * of[h].sawn() + of[h].imbalance() + 0.9 * of[h].bearing() / bearings;
    }
    return sum;
  }

  private Pile.Cost all() {
    Pile.Cost sum = Pile.Cost.NONE;
    for (Pile.Cost c : least) {
      sum = sum == null || c == null ? null : sum.plus(c.sawn(), c.imbalance(), c.bearing());
    }
    return sum;
  }

  private boolean promising() {
    Pile.Cost all = all();
    return all != null && all.compareTo(best.cost()) < 0;
  }

  /** Looks whether the pieces come to rows that cost as little as it seems. */
  private void verify(long limit) {
    List<List<List<Slot>>> found = new ArrayList<>();
    for (int h = 0; h < heads && promising(); h++) {
      SearchState key = rows.key(h);
      Pile.Cost before = fitted.get(key);
      if (before != null && before.compareTo(least[h]) > 0) {
        least[h] = before;
        if (!promising()) {
          return;
        }
      }
      Pile.Cost all = all();
      // What the others leave of the best; less sawn off, it matters no more how the sides differ.
      long more = all.sawn() < best.cost().sawn() ? Long.MAX_VALUE / 8 : 0;
      Pile.Cost rest =
          best.cost()
              .plus(
                  least[h].sawn() - all.sawn(),
                  least[h].imbalance() - all.imbalance() + more,
                  Long.MAX_VALUE / 8);
      HeadFit fit = rows.fit(h, rest, limit - steps);
      steps += 10 + fit.steps();
      least[h] =
          fit.cost() == null
              ? new Pile.Cost(
                  least[h].sawn(),
                  Math.max(least[h].imbalance(), rest.imbalance() - more + 1),
                  least[h].bearing())
              : fit.cost();
      if (fitted.size() < MEMORY) {
        fitted.put(key, least[h]);
      }
      if (fit.cost() != null) {
        found.add(fit.rows());
      }
    }
    if (found.size() == heads && promising()) {
      best = new PileDraft(found, all());
    }
  }

  /** A number from 0 on and less than n. */
  private int random(int n) {
    // Marsaglia's xorshift64.
    mix ^= mix << 13;
    mix ^= mix >>> 7;
    mix ^= mix << 17;
    return (int) Math.floorMod(mix >>> 16, (long) n);
  }
}
