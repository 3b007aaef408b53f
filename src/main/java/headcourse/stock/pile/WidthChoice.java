package headcourse.stock.pile;

import java.util.Arrays;

/**
 * The widths of a row of stones in a given order that cost least, each within its limits, none
 * further from its neighbours than the jump, and all together of a given sum.
 *
 * <p>Stone after stone, by how much it is less than its greatest width and how much all so far are.
 */
final class WidthChoice {
  /** More states than this are not looked at. */
  private static final long MOST = 600_000;

  private static final int NONE = Integer.MAX_VALUE / 2;

  /** What a stone costs. */
  interface Price {
    /** Cost of stone {@code i}, from 0, being so wide. */
    long of(int i, long width);
  }

  private final long[] low;
  private final long[] high;
  private final long jump;
  private final int over;
  private final long states;

  /**
   * @param low least widths
   * @param high greatest widths, each within the jump of the next
   * @param sum of the widths
   */
  WidthChoice(long[] low, long[] high, long jump, long sum) {
    this.low = low;
    this.high = high;
    this.jump = Math.min(jump, Integer.MAX_VALUE);
    long more = Arrays.stream(high).sum() - sum;
    this.over = (int) Math.max(-1, Math.min(more, NONE));
    long all = 0;
    for (int i = 0; i < high.length; i++) {
      all += (deep(i) + 1L) * (over + 1L);
    }
    this.states = all;
  }

  private int deep(int i) {
    return (int) Math.min(over, high[i] - low[i]);
  }

  /** How many states there are to look at. */
  long states() {
    return states;
  }

  /** Whether there are few enough to look at all. */
  boolean small() {
    return states <= MOST;
  }

  /** The widths, or null where there are none. */
  long[] best(Price price) {
    int n = high.length;
    if (over < 0) {
      return null;
    }
    int[][][] cost = new int[n][][];
    for (int i = 0; i < n; i++) {
      cost[i] = new int[over + 1][deep(i) + 1];
      int[] own = new int[deep(i) + 1];
      for (int k = 0; k < own.length; k++) {
        own[k] = (int) price.of(i, high[i] - k);
      }
      for (int[] row : cost[i]) {
        Arrays.fill(row, NONE);
      }
      for (int used = 0; used <= over; used++) {
        if (i == 0) {
          if (used < own.length) {
            cost[0][used][used] = own[used];
          }
        } else {
          from(cost[i - 1][used], i, used, own, cost[i]);
        }
      }
    }
    return n == 0 ? (over == 0 ? new long[0] : null) : back(cost, price);
  }

  /** From all that have used so much before stone i. */
  private void from(int[] before, int i, int used, int[] own, int[][] to) {
    int[] queue = new int[before.length];
    int head = 0;
    int tail = 0;
    int next = 0;
    // Stone i less by k; the one before it less by no more than the jump allows.
    for (int k = 0; k < own.length && used + k <= over; k++) {
      long first = high[i - 1] - (high[i] - k) - jump;
      long last = first + 2 * jump;
      for (; next < before.length && next <= last; next++) {
        while (tail > head && before[queue[tail - 1]] >= before[next]) {
          tail--;
        }
        queue[tail++] = next;
      }
      while (head < tail && queue[head] < first) {
        head++;
      }
      if (head < tail && before[queue[head]] < NONE) {
        to[used + k][k] = before[queue[head]] + own[k];
      }
    }
  }

  private long[] back(int[][][] cost, Price price) {
    int n = high.length;
    long[] out = new long[n];
    int used = over;
    int want = NONE;
    int k = -1;
    for (int j = 0; j < cost[n - 1][over].length; j++) {
      if (cost[n - 1][over][j] < want) {
        want = cost[n - 1][over][j];
        k = j;
      }
    }
    if (k < 0) {
      return null;
    }
    for (int i = n - 1; i >= 0; i--) {
      out[i] = high[i] - k;
      used -= k;
      want -= (int) price.of(i, out[i]);
      if (i > 0) {
        int at = -1;
        for (int j = 0; at < 0 && j < cost[i - 1][used].length; j++) {
          long apart = Math.abs(high[i - 1] - j - out[i]);
          at = apart <= jump && cost[i - 1][used][j] == want ? j : at;
        }
        k = at;
        want = cost[i - 1][used][k];
      }
    }
    return out;
  }
}
