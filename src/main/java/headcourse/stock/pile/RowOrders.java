package headcourse.stock.pile;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Complete search over the orders of the stones chosen for a head, from the ends inwards, both
 * sides at once where they are to be alike.
 */
final class RowOrders {
  static final long WORK = 400;

  private final RowPair pair;
  private final SweepSide[] sides;
  private final long[] ends;
  private final RowFitter fitter;
  private final int only;
  private final long enough;
  private final long limit;
  private final Batch[][] row = new Batch[2][];
  private final boolean[][] used = new boolean[2][];
  private final long[][] cap = new long[2][];
  private final long[] spare = new long[2];
  private final long before;
  private long most;
  private long steps;

  /**
   * @param only the side that is ordered by itself, or −1 for both
   * @param fitter where the orders go
   * @param most differences of more than this are of no use
   * @param enough a difference that need not be less
   * @param limit how many steps it may take
   */
  RowOrders(
      int only,
      SweepSide[] sides,
      long[] ends,
      RowFitter fitter,
      long most,
      long enough,
      long limit) {
    this.pair = sides[0].pair;
    this.sides = sides;
    this.ends = ends;
    this.fitter = fitter;
    this.most = most;
    this.enough = enough;
    this.limit = limit;
    this.only = only;
    this.before = fitter.work();
    for (int s = 0; s < 2; s++) {
      int n = only == 1 - s ? 0 : pair.row(s).stones;
      row[s] = new Batch[n];
      cap[s] = new long[n];
      used[s] = new boolean[pair.row(s).stones];
      spare[s] = -pair.row(s).widths(ends[s]);
      for (Batch b : all(s)) {
        spare[s] += width(b);
      }
    }
  }

  private long width(Batch b) {
    return Math.min(pair.head().max(), b.usable);
  }

  private List<Batch> all(int s) {
    List<Batch> out = new ArrayList<>(sides[s].body);
    if (sides[s].end() != null) {
      out.add(sides[s].end());
    }
    return out;
  }

  /** Searches; true where all was looked at, or the difference is small enough. */
  boolean run() {
    next(Math.max(row[0].length, row[1].length), 0);
    return steps() <= limit;
  }

  /** Steps taken; many widths looked at count as one. */
  long steps() {
    return steps + (fitter.work() - before) / WORK;
  }

  private boolean done() {
    return steps() > limit || (only < 0 ? fitter.imbalance() <= enough : fitter.settled(only));
  }

  private void next(int place, int s) {
    steps++;
    if (done()) {
      return;
    }
    if (s == 2) {
      if (!hopeless(place)) {
        next(place - 1, 0);
      }
      return;
    }
    if (place == 0 && only >= 0) {
      fitter.alone(only, List.of(row[only]));
      return;
    }
    if (place == 0) {
      fitter.attempt(List.of(row[0]), List.of(row[1]));
      return;
    }
    if (place > row[s].length) {
      next(place, s + 1);
      return;
    }
    List<Batch> from = all(s);
    boolean end = place == row[s].length && sides[s].end() != null;
    Batch before = null;
    for (int i = from.size() - 1; i >= 0 && !done(); i--) {
      Batch b = from.get(i);
      boolean isEnd = b == sides[s].end();
      if (used[s][i] || isEnd != end || before != null && before.usable == b.usable) {
        continue;
      }
      before = b;
      long c = limit(s, place, b);
      if (c < pair.head().min() || !neighbours(s, place, c)) {
        continue;
      }
      long[] was = cap[s];
      long spared = spare[s];
      cap[s] = was.clone();
      cap[s][place - 1] = c;
      spare[s] -= width(b) - c + back(s, place);
      used[s][i] = true;
      row[s][place - 1] = b;
      if (spare[s] >= 0 && spare[s] >= lost(s, c)) {
        next(place, s + 1);
      }
      spare[s] = spared;
      cap[s] = was;
      used[s][i] = false;
    }
  }

  /** Takes from the stones outwards of a place what they may not be wider than it; how much. */
  private long back(int s, int place) {
    long jump = pair.head().jump();
    long sum = 0;
    for (int i = place; jump < Long.MAX_VALUE / 8 && i < cap[s].length; i++) {
      long more = cap[s][i] - cap[s][i - 1] - jump;
      if (more <= 0) {
        break;
      }
      cap[s][i] -= more;
      sum += more;
    }
    return sum;
  }

  /**
   * What the stones still to come lose at least: by rank none is wider than the one before it and
   * the jump, nor the first than the one set last and the jump.
   */
  private long lost(int s, long last) {
    long jump = pair.head().jump();
    if (jump > Long.MAX_VALUE / 8) {
      return 0;
    }
    long most = last + jump;
    long sum = 0;
    for (long w : rest(s)) {
      long c = Math.min(w, most);
      sum += w - c;
      most = c + jump;
    }
    return sum;
  }

  /** How wide a stone may be at most in a place. */
  private long limit(int s, int place, Batch b) {
    RowShape shape = pair.row(s);
    long c = Math.min(pair.head().max(), b.usable - shape.side.extra(place));
    if (place == row[s].length) {
      c = Math.min(c, shape.most(ends[s]));
      return c < shape.least(ends[s]) ? -1 : c;
    }
    long next = cap[s][place];
    return pair.head().jump() > Long.MAX_VALUE / 8 ? c : Math.min(c, next + pair.head().jump());
  }

  private boolean neighbours(int s, int place, long c) {
    RowShape shape = pair.row(s);
    int n = row[s].length;
    if (place == n) {
      return true;
    }
    if (place == n - 1 && c + cap[s][n - 1] < shape.two(ends[s])) {
      return false;
    }
    // The end stone may not be too wide for those before it to follow.
    long jump = pair.head().jump();
    return jump > Long.MAX_VALUE / 8 || shape.least(ends[s]) - (n - place) * jump <= c;
  }

  /** Whether the sides differ too much from a place outwards, whatever comes before. */
  private boolean hopeless(int place) {
    if (only >= 0 || !pair.head().mirror()) {
      return false;
    }
    most = Math.min(most, fitter.imbalance() - 1);
    long sum = -spare[0] - spare[1];
    for (int i = place; i <= Math.max(row[0].length, row[1].length); i++) {
      long l = i <= row[0].length ? cap[0][i - 1] : 0;
      sum += Math.abs(l - (i <= row[1].length ? cap[1][i - 1] : 0));
    }
    long[] l = rest(0);
    long[] r = rest(1);
    for (int i = 1; i <= Math.max(l.length, r.length); i++) {
      sum +=
          Math.abs((i <= l.length ? l[l.length - i] : 0) - (i <= r.length ? r[r.length - i] : 0));
    }
    return sum > most;
  }

  private long[] rest(int s) {
    List<Batch> from = all(s);
    long[] out = new long[from.size()];
    int k = 0;
    for (int i = 0; i < out.length; i++) {
      if (!used[s][i] && from.get(i) != sides[s].end()) {
        out[k++] = width(from.get(i));
      }
    }
    return Arrays.copyOf(out, k);
  }
}
