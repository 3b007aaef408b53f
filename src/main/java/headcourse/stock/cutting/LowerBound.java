package headcourse.stock.cutting;

import headcourse.stock.cutting.CuttingProblem.Bin;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

/**
 * Bound on what parts must cost, by material alone: in every measure the widths of the parts, each
 * with a kerf, lie in the usable lengths of the blanks, each with a kerf more.
 */
final class LowerBound {
  private final CuttingProblem problem;

  /** The kinds of blank that there are any of, the longest first. */
  private final List<Bin> longest;

  private LowerBound(CuttingProblem problem) {
    this.problem = problem;
    this.longest =
        problem.bins().stream()
            .filter(b -> b.count() > 0 && !b.single())
            .sorted(Comparator.comparingLong(Bin::usable).reversed())
            .toList();
  }

  /**
   * A bound. Where it says that parts must be missing, it says no more than that; otherwise it
   * holds, each component by itself, for packings that leave none out.
   */
  static Cost of(CuttingProblem problem) {
    LowerBound bound = new LowerBound(problem);
    Cost most = Cost.NONE;
    for (long[] widths : problem.nesting().widths) {
      Cost by = bound.by(widths);
      for (Cost.Component c : Cost.Component.values()) {
        most = most.raised(c, by.of(c));
      }
    }
    return most.missing() > 0 ? new Cost(most.missing(), 0, 0) : most;
  }

  private Cost by(long[] widths) {
    long need = 0;
    for (int t = 0; t < widths.length; t++) {
      need += problem.demand()[t] * widths[t];
    }
    long rest = need;
    long blanks = 0;
    double leadDensity = Double.MAX_VALUE;
    double secondDensity = Double.MAX_VALUE;
    for (Bin bin : longest) {
      long full = bin.usable() + Nesting.SLACK + problem.nesting().kerf;
      long n = Math.min(bin.count(), Math.max(0, Math.floorDiv(rest + full - 1, full)));
      blanks += n;
      rest -= n * full;
      leadDensity = Math.min(leadDensity, (double) bin.cost().lead() / full);
      secondDensity = Math.min(secondDensity, (double) bin.cost().second() / full);
    }
    if (rest > 0) {
      return new Cost(missing(widths, rest), 0, 0);
    }
    long lead = longest.stream().mapToLong(b -> b.cost().lead()).min().orElse(0);
    long second = longest.stream().mapToLong(b -> b.cost().second()).min().orElse(0);
    return new Cost(
        0,
        Math.max(blanks * lead, (long) Math.ceil(need * leadDensity - 1e-6)),
        Math.max(blanks * second, (long) Math.floor(need * secondDensity)));
  }

  /** Least number of parts whose widths make up an excess. */
  private long missing(long[] widths, long excess) {
    long[] parts =
        IntStream.range(0, widths.length)
            .mapToObj(t -> LongStream.generate(() -> widths[t]).limit(problem.demand()[t]))
            .flatMapToLong(s -> s)
            .sorted()
            .toArray();
    int n = 0;
    for (long over = excess; over > 0 && n < parts.length; n++) {
      over -= parts[parts.length - 1 - n];
    }
    return n;
  }
}
