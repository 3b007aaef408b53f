package headcourse.stock.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** Finds rules of groups (see {@link Rule#groups}) that fractions of filled blanks break. */
final class GroupCuts {
  private static final double BROKEN = 0.02;

  private final List<Master.Fraction> fractions;
  private final int[] demand;

  GroupCuts(List<Master.Fraction> fractions, int[] demand) {
    this.fractions = fractions;
    this.demand = demand;
  }

  private record Found(int[] types, int divisor, double by) {}

  /** Those broken most, so many at most, each type in no more than a few of them. */
  List<Rule> find(int most) {
    int n = demand.length;
    List<Found> found = new ArrayList<>();
    int[] types = open();
    for (int i = 0; i < types.length; i++) {
      consider(new int[] {types[i]}, found);
      for (int j = i + 1; j < types.length; j++) {
        consider(new int[] {types[i], types[j]}, found);
        for (int k = j + 1; k < types.length; k++) {
          consider(new int[] {types[i], types[j], types[k]}, found);
        }
      }
    }
    found.sort(
        Comparator.comparingDouble((Found f) -> 0 - f.by)
            .thenComparing(Found::types, Arrays::compare)
            .thenComparing(Found::divisor));
    int[] used = new int[n];
    List<Rule> out = new ArrayList<>();
    for (Found f : found) {
      if (out.size() < most && Arrays.stream(f.types).allMatch(t -> used[t] < 5)) {
        out.add(Rule.groups(f.types, sum(f.types), f.divisor));
        for (int t : f.types) {
          used[t]++;
        }
      }
    }
    return out;
  }

  /** Types on blanks that are taken in part. */
  private int[] open() {
    boolean[] in = new boolean[demand.length];
    for (Master.Fraction f : fractions) {
      if (Math.abs(f.amount() - Math.rint(f.amount())) > 1e-6) {
        for (int t = 0; t < in.length; t++) {
          in[t] |= f.load().counts()[t] > 0;
        }
      }
    }
    return java.util.stream.IntStream.range(0, in.length).filter(t -> in[t]).toArray();
  }

  private int sum(int[] types) {
    int sum = 0;
    for (int t : types) {
      sum += demand[t];
    }
    return sum;
  }

  private void consider(int[] types, List<Found> found) {
    int sum = sum(types);
    for (int divisor = 2; divisor <= 3; divisor++) {
      if (sum % divisor == 0) {
        continue;
      }
      double groups = 0;
      for (Master.Fraction f : fractions) {
        int on = 0;
        for (int t : types) {
          on += f.load().counts()[t];
        }
        groups += f.amount() * (on / divisor);
      }
      if (groups > sum / divisor + BROKEN) {
        found.add(new Found(types, divisor, groups - sum / divisor));
      }
    }
  }
}
