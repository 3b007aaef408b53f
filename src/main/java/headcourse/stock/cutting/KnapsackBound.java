package headcourse.stock.cutting;

import java.math.BigInteger;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * A knapsack that bounds what patterns are worth, in one measure of widths: fractional, with the
 * types in the order of what they are worth by it, the densest first; or exact.
 */
final class KnapsackBound {
  /** The exact one has no more cells than this for a type. */
  private static final int CELLS = 4_000;

  private final int measure;
  private final int[] demand;
  private final long[] worth;
  private final long[] width;
  private final int[] order;
  private final int[] place;

  /** By place in the order and room in cells: what the types from there on are worth, or null. */
  private long[][] exact;

  private long cell;

  /**
   * @param measure the measure
   * @param types those that are of use
   * @param worth by type
   * @param demand by type: how many there are
   */
  KnapsackBound(InnerWidths widths, int measure, int[] types, long[] worth, int[] demand) {
    this.measure = measure;
    this.demand = demand;
    this.worth = worth;
    width = new long[worth.length];
    for (int t : types) {
      width[t] = widths.inner(measure, t);
    }
    order =
        IntStream.of(types)
            .boxed()
            .sorted(
                Comparator.comparingDouble((Integer t) -> 0 - (double) worth[t] / width[t])
                    .thenComparing(t -> t))
            .mapToInt(t -> t)
            .toArray();
    place = new int[worth.length];
    for (int i = 0; i < order.length; i++) {
      place[order[i]] = i;
    }
  }

  int[] order() {
    return order;
  }

  /**
   * Makes it exact where widths are ticks of a grid that is not too fine, else nearly so: rounded
   * down, they go into the room all the more.
   *
   * @return how many cells that took
   */
  long refine(long[] rooms) {
    long room = Math.max(0, rooms[measure]);
    cell = Math.max(grid(), room / CELLS + 1);
    int cells = (int) (room / cell);
    exact = new long[order.length + 1][cells + 1];
    for (int i = order.length - 1; i >= 0; i--) {
      int t = order[i];
      for (int r = 0; r <= cells; r++) {
        long best = exact[i + 1][r];
        for (int n = 1; n <= demand[t] && n * (width[t] / cell) <= r; n++) {
          int rest = (int) (r - n * (width[t] / cell));
          best = Math.max(best, n * worth[t] + exact[i + 1][rest]);
        }
        exact[i][r] = best;
      }
    }
    return (long) cells * order.length;
  }

  /** The greatest common divisor of all widths. */
  private long grid() {
    return IntStream.of(order)
        .mapToObj(t -> BigInteger.valueOf(width[t]))
        .reduce(BigInteger.ZERO, BigInteger::gcd)
        .longValueExact();
  }

  /**
   * No more is won with what is left of types from a place in a list on, in the order of this.
   *
   * @param rooms by measure
   */
  long most(int[] list, int from, int to, int[] counts, long[] rooms) {
    double sum = 0;
    long left = rooms[measure];
    for (int i = from; i < to; i++) {
      int t = list[i];
      long n = demand[t] - counts[t];
      if (n * width[t] > left) {
        sum += (double) worth[t] * Math.max(0, left) / width[t];
        break;
      }
      sum += n * (double) worth[t];
      left -= n * width[t];
    }
    long most = (long) Math.ceil(sum) + 1;
    boolean known = exact != null && from < to && rooms[measure] >= 0;
    return known ? Math.min(most, exact[place[list[from]]][(int) (rooms[measure] / cell)]) : most;
  }
}
