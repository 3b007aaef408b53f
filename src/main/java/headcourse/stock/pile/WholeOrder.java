package headcourse.stock.pile;

import java.util.ArrayList;
import java.util.List;

/**
 * Puts stones that were chosen for a head in an order that keeps to all its rules: one row, or two
 * whose stones go in pairs.
 */
final class WholeOrder {
  private static final int TRY = 1_000;
  private static final int ALL = 30_000;
  private static final int SHUFFLES = 6;

  private final Pile.Head head;
  private final int[] sides;
  private final List<long[]> stones;
  private final long[] foot;
  private final List<long[]> row = new ArrayList<>();
  private final boolean[] used;
  private long mix;
  private int steps;
  private long all;
  private int limit;

  /**
   * @param sides the sides that the stones go on: both, or one
   * @param stones by stone, or pair: the usable length on each of these sides
   * @param seed decides among orders that are as good
   */
  WholeOrder(Pile.Head head, int[] sides, List<long[]> stones, long seed) {
    this.head = head;
    this.sides = sides;
    this.stones = new ArrayList<>(stones);
    this.mix = seed;
    this.foot = new long[sides.length];
    this.used = new boolean[stones.size()];
  }

  /** Whether the search was cut off, so that no order found does not mean that there is none. */
  boolean cutOff() {
    return steps > limit;
  }

  /** How many steps it took in all. */
  long steps() {
    return all + steps;
  }

  /** The stones outwards, or null. */
  List<long[]> find() {
    for (int i = 0; i < SHUFFLES; i++) {
      shuffle();
      if (go(TRY)) {
        return row;
      }
      if (!cutOff()) {
        return null;
      }
    }
    // Each as near its neighbours as can be: what a tight bound on neighbours needs.
    stones.sort((a, b) -> Long.compare(a[0], b[0]));
    if (go(TRY)) {
      return row;
    }
    java.util.Collections.reverse(stones);
    return go(ALL) ? row : null;
  }

  private void shuffle() {
    for (int i = stones.size() - 1; i > 0; i--) {
      // Marsaglia's xorshift64.
      mix ^= mix << 13;
      mix ^= mix >>> 7;
      mix ^= mix << 17;
      java.util.Collections.swap(stones, i, (int) Math.floorMod(mix, (long) (i + 1)));
    }
  }

  private boolean go(int most) {
    all += steps;
    steps = 0;
    limit = most;
    row.clear();
    java.util.Arrays.fill(used, false);
    for (int s = 0; s < sides.length; s++) {
      foot[s] = head.side(sides[s]).start();
    }
    return next();
  }

  private boolean next() {
    if (row.size() == stones.size()) {
      return true;
    }
    if (++steps > limit) {
      return false;
    }
    for (int i = 0; i < used.length; i++) {
      if (used[i] || repeats(i)) {
        continue;
      }
      long[] was = foot.clone();
      if (place(stones.get(i))) {
        used[i] = true;
        row.add(stones.get(i));
        if (next()) {
          return true;
        }
        row.remove(row.size() - 1);
        used[i] = false;
      }
      System.arraycopy(was, 0, foot, 0, foot.length);
      if (steps > limit) {
        return false;
      }
    }
    return false;
  }

  /** Whether one just like it, still free, was tried before it. */
  private boolean repeats(int i) {
    for (int j = 0; j < i; j++) {
      if (!used[j] && java.util.Arrays.equals(stones.get(j), stones.get(i))) {
        return true;
      }
    }
    return false;
  }

  private boolean place(long[] stone) {
    int index = row.size() + 1;
    boolean last = index == stones.size();
    for (int s = 0; s < sides.length; s++) {
      PileSide side = head.side(sides[s]);
      long width = stone[s] - side.extra(index);
      if (width < head.min() || width > head.max()) {
        return false;
      }
      if (index > 1) {
        long before = row.get(index - 2)[s] - side.extra(index - 1);
        if (Math.abs(width - before) > head.jump()) {
          return false;
        }
      }
      long outer = foot[s] + side.joint() + width;
      if (!side.stands(index, foot[s], outer, last)) {
        return false;
      }
      foot[s] = outer;
    }
    return true;
  }
}
