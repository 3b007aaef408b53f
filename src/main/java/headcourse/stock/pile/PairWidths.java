package headcourse.stock.pile;

/**
 * The widths of the two rows of a head in given orders for which the sides differ least, with a
 * bound.
 *
 * <p>One side's widths are chosen for the other's as they are, in turn. The sum of the differences
 * is never less than that of the differences each taken with a fixed sign, or left out; with signs
 * fixed each side is settled by itself, which bounds it.
 */
final class PairWidths {
  private static final int TURNS = 6;

  private final RowPair pair;
  private final long[][] high;
  private final WidthChoice[] side = new WidthChoice[2];
  private long[][] best;
  private long least = Long.MAX_VALUE;
  private long bound;
  private boolean none;

  /**
   * @param low least widths by side
   * @param high greatest widths by side
   * @param sum what the widths of a side come to
   */
  PairWidths(RowPair pair, long[][] low, long[][] high, long[] sum) {
    this.pair = pair;
    this.high = high;
    for (int s = 0; s < 2; s++) {
      side[s] = new WidthChoice(low[s], high[s], pair.head().jump(), sum[s]);
    }
  }

  /** Whether it is small enough to be looked at. */
  boolean small() {
    return side[0].small() && side[1].small();
  }

  /** How much there was to look at. */
  long states() {
    return 10 * (side[0].states() + side[1].states());
  }

  /** The widths found, by side, or null. */
  long[][] best() {
    return best;
  }

  /** The sides can't differ less in these orders; huge where there are no widths. */
  long bound() {
    return none ? Long.MAX_VALUE : bound;
  }

  void run() {
    for (int first = 0; first < 2 && !none; first++) {
      turns(first);
    }
    for (int tie = -1; tie <= 1 && !none && bound < least; tie++) {
      signs(best, tie);
    }
  }

  /** Chooses one side for the other, in turn, while that helps. */
  private void turns(int first) {
    long[][] width = {high[0], high[1]};
    int s = first;
    long before = Long.MAX_VALUE;
    for (int turn = 0; turn < TURNS; turn++) {
      long[] to = width[1 - s];
      long[] now = side[s].best((i, w) -> Math.abs(w - (i < to.length ? to[i] : 0)));
      if (now == null) {
        none = true;
        return;
      }
      width[s] = now;
      if (turn > 0) {
        long d = pair.imbalance(width[0], width[1]);
        offer(width);
        if (d == before) {
          return;
        }
        before = d;
      }
      s = 1 - s;
    }
  }

  private void offer(long[][] width) {
    long d = pair.imbalance(width[0], width[1]);
    if (d < least) {
      least = d;
      best = new long[][] {width[0].clone(), width[1].clone()};
    }
  }

  /** Bounds it with the signs of the differences as they are; ties as given. */
  private void signs(long[][] of, int tie) {
    int n = Math.max(of[0].length, of[1].length);
    int[] sign = new int[n];
    for (int i = 0; i < n; i++) {
      long l = i < of[0].length ? of[0][i] : 0;
      long r = i < of[1].length ? of[1][i] : 0;
      sign[i] = l == r ? tie : l > r ? 1 : -1;
    }
    long[][] width = {
      side[0].best((i, w) -> sign[i] * w), side[1].best((i, w) -> -sign[i] * w),
    };
    long sum = 0;
    for (int i = 0; i < n; i++) {
      sum += sign[i] * (i < width[0].length ? width[0][i] : 0);
      sum -= sign[i] * (i < width[1].length ? width[1][i] : 0);
    }
    bound = Math.max(bound, sum);
    offer(width);
  }
}
