package headcourse.stock.pile;

import headcourse.stock.pile.PileDraft.Slot;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Puts the stones chosen for a head in rows that keep to all its rules, and saws off what is too
 * much where the two sides then differ least.
 *
 * <p>In the order of their lengths neighbours differ least, and stones side by side do; so that
 * order is tried first. Others are tried where the end stone is not the widest.
 */
final class RowFitter {
  private final RowPair pair;
  private final SweepSide[] sides;
  private final long[] ends;
  private long[][] best = new long[2][];
  private List<List<Batch>> bestRows = new ArrayList<>(List.of(List.of(), List.of()));
  private long least = Long.MAX_VALUE;
  private long doubt = Long.MAX_VALUE;
  private final long most;
  private long work;

  /**
   * @param most how much may be looked at to choose widths
   */
  RowFitter(SweepSide left, SweepSide right, long leftEnd, long rightEnd, long most) {
    this.most = most;
    this.pair = left.pair;
    this.sides = new SweepSide[] {left, right};
    this.ends = new long[] {leftEnd, rightEnd};
  }

  /** The least difference found; huge where no order stands. */
  long imbalance() {
    return least;
  }

  /** The stones outwards, or null. */
  List<List<Slot>> rows() {
    if (!settled(0) || !settled(1)) {
      return null;
    }
    List<List<Slot>> rows = new ArrayList<>();
    for (int s = 0; s < 2; s++) {
      List<Slot> row = new ArrayList<>();
      for (int i = 0; i < best[s].length; i++) {
        row.add(new Slot(best[s][i], bestRows.get(s).get(i).types.clone()));
      }
      rows.add(row);
    }
    return rows;
  }

  /** What there might yet be for orders tried in vain; huge where they are sure to be of no use. */
  long doubt() {
    return doubt;
  }

  /** How much was looked at to choose widths. */
  long work() {
    return work;
  }

  /** Whether an order was found for a side. */
  boolean settled(int s) {
    return best[s] != null;
  }

  /** Whether the stones of a side that need not be like the other stand in an order. */
  boolean alone(int s, List<Batch> row) {
    long splits = splits(s, row);
    for (long split = 0; split <= splits; split++) {
      long[] high = new long[row.size()];
      long[] low = new long[row.size()];
      if (!limits(s, row, low, high, split)) {
        continue;
      }
      long over = sum(high) - pair.row(s).widths(ends[s]);
      if (over < 0 || lower(high, low, over) < over) {
        continue;
      }
      if (!stands(s, high)) {
        doubt = 0;
      } else {
        best[s] = high;
        bestRows.set(s, row);
        least = settled(1 - s) ? 0 : least;
        return true;
      }
    }
    return false;
  }

  /**
   * Tries the likely orders.
   *
   * @param enough a difference that need not be less
   */
  void quick(long enough) {
    for (int s = 0; s < 2 && !pair.head().mirror(); s++) {
      for (int way = 0;
          way < LikelyOrders.count(sides[s]) && !alone(s, LikelyOrders.of(sides[s], way));
          way++) {}
    }
    if (pair.head().mirror()) {
      int ways = Math.max(LikelyOrders.count(sides[0]), LikelyOrders.count(sides[1]));
      for (int way = 0; way < ways && least > enough; way++) {
        attempt(LikelyOrders.of(sides[0], way), LikelyOrders.of(sides[1], way));
      }
      for (int way = 0; way < 2 && least > enough; way++) {
        attempt(LikelyOrders.of(sides[0], way), LikelyOrders.of(sides[1], 1 - way));
      }
    }
  }

  /** Widths between which a better choice may lie, and what none costs less than. */
  private record Open(long[][] low, long[][] high, long bound, long soon) {}

  /** The best widths for one order; the least difference is kept. */
  void attempt(List<Batch> left, List<Batch> right) {
    List<List<Batch>> rows = List.of(left, right);
    long[] splits = {splits(0, left), splits(1, right)};
    List<Open> open = new ArrayList<>();
    for (long l = 0; l <= splits[0]; l++) {
      for (long r = 0; r <= splits[1]; r++) {
        Open one = attempt(rows, l, r);
        if (one != null) {
          open.add(one);
        }
      }
    }
    open.sort(Comparator.comparingLong(Open::soon).thenComparingLong(Open::bound));
    for (Open one : open) {
      if (one.bound < least) {
        long bound = Math.max(one.bound, exact(rows, one.low, one.high));
        doubt = bound < least ? Math.min(doubt, bound) : doubt;
      }
    }
  }

  /** In how many ways, but for one, the end stone and the one before it share what they must be. */
  private long splits(int s, List<Batch> row) {
    RowShape shape = pair.row(s);
    int n = row.size();
    if (shape.two(ends[s]) <= 0) {
      return 0;
    }
    long most = Math.min(shape.most(ends[s]), width(row.get(n - 1), shape, n));
    long inner = width(row.get(n - 2), shape, n - 1);
    return Math.max(0, Math.min(most - pair.head().min(), most + inner - shape.two(ends[s])));
  }

  private long width(Batch b, RowShape shape, int index) {
    return Math.min(pair.head().max(), b.usable - shape.side.extra(index));
  }

  /** Widths soon found; null where there are no better ones. */
  private Open attempt(List<List<Batch>> rows, long leftSplit, long rightSplit) {
    long[][] high = new long[2][];
    long[][] low = new long[2][];
    for (int s = 0; s < 2; s++) {
      high[s] = new long[rows.get(s).size()];
      low[s] = new long[high[s].length];
      if (!limits(s, rows.get(s), low[s], high[s], s == 0 ? leftSplit : rightSplit)) {
        return null;
      }
    }
    long[][] width = {high[0].clone(), high[1].clone()};
    long[] over = new long[2];
    for (int s = 0; s < 2; s++) {
      over[s] = sum(high[s]) - pair.row(s).widths(ends[s]);
      if (over[s] < 0 || sum(low[s]) > pair.row(s).widths(ends[s])) {
        return null;
      }
    }
    long bound = bound(low, high, over[0] + over[1]);
    if (bound >= least) {
      return null;
    }
    for (int s = 0; s < 2; s++) {
      long[] to = low[s].clone();
      for (int i = 0; i < to.length; i++) {
        long partner = i < high[1 - s].length ? high[1 - s][i] : 0;
        to[i] = Math.max(low[s][i], Math.min(high[s][i], partner));
      }
      smooth(to, pair.head().jump(), -1);
      over[s] -= lower(width[s], to, over[s]);
    }
    together(width, low, over);
    for (int s = 0; s < 2; s++) {
      lower(width[s], low[s], over[s]);
    }
    long soon = offer(rows, width);
    return soon > bound ? new Open(low, high, bound, soon) : null;
  }

  /** Keeps widths that are the best so far; how the sides differ, huge where they don't stand. */
  private long offer(List<List<Batch>> rows, long[][] width) {
    long imbalance = pair.imbalance(width[0], width[1]);
    if (!stands(0, width[0]) || !stands(1, width[1])) {
      return Long.MAX_VALUE;
    }
    if (imbalance < least) {
      least = imbalance;
      best = width;
      bestRows = new ArrayList<>(rows);
    }
    return imbalance;
  }

  /** Looks for the best widths of an order; the least that the sides can differ. */
  private long exact(List<List<Batch>> rows, long[][] low, long[][] high) {
    long[] sum = {pair.left().widths(ends[0]), pair.right().widths(ends[1])};
    PairWidths widths = new PairWidths(pair, low, high, sum);
    if (!widths.small() || work + widths.states() > most) {
      return 0;
    }
    work += widths.states();
    widths.run();
    if (widths.best() != null) {
      offer(rows, widths.best());
    }
    return widths.bound();
  }

  /** Lowers both sides where each can go down with its partner. */
  private void together(long[][] width, long[][] low, long[] over) {
    long both = Math.min(over[0], over[1]);
    long[][] to = {width[0].clone(), width[1].clone()};
    for (int i = 0; i < Math.min(to[0].length, to[1].length); i++) {
      long room = Math.min(width[0][i] - low[0][i], width[1][i] - low[1][i]);
      to[0][i] -= room;
      to[1][i] -= room;
    }
    for (int s = 0; s < 2; s++) {
      smooth(to[s], pair.head().jump(), -1);
      over[s] -= lower(width[s], to[s], both);
    }
  }

  /** The sides can't differ less in an order whose widths lie within these, so much to be sawn. */
  private long bound(long[][] low, long[][] high, long over) {
    long at = 0;
    long stuck = 0;
    for (int i = 0; i < Math.max(high[0].length, high[1].length); i++) {
      boolean l = i < high[0].length;
      boolean r = i < high[1].length;
      at += Math.abs((l ? high[0][i] : 0) - (r ? high[1][i] : 0));
      long least = (l ? low[0][i] : 0) - (r ? high[1][i] : 0);
      long most = (r ? low[1][i] : 0) - (l ? high[0][i] : 0);
      stuck += Math.max(0, Math.max(least, most));
    }
    return Math.max(Math.max(at - over, stuck), pair.floor(ends[0], ends[1]));
  }

  private static long sum(long[] of) {
    return java.util.Arrays.stream(of).sum();
  }

  /** The least and the greatest width of each stone; false where there are none. */
  private boolean limits(int s, List<Batch> row, long[] low, long[] high, long split) {
    Pile.Head head = pair.head();
    RowShape shape = pair.row(s);
    int n = high.length;
    for (int i = 0; i < n; i++) {
      low[i] = head.min();
      high[i] = Math.min(head.max(), row.get(i).usable - shape.side.extra(i + 1));
    }
    if (n == 0) {
      return true;
    }
    low[n - 1] = Math.max(low[n - 1], shape.least(ends[s]));
    high[n - 1] = Math.min(high[n - 1], shape.most(ends[s]));
    smooth(high, head.jump(), 1);
    if (shape.two(ends[s]) > 0) {
      low[n - 1] = Math.max(low[n - 1], high[n - 1] - split);
      low[n - 2] = Math.max(low[n - 2], shape.two(ends[s]) - high[n - 1] + split);
    }
    smooth(low, head.jump(), -1);
    for (int i = 0; i < n; i++) {
      if (low[i] > high[i]) {
        return false;
      }
    }
    return true;
  }

  /** Keeps each within the jump of its neighbours: the greatest so, or the least. */
  private static void smooth(long[] of, long jump, int sign) {
    if (jump > Long.MAX_VALUE / 8) {
      return;
    }
    for (int i = 1; i < of.length; i++) {
      of[i] = sign * Math.min(sign * of[i], sign * of[i - 1] + jump);
    }
    for (int i = of.length - 2; i >= 0; i--) {
      of[i] = sign * Math.min(sign * of[i], sign * of[i + 1] + jump);
    }
  }

  /** Lowers the widest towards given widths, by so much in all if it can; how much it was. */
  private static long lower(long[] width, long[] to, long by) {
    long done = 0;
    while (done < by) {
      long top = Long.MIN_VALUE;
      for (int i = 0; i < width.length; i++) {
        top = width[i] > to[i] ? Math.max(top, width[i]) : top;
      }
      if (top == Long.MIN_VALUE) {
        break;
      }
      for (int i = 0; i < width.length && done < by; i++) {
        if (width[i] == top && width[i] > to[i]) {
          width[i]--;
          done++;
        }
      }
    }
    return done;
  }

  /** Whether a row keeps to all rules. */
  private boolean stands(int s, long[] width) {
    PileSide side = pair.row(s).side;
    long foot = side.start();
    for (int i = 0; i < width.length; i++) {
      if (i > 0 && Math.abs(width[i] - width[i - 1]) > pair.head().jump()) {
        return false;
      }
      long outer = foot + side.joint() + width[i];
      if (!side.stands(i + 1, foot, outer, i == width.length - 1)) {
        return false;
      }
      foot = outer;
    }
    return true;
  }
}
