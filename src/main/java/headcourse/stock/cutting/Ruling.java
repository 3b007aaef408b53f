package headcourse.stock.cutting;

import java.util.ArrayList;
import java.util.List;

/** What rules add to, or take from, the value of fillings of one kind of blank. */
final class Ruling {
  private final int kind;
  private final Rule[] rules;
  private final long[] duals;
  private final Rule[] forbidding;
  private final Rule[] joining;
  private long always;

  /**
   * @param duals by rule, not negative where it asks for so many at least, else not positive
   */
  Ruling(int kind, List<Rule> all, long[] duals) {
    this.kind = kind;
    List<Rule> with = new ArrayList<>();
    List<Long> of = new ArrayList<>();
    for (int i = 0; i < duals.length; i++) {
      if (all.get(i).counts(kind)) {
        always += duals[i];
      } else if (duals[i] != 0) {
        with.add(all.get(i));
        of.add(duals[i]);
      }
    }
    this.rules = with.toArray(Rule[]::new);
    this.duals = of.stream().mapToLong(d -> d).toArray();
    this.forbidding = all.stream().filter(Rule::mayForbid).toArray(Rule[]::new);
    this.joining = all.stream().filter(Rule::joins).toArray(Rule[]::new);
  }

  /** What is added for every blank, whatever lies on it. */
  long always() {
    return always;
  }

  /** What a part of a type may bring in of all that is added, shared among the parts it takes. */
  long share(int type) {
    long sum = 0;
    for (int r = 0; r < rules.length; r++) {
      if (duals[r] > 0 && rules[r].has(type)) {
        sum += duals[r] / rules[r].size() + 1;
      }
    }
    return sum;
  }

  /** Whether a type of no value may help to a rule's. */
  boolean helps(int type) {
    for (int r = 0; r < rules.length; r++) {
      if (duals[r] > 0 && rules[r].has(type)) {
        return true;
      }
    }
    for (Rule r : joining) {
      if (r.has(type)) {
        return true;
      }
    }
    return false;
  }

  /** What is added for a filling. */
  long of(int[] counts) {
    long sum = 0;
    for (int r = 0; r < rules.length; r++) {
      sum += duals[r] * rules[r].of(kind, counts);
    }
    return sum;
  }

  /**
   * What is added, and the shares of what lies there in what types from a place on may complete.
   */
  long hope(int[] counts, int[] place, int from) {
    long sum = 0;
    for (int r = 0; r < rules.length; r++) {
      if (duals[r] < 0) {
        sum += duals[r] * rules[r].of(kind, counts);
      } else if (rules[r].within(kind, counts, place, from)) {
        sum += (duals[r] / rules[r].size() + 1) * rules[r].present(counts);
      }
    }
    return sum;
  }

  /** Whether no blank filled like this, nor one with more on it, is of use. */
  boolean forbids(int[] counts) {
    for (Rule r : forbidding) {
      if (r.forbids(kind, counts)) {
        return true;
      }
    }
    return false;
  }

  /** Whether only part of what belongs together lies there. */
  boolean splits(int[] counts) {
    for (Rule r : joining) {
      if (r.splits(counts)) {
        return true;
      }
    }
    return false;
  }

  /** The same, and types from a place on can't make up for it. */
  boolean splits(int[] counts, int[] place, int from) {
    for (Rule r : joining) {
      if (r.splits(counts) && !r.joined(counts, place, from)) {
        return true;
      }
    }
    return false;
  }
}
