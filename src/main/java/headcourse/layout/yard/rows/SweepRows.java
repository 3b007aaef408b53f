package headcourse.layout.yard.rows;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

/**
 * Puts the stones of a head in rows: where each side ends, what is sawn off which stone, so that
 * the sides differ least, and an order in which the stones can stand.
 */
final class SweepRows {
  /** How many ends of a side are looked at. */
  private static final int ENDS = 24;

  /** How many pairs of ends are tried until one comes out. */
  private static final int TRIES = 16;

  /** How many places an order may take. */
  private static final int PLACES = 3_000;

  /** A place tried is a quarter of a step. */
  private static final int QUARTER = Steps.CELLS / 4;

  private final SweepSide[] sides;
  private final List<List<SweepState>> stones = List.of(new ArrayList<>(), new ArrayList<>());
  private final long shortfall;
  private final Steps steps;

  /**
   * A stone in its row.
   *
   * @param width its width
   * @param pieces its pieces
   */
  record Set(long width, int[] pieces) {}

  /** Lengths along the blanks for two ends, and what that comes to. */
  private record Trial(
      List<SweepSide.End> ends, long[][] lengths, long sawn, long imbalance, long bearing) {}

  /**
   * @param state of which the stones are
   * @param all the sides of all heads
   * @param h the head
   */
  SweepRows(SweepState state, SweepSide[] all, int h, long shortfall, Steps steps) {
    this.steps = steps;
    sides = new SweepSide[] {all[2 * h], all[2 * h + 1]};
    this.shortfall = shortfall;
    for (SweepState s = state; s.before != null; s = s.before) {
      if (s.taker / 2 == h) {
        stones.get(s.taker % 2).add(0, s);
      }
    }
  }

  /**
   * The rows that cost least.
   *
   * @param give how much more than the least may be sawn off for sides that differ less
   * @return the rows left and right, outwards, or null where no order was found
   */
  List<List<Set>> find(long give) {
    List<Trial> trials = new ArrayList<>();
    List<SweepSide.End> right = ends(1);
    for (SweepSide.End l : ends(0)) {
      for (SweepSide.End r : right) {
        trials.add(trial(List.of(l, r), false));
        trials.add(trial(List.of(l, r), true));
      }
    }
    long least = trials.stream().mapToLong(Trial::sawn).min().orElse(0) + give;
    trials.sort(
        Comparator.comparingLong((Trial t) -> Math.max(0, t.sawn() - least))
            .thenComparingLong(Trial::imbalance)
            .thenComparingLong(Trial::sawn)
            .thenComparingLong(Trial::bearing));
    return trials.stream()
        .limit(TRIES)
        .map(this::rows)
        .filter(Objects::nonNull)
        .findFirst()
        .orElse(null);
  }

  private long sum(int s) {
    return stones.get(s).stream().mapToLong(x -> x.cover).sum();
  }

  /** The ends that the stones reach, the farthest first. */
  private List<SweepSide.End> ends(int s) {
    List<SweepState> of = stones.get(s);
    long widest = of.get(of.size() - 1).cover;
    List<SweepSide.End> out = new ArrayList<>(sides[s].ends);
    out.removeIf(e -> !e.reached(sum(s), widest));
    Collections.reverse(out);
    return out.subList(0, Math.min(ENDS, out.size()));
  }

  /**
   * @param keeps whether the longest of all stays long enough for the end
   */
  private Trial trial(List<SweepSide.End> ends, boolean keeps) {
    long[][] x = new long[2][];
    long[] over = new long[2];
    for (int s = 0; s < 2; s++) {
      x[s] = stones.get(s).stream().mapToLong(y -> y.cover).toArray();
      over[s] = sum(s) - ends.get(s).need();
    }
    long sawn = over[0] + over[1];
    boolean pairs = sides[0].head.mirror() && x[0].length == x[1].length;
    for (int i = x[0].length - 1; pairs && i >= 0; i--) {
      int s = x[0][i] > x[1][i] ? 0 : 1;
      long cut = Math.min(over[s], x[s][i] - x[1 - s][i]);
      x[s][i] -= cut;
      over[s] -= cut;
    }
    for (int s = 0; s < 2; s++) {
      level(x[s], over[s], keeps ? ends.get(s).longest() : 0, sides[s]);
    }
    long imbalance = 0;
    for (int i = 0; i < Math.max(x[0].length, x[1].length); i++) {
      long l = i < x[0].length ? x[0][i] : 0;
      imbalance += Math.abs(l - (i < x[1].length ? x[1][i] : 0));
    }
    steps.cells(x[0].length * QUARTER);
    long bearing = ends.get(0).off() + ends.get(1).off();
    return new Trial(ends, x, sawn, sides[0].head.mirror() ? imbalance : 0, bearing);
  }

  /** Saws off the longest that may yet be shorter, a little each. */
  private static void level(long[] x, long over, long last, SweepSide side) {
    int n = x.length;
    for (long left = over; left > 0; left--) {
      int at = -1;
      for (int i = n - 1; i >= 0; i--) {
        long by = (n - 1 - i) * side.jump;
        long least = i == n - 1 ? last : Math.max(side.narrowest, last - by);
        if (x[i] > least && (at < 0 || x[i] >= x[at])) {
          at = i;
        }
      }
      x[Math.max(0, at)]--;
    }
  }

  private List<List<Set>> rows(Trial t) {
    int[] first = new Order(0, t, null).find();
    int[] second = first == null ? null : new Order(1, t, first).find();
    return second == null ? null : List.of(set(0, t, first), set(1, t, second));
  }

  private List<Set> set(int s, Trial t, int[] order) {
    List<Set> out = new ArrayList<>();
    for (int i = 0; i < order.length; i++) {
      long width = t.lengths()[s][order[i]] - sides[s].extra[i + 1];
      out.add(new Set(width, stones.get(s).get(order[i]).pieces));
    }
    return out;
  }

  /** An order of the stones of a side, found from the end inwards. */
  private final class Order {
    private final SweepSide x;
    private final long[] length;
    private final int[] like;
    private final int[] at;
    private final boolean[] used;
    private final long end;
    private int places;

    /**
     * @param like an order of the other side, to be followed where it can be
     */
    Order(int s, Trial t, int[] like) {
      x = sides[s];
      length = t.lengths()[s];
      end = t.ends().get(s).foot();
      this.like = like != null && like.length == length.length ? like : null;
      at = new int[length.length];
      used = new boolean[length.length];
    }

    int[] find() {
      return place(length.length, end, -1) ? at : null;
    }

    private boolean place(int i, long outer, long beyond) {
      if (i == 0) {
        return outer == x.side.start();
      }
      int preferred = like == null ? length.length : like[i - 1];
      for (int n = length.length; n >= 0; n--) {
        int k = n == length.length ? preferred : n;
        if (k == length.length || used[k] || n < length.length && k == preferred) {
          continue;
        }
        if (n < length.length - 1 && !used[n + 1] && length[n] == length[n + 1]) {
          continue;
        }
        steps.cells(QUARTER);
        if (++places > PLACES) {
          return false;
        }
        if (stands(i, outer, beyond, length[k] - x.extra[i])) {
          used[k] = true;
          at[i - 1] = k;
          long inner = outer - x.side.joint() - (length[k] - x.extra[i]);
          if (place(i - 1, inner, length[k] - x.extra[i])) {
            return true;
          }
          used[k] = false;
        }
      }
      return false;
    }

    private boolean stands(int i, long outer, long beyond, long width) {
      boolean last = i == length.length;
      long inner = outer - x.side.joint() - width;
      return width >= x.head.min()
          && width <= x.head.max()
          && (last || Math.abs(width - beyond) <= x.head.jump())
          && x.side.stands(i, inner, outer, last)
          && x.side.shortfall(i, outer, last) <= shortfall;
    }
  }
}
