package headcourse.stock.cutting;

import headcourse.stock.cutting.CuttingProblem.Bin;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What fillings of all kinds of blank are worth at most, quickly: each part takes its inner width,
 * and the blank loses the difference between the greatest and the least lean on it (see {@link
 * Widths}). For each least lean the parts that lean no less are added in the order of how far they
 * lean to the other side, to one knapsack for the longest room, which serves every kind of blank.
 */
final class SpanBound {
  private static final int FINEST = 4_000;
  private static final int COARSEST = 500;
  private static final long WORK = 2_000_000;

  /** All sums of measures are looked at only once in so many times, else the best of them. */
  private static final int SELDOM = 6;

  /** So many cells of the knapsacks are a step of a search for fillings. */
  private static final int STEP = 200;

  private final CuttingProblem problem;
  private final List<SpanMix> mixes;
  private final List<boolean[]> takes = new ArrayList<>();
  private final int[] alike;
  private int turn;
  private int tightest;
  private long steps;

  SpanBound(CuttingProblem problem, Widths widths) {
    this.problem = problem;
    this.mixes = SpanMix.of(widths, problem.demand().length);
    alike = new int[problem.bins().size()];
    for (int b = 0; b < alike.length; b++) {
      boolean[] of = problem.bins().get(b).takes();
      int k = 0;
      while (k < takes.size() && !Arrays.equals(takes.get(k), of)) {
        k++;
      }
      if (k == takes.size()) {
        takes.add(of);
      }
      alike[b] = k;
    }
  }

  /** Steps of all bounds so far. */
  long steps() {
    return steps;
  }

  /**
   * By kind of blank: no filling is worth more.
   *
   * @param worth by type, not negative
   */
  long[] most(long[] worth) {
    long[] most = new long[alike.length];
    Arrays.fill(most, Long.MAX_VALUE);
    for (int b = 0; b < most.length; b++) {
      if (problem.bins().get(b).single()) {
        most[b] = Arrays.stream(worth).max().orElse(0);
      }
    }
    boolean all = turn++ % SELDOM == 0;
    for (int k = 0; k < takes.size(); k++) {
      List<Integer> kinds = new ArrayList<>();
      for (int b = 0; b < alike.length; b++) {
        Bin bin = problem.bins().get(b);
        if (alike[b] == k && bin.count() > 0 && !bin.single()) {
          kinds.add(b);
        }
      }
      for (int m = 0; !kinds.isEmpty() && m < mixes.size(); m++) {
        if (!all && m != tightest) {
          continue;
        }
        long[] here = new Knapsack(mixes.get(m), takes.get(k), worth, kinds).most();
        for (int i = 0; i < here.length; i++) {
          if (here[i] < most[kinds.get(i)]) {
            most[kinds.get(i)] = here[i];
            tightest = i == 0 && all ? m : tightest;
          }
        }
      }
    }
    return most;
  }

  /** In one measure, for kinds of blank that take the same types. */
  private final class Knapsack {
    private final SpanMix mix;
    private final long[] worth;
    private final int[] types;
    private final long[] lows;
    private final long[] usable;
    private final long room;
    private final int cells;
    private final long[] best;

    Knapsack(SpanMix mix, boolean[] takes, long[] worth, List<Integer> kinds) {
      this.mix = mix;
      this.worth = worth;
      usable = kinds.stream().mapToLong(b -> mix.room(problem.bins().get(b))).toArray();
      room = Arrays.stream(usable).max().orElse(1);
      types = mix.rightwards(t -> worth[t] > 0 && problem.demand()[t] > 0 && takes[t]);
      lows = mix.lows(types);
      long each = Math.max(1, (long) lows.length * types.length);
      cells = (int) Math.max(COARSEST, Math.min(FINEST, WORK / each));
      best = new long[cells + 1];
    }

    long[] most() {
      long[] most = new long[usable.length];
      for (long low : lows) {
        Arrays.fill(best, 0);
        for (int i = 0; i < types.length; i++) {
          int t = types[i];
          if (mix.low(t) >= low) {
            add(t, room - Math.max(0, mix.high(t) - low));
          }
          long high = mix.high(t);
          if (i + 1 == types.length || mix.high(types[i + 1]) > high) {
            look(high - low, most);
          }
        }
      }
      return most;
    }

    private void look(long span, long[] most) {
      for (int k = 0; k < usable.length; k++) {
        long left = usable[k] - span;
        if (left > 0) {
          // The room is rounded up, as all widths are rounded down.
          most[k] =
              Math.max(most[k], best[(int) Math.min(cells, (left * cells + room - 1) / room)]);
        }
      }
    }

    /** All of a type there are, by ones, twos, fours... so that every number is a sum of them. */
    private void add(int t, long left) {
      long width = mix.inner(t);
      long open = Math.min(problem.demand()[t], Math.max(0, left) / width);
      for (long n = 1; open > 0; n *= 2) {
        long some = Math.min(n, open);
        open -= some;
        int each = (int) (some * width * cells / room);
        long value = some * worth[t];
        for (int c = cells; c >= each; c--) {
          best[c] = Math.max(best[c], best[c - each] + value);
        }
        steps += (cells - each) / STEP + 1;
      }
    }
  }
}
