package headcourse.stock.cutting;

import headcourse.stock.cutting.CuttingProblem.Bin;
import java.util.List;

/**
 * Bounds on what a rest of parts must cost, by material alone: at every height the widths of the
 * parts, each with a kerf, lie in the usable lengths of the blanks, each with a kerf more.
 */
final class LowerBound {
  private final CuttingProblem problem;
  private final Nesting nesting;
  private final int[] byCapacity;

  LowerBound(CuttingProblem problem) {
    this.problem = problem;
    this.nesting = problem.nesting();
    List<Bin> bins = problem.bins();
    Integer[] order = new Integer[bins.size()];
    java.util.Arrays.setAll(order, i -> i);
    java.util.Arrays.sort(
        order,
        (a, b) -> {
          int c = Long.compare(bins.get(b).usable(), bins.get(a).usable());
          return c != 0 ? c : a - b;
        });
    byCapacity = java.util.Arrays.stream(order).mapToInt(i -> i).toArray();
  }

  /**
   * A bound, each of its components by itself. Where it says that parts must be missing, it says no
   * more than that; otherwise it holds for packings that leave none out.
   *
   * @param rest parts of each type
   * @param left blanks of each kind
   */
  Cost of(int[] rest, int[] left) {
    long capacity = 0;
    double lead = Double.MAX_VALUE;
    double second = Double.MAX_VALUE;
    for (int b : byCapacity) {
      if (left[b] > 0) {
        Bin bin = problem.bins().get(b);
        long full = bin.usable() + nesting.kerf + Nesting.SLACK;
        capacity = add(capacity, left[b], full);
        lead = Math.min(lead, (double) bin.cost().lead() / full);
        second = Math.min(second, (double) bin.cost().second() / full);
      }
    }
    long total = 0;
    long missing = 0;
    for (int h = 0; h < nesting.slices.heights(); h++) {
      long need = need(rest, h);
      total = Math.max(total, need);
      if (need > capacity) {
        missing = Math.max(missing, missing(rest, h, need - capacity));
      }
    }
    if (missing > 0 || total == 0) {
      return new Cost(missing, 0, 0);
    }
    long blanks = blanks(rest, left);
    long byLead = (long) Math.ceil(total * lead - 1e-6);
    long bySecond = (long) Math.floor(total * second);
    return new Cost(
        0,
        Math.max(byLead, blanks * cheapest(left, true)),
        Math.max(bySecond, blanks * cheapest(left, false)));
  }

  /** No fewer blanks hold the parts. */
  long blanks(int[] rest, int[] left) {
    long blanks = 0;
    for (int h = 0; h < nesting.slices.heights(); h++) {
      blanks = Math.max(blanks, blanks(need(rest, h), left));
    }
    return blanks;
  }

  private long need(int[] rest, int h) {
    long need = 0;
    for (int t = 0; t < rest.length; t++) {
      need += rest[t] * nesting.slices.width()[t][h];
    }
    return need;
  }

  private long cheapest(int[] left, boolean lead) {
    long least = Long.MAX_VALUE;
    for (int b = 0; b < left.length; b++) {
      if (left[b] > 0) {
        Cost c = problem.bins().get(b).cost();
        least = Math.min(least, lead ? c.lead() : c.second());
      }
    }
    return least == Long.MAX_VALUE ? 0 : least;
  }

  /** Least number of parts whose widths at a height make up an excess. */
  private long missing(int[] rest, int h, long excess) {
    long n = 0;
    long over = excess;
    int[] open = rest.clone();
    while (over > 0) {
      int widest = -1;
      for (int t = 0; t < open.length; t++) {
        if (open[t] > 0
            && (widest < 0 || nesting.slices.width()[t][h] > nesting.slices.width()[widest][h])) {
          widest = t;
        }
      }
      if (widest < 0) {
        return n;
      }
      open[widest]--;
      over -= nesting.slices.width()[widest][h];
      n++;
    }
    return n;
  }

  private static long add(long sum, int count, long each) {
    // Made to order there are as many as needed; the cap keeps the sum in range.
    return Math.min(Long.MAX_VALUE / 4, sum + Math.min(count, 1_000_000L) * each);
  }

  private long blanks(long need, int[] left) {
    long n = 0;
    long rest = need;
    for (int b : byCapacity) {
      long each = problem.bins().get(b).usable() + nesting.kerf + Nesting.SLACK;
      long take = Math.min(left[b], Math.max(0, (rest + each - 1) / each));
      n += take;
      rest -= take * each;
    }
    return n;
  }
}
