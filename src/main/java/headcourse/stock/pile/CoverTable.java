package headcourse.stock.pile;

import java.util.Arrays;

/**
 * The least that so many pieces that cover a width are too long together, by the type from which on
 * they may come.
 */
final class CoverTable {
  /** More than any pile has. */
  static final int NONE = 1_000_000_000;

  private static final long TOO_MUCH = 40_000_000;

  private final int range;
  private final int width;

  /** By type, number and least width, moved up by the range: the least over all widths allowed. */
  private final char[][][] excess;

  private final long[][] least;
  private final long[][] longest;
  private final long[] greatest;

  /**
   * @param usable length of each type, shortest first
   * @param covers how much a piece of each type covers at most; 0 where it does not count
   * @param count pieces of each type
   * @param most greatest number
   * @param width greatest width
   * @param range how far the width wanted may be exceeded
   */
  CoverTable(long[] usable, long[] covers, int[] count, int most, long width, long range) {
    this.range = (int) range;
    this.width = (int) width;
    int types = usable.length;
    int pieces = Arrays.stream(count).sum();
    int numbers = Math.min(most, pieces);
    least = new long[types + 1][numbers + 1];
    longest = new long[types + 1][numbers + 1];
    boolean full = (double) (types + 1) * (numbers + 1) * (width + range + 1) <= TOO_MUCH;
    excess = full ? new char[types + 1][numbers + 1][] : null;
    int[][] sum = new int[numbers + 1][full ? this.width + 1 : 1];
    for (int[] row : sum) {
      Arrays.fill(row, NONE);
    }
    sum[0][0] = 0;
    record(types, sum, full);
    greatest = new long[numbers + 1];
    Arrays.fill(greatest, 1, numbers + 1, -NONE);
    Arrays.fill(longest[types], 1, numbers + 1, -NONE);
    for (int t = types - 1; t >= 0; t--) {
      System.arraycopy(longest[t + 1], 0, longest[t], 0, numbers + 1);
      for (int k = 0; k < count[t] && covers[t] > 0; k++) {
        int c = (int) covers[t];
        for (int i = numbers; i > 0; i--) {
          longest[t][i] = Math.max(longest[t][i], longest[t][i - 1] + c);
          greatest[i] = Math.max(greatest[i], greatest[i - 1] + usable[t]);
          for (int x = sum[i].length - 1; x >= 0; x--) {
            long with = sum[i - 1][Math.max(0, x - c)] + usable[t];
            sum[i][x] = (int) Math.min(sum[i][x], with);
          }
        }
      }
      record(t, sum, full);
    }
  }

  private void record(int t, int[][] sum, boolean full) {
    for (int i = 0; i < sum.length; i++) {
      least[t][i] = sum[i][0];
      if (full) {
        excess[t][i] = window(sum[i]);
      }
    }
  }

  /** Sliding least of what a sum is beyond its width. */
  private char[] window(int[] sum) {
    char[] out = new char[width + range + 1];
    int[] queue = new int[out.length + 1];
    int head = 0;
    int tail = 0;
    // Index i of the output stands for widths i - range to i.
    for (int i = out.length - 1, x = width; i >= 0; i--) {
      for (; x >= Math.max(0, i - range); x--) {
        while (tail > head && over(sum, queue[tail - 1]) >= over(sum, x)) {
          tail--;
        }
        queue[tail++] = x;
      }
      while (head < tail && queue[head] > i) {
        head++;
      }
      long v = head < tail ? over(sum, queue[head]) : NONE;
      out[i] = (char) Math.min(Character.MAX_VALUE, v);
    }
    return out;
  }

  private static long over(int[] sum, int x) {
    return sum[x] >= NONE ? NONE : sum[x] - (long) x;
  }

  /** The most that so many pieces come to. */
  long longest(int number) {
    return number >= greatest.length ? NONE : greatest[number];
  }

  /** The least that so many pieces from a type on come to. */
  long shortest(int t, int number) {
    return number >= least[t].length ? NONE : least[t][number];
  }

  /**
   * The least that pieces from a type on are longer in all than a width; less than nothing where
   * the width itself is.
   *
   * @param t from this type on
   * @param number how many pieces
   * @param from least width; it may be up to the range more
   */
  long least(int t, int number, long from) {
    if (number >= least[t].length || least[t][number] >= NONE) {
      return NONE;
    }
    if (longest[t][number] < from) {
      return NONE;
    }
    long to = from + range;
    if (to <= 0) {
      return least[t][number] - to;
    }
    if (excess == null) {
      return Math.max(0, least[t][number] - to);
    }
    // Beyond the table's width nothing is asked for.
    return excess[t][number][(int) Math.min(to, width + range)];
  }
}
