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

  /** How much less it is worth to know of a part whether it lies on a kind of blank. */
  private static final double SINGLE = 0.7;

  /** What is nearer to one is preferred by this: what fractions would have is tried together. */
  private static final double BELOW = 0.8;

  private final List<Columns.Fraction> fractions;
  private final int[] demand;
  private final int kinds;
  private final StepBudget budget;
  private Branch best;
  private double score;

  /**
   * Blanks of a kind, or of any (−1), that hold no fewer of each type; there is a fraction of them.
   */
  record Branch(int bin, int[] load, double amount) {
    /** So many of them or fewer, or more. */
    PatternRow row(boolean more) {
      int floor = (int) Math.floor(amount);
      return PatternRow.holding(bin, load, more, more ? floor + 1 : floor);
    }
  }

  BranchingRule(List<Columns.Fraction> fractions, int[] demand, int kinds, StepBudget budget) {
    this.budget = budget;
    this.fractions = fractions;
    this.demand = demand;
    this.kinds = kinds;
  }

  /** The choice; null where there is no fraction of anything. */
  Branch choose() {
    score = NEAR;
    for (int b = 0; b < kinds; b++) {
      consider(b, new int[demand.length], 1);
    }
    if (best != null) {
      return best;
    }
    for (int s = 0; s < demand.length; s++) {
      int[] load = new int[demand.length];
      load[s] = 1;
      for (int b = 0; b < kinds; b++) {
        consider(kinds > 1 ? b : -1, load, SINGLE);
      }
      for (int t = s; t < demand.length; t++) {
        load[t]++;
        consider(-1, load, 1);
        load[t]--;
      }
    }
    if (best != null) {
      return best;
    }
    for (Columns.Fraction f : fractions) {
      for (int b = -1; b < kinds; b++) {
        consider(b, f.pattern().counts(), 1);
      }
    }
    return best;
  }

  /** Whether there is a whole number of blanks of each kind. */
  static boolean counted(List<Columns.Fraction> fractions, int kinds) {
    double[] sum = new double[kinds];
    fractions.forEach(f -> sum[f.pattern().bin()] += f.amount());
    return Arrays.stream(sum).allMatch(s -> Math.abs(s - Math.rint(s)) <= NEAR);
  }

  private void consider(int bin, int[] load, double weight) {
    budget.spend(4L * fractions.size() + load.length);
    double amount = 0;
    for (Columns.Fraction f : fractions) {
      if ((bin < 0 || bin == f.pattern().bin()) && covers(f.pattern().counts(), load)) {
        amount += f.amount();
      }
    }
    double part = amount - Math.floor(amount);
    double now = weight * Math.min(part * BELOW, 1 - part);
    if (part > NEAR && 1 - part > NEAR && now > score) {
      score = now;
      best = new Branch(bin, Arrays.copyOf(load, load.length), amount);
    }
  }

  private static boolean covers(int[] counts, int[] load) {
    for (int t = 0; t < load.length; t++) {
      if (counts[t] < load[t]) {
        return false;
      }
    }
    return true;
  }
}
