package headcourse.stock.cutting;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * A knapsack that bounds what fillings are worth: the sum of some measures of widths, with the
 * types in the order of what they are worth by it, the densest first.
 */
final class Yardstick {
  private final int[] measures;
  private final int[] demand;
  private final long[] worth;
  private final long[] width;
  private final int[] order;
  private final int[] place;
  private Completion exact;

  /**
   * @param measures the measures
   * @param types those that are of use
   * @param worth by type
   * @param demand by type: how many there are
   */
  Yardstick(Widths widths, int[] measures, int[] types, long[] worth, int[] demand) {
    this.measures = measures;
    this.demand = demand;
    this.worth = worth;
    width = new long[worth.length];
    for (int t : types) {
      for (int k : measures) {
        width[t] += widths.inner(k, t);
      }
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
    exact = new Completion(order, width, worth, demand, room(rooms));
    return exact.work();
  }

  /**
   * No more is won with what is left of types from a place in a list on, in the order of this.
   *
   * @param rooms by measure
   */
  long most(int[] list, int from, int to, int[] counts, long[] rooms) {
    long room = room(rooms);
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

  private long room(long[] rooms) {
    long sum = 0;
    for (int k : measures) {
      sum += rooms[k];
    }
    return sum;
  }
}
