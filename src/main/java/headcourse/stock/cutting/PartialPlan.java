package headcourse.stock.cutting;

import headcourse.stock.cutting.CuttingProblem.Bin;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** A plan under construction: patterns taken so far, the parts and the blanks still left. */
final class PartialPlan {
  private final CuttingProblem problem;
  private final int[] rest;
  private final int[] left;
  private final List<Packing.Pattern> patterns;
  private Cost spent;

  /**
   * @param counts so many blanks of each kind at most
   */
  PartialPlan(CuttingProblem problem, int[] counts) {
    this(problem, problem.demand(), counts, List.of(), Cost.NONE);
  }

  private PartialPlan(
      CuttingProblem problem, int[] rest, int[] left, List<Packing.Pattern> patterns, Cost spent) {
    this.problem = problem;
    this.rest = rest.clone();
    this.left = left.clone();
    this.patterns = new ArrayList<>(patterns);
    this.spent = spent;
  }

  PartialPlan copy() {
    return new PartialPlan(problem, rest, left, patterns, spent);
  }

  /** Takes a pattern, as far as its parts are left; false if none is, or no such blank. */
  boolean take(Packing.Pattern pattern) {
    int[] counts = pattern.counts().clone();
    int n = 0;
    for (int t = 0; t < counts.length; t++) {
      counts[t] = Math.min(counts[t], rest[t]);
      n += counts[t];
    }
    if (n == 0 || left[pattern.bin()] == 0) {
      return false;
    }
    for (int t = 0; t < counts.length; t++) {
      rest[t] -= counts[t];
    }
    left[pattern.bin()]--;
    patterns.add(new Packing.Pattern(pattern.bin(), counts));
    spent = spent.plus(problem.bins().get(pattern.bin()).cost());
    return true;
  }

  /** Whether all parts of a pattern are left. */
  boolean holdsAll(Packing.Pattern pattern) {
    return IntStream.range(0, rest.length).allMatch(t -> pattern.counts()[t] <= rest[t]);
  }

  /** The problem that is left. */
  CuttingProblem open() {
    List<Bin> bins = new ArrayList<>();
    for (int b = 0; b < left.length; b++) {
      bins.add(problem.bins().get(b).withCount(left[b]));
    }
    return new CuttingProblem(rest, problem.nesting(), bins);
  }

  /** What it costs so far. */
  Cost spent() {
    return spent;
  }

  /** The plan, what is left out missing. */
  Packing packing() {
    return Packing.of(problem, patterns, rest);
  }

  /** The plan with another for the rest. */
  Packing with(Packing others) {
    List<Packing.Pattern> all = new ArrayList<>(patterns);
    all.addAll(others.patterns());
    return Packing.of(problem, all, others.missing());
  }
}
