package headcourse.stock.cutting;

import java.util.Arrays;
import java.util.List;

/**
 * Chooses what to branch on: something of which there is a fraction, though in a plan there is a
 * whole number of it. First how many blanks of a kind, then how many hold two parts together (Ryan
 * and Foster 1981, Vance 1998), or a part on a kind of blank, at last a whole pattern.
 */
final class BranchingRule {
  /** Nearer to a whole number than this is one. */
  private static final double NEAR = 1e-5;

  /** What is nearer to one is preferred by this: what fractions would have is tried together. */
  private static final double BELOW = 0.8;

  private final List<Columns.Fraction> fractions;
  private final int[] demand;
  private final int kinds;
  private final StepBudget budget;
  private List<PatternRow> best = List.of();
  private double score = NEAR;

  BranchingRule(List<Columns.Fraction> fractions, int[] demand, int kinds, StepBudget budget) {
    this.budget = budget;
    this.fractions = fractions;
    this.demand = demand;
    this.kinds = kinds;
  }

  /** So many of them or fewer, or more; nothing where there is no fraction of anything. */
  List<PatternRow> choose() {
    int[] load = new int[demand.length];
    for (int b = 0; b < kinds; b++) {
      consider(b, load);
    }
    if (best.isEmpty()) {
      pairs(load);
    }
    if (best.isEmpty()) {
      fractions.forEach(f -> consider(PatternRow.ANY, f.pattern().counts()));
    }
    return best;
  }

  private void pairs(int[] load) {
    for (int s = 0; s < load.length; s++) {
      load[s]++;
      for (int b = 0; b < kinds; b++) {
        consider(b, load);
      }
      for (int t = s; t < load.length; t++) {
        load[t]++;
        consider(PatternRow.ANY, load);
        load[t]--;
      }
      load[s]--;
    }
  }

  /** Whether there is a whole number of blanks of each kind. */
  static boolean counted(List<Columns.Fraction> fractions, int kinds) {
    double[] sum = new double[kinds];
    fractions.forEach(f -> sum[f.pattern().bin()] += f.amount());
    return Arrays.stream(sum).allMatch(s -> Math.abs(s - Math.rint(s)) <= NEAR);
  }

  private void consider(int bin, int[] load) {
    budget.spend(4L * fractions.size() + load.length);
    double amount = 0;
    PatternRow one = PatternRow.holding(bin, load, true, 1);
    for (Columns.Fraction f : fractions) {
      amount += one.of(f.pattern().bin(), f.pattern().counts()) * f.amount();
    }
    double part = amount - Math.floor(amount);
    double now = Math.min(part * BELOW, 1 - part);
    if (part > NEAR && 1 - part > NEAR && now > score) {
      score = now;
      int floor = (int) Math.floor(amount);
      best =
          List.of(
              PatternRow.holding(bin, load, false, floor),
              PatternRow.holding(bin, load, true, floor + 1));
    }
  }
}
