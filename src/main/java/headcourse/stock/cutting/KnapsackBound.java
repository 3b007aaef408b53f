package headcourse.stock.cutting;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * A knapsack that bounds what patterns are worth, in one measure of widths: fractional at first,
 * with the types in the order of what they are worth by it, the densest first.
 */
final class KnapsackBound {
  private final int measure;
  private final int[] demand;
  private final long[] worth;
  private final long[] width;
  private final int[] order;
  private final int[] place;
  private KnapsackTable exact;

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
    Arrays.fill(place, -1);
    for (int i = 0; i < order.length; i++) {
      place[order[i]] = i;
    }
  }

  int[] order() {
    return order;
  }

  /** Place of each type in the order; −1 where it is of no use. */
  int[] place() {
    return place;
  }

  /** Sets up an exact knapsack beside the fractional one; says how much that took. */
  long refine(long[] rooms) {
    if (exact != null) {
      return 0;
    }
    exact = new KnapsackTable(order, width, worth, demand, rooms[measure]);
    return exact.work();
  }

  /**
   * No more is won with what is left of types from a place in a list on, in the order of this.
   *
   * @param rooms by measure
   */
  long most(int[] list, int from, int to, int[] counts, long[] rooms) {
    long room = rooms[measure];
    double sum = 0;
    long left = room;
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
    return exact == null || from >= to ? most : Math.min(most, exact.of(place[list[from]], room));
  }
}
