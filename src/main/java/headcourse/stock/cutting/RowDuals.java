package headcourse.stock.cutting;

import java.util.ArrayList;
import java.util.List;

/** What pattern rows add to, or take from, the value of patterns on one kind of blank. */
final class RowDuals {
  private final int kind;
  private final PatternRow[] rows;
  private final long[] duals;
  private final PatternRow[] forbidding;
  private long always;

  /**
   * @param duals by row, not negative where it asks for so many at least, else not positive
   */
  RowDuals(int kind, List<PatternRow> all, long[] duals) {
    this.kind = kind;
    List<PatternRow> with = new ArrayList<>();
    List<Long> of = new ArrayList<>();
    for (int i = 0; i < duals.length; i++) {
      if (all.get(i).counts(kind)) {
        always += duals[i];
      } else if (duals[i] != 0) {
        with.add(all.get(i));
        of.add(duals[i]);
      }
    }
    this.rows = with.toArray(PatternRow[]::new);
    this.duals = of.stream().mapToLong(d -> d).toArray();
    this.forbidding = all.stream().filter(PatternRow::mayForbid).toArray(PatternRow[]::new);
  }

  /** What is added for every blank, whatever lies on it. */
  long always() {
    return always;
  }

  /** What a part of a type may bring in of all that is added, shared among the parts it takes. */
  long share(int type) {
    long sum = 0;
    for (int r = 0; r < rows.length; r++) {
      if (duals[r] > 0 && rows[r].has(type)) {
        sum += duals[r] / rows[r].size() + 1;
      }
    }
    return sum;
  }

  /** Whether a type of no value may help to a row's. */
  boolean helps(int type) {
    for (int r = 0; r < rows.length; r++) {
      if (duals[r] > 0 && rows[r].has(type)) {
        return true;
      }
    }
    return false;
  }

  /** What is added for a pattern. */
  long of(int[] counts) {
    long sum = 0;
    for (int r = 0; r < rows.length; r++) {
      sum += duals[r] * rows[r].of(kind, counts);
    }
    return sum;
  }

  /**
   * What is added, and the shares of what lies there in what types from a place on may complete.
   */
  long hope(int[] counts, int[] place, int from) {
    long sum = 0;
    for (int r = 0; r < rows.length; r++) {
      if (duals[r] < 0) {
        sum += duals[r] * rows[r].of(kind, counts);
      } else if (rows[r].within(kind, counts, place, from)) {
        sum += (duals[r] / rows[r].size() + 1) * rows[r].present(counts);
      }
    }
    return sum;
  }

  /** Whether no blank filled like this, nor one with more on it, is of use. */
  boolean forbids(int[] counts) {
    for (PatternRow r : forbidding) {
      if (r.forbids(kind, counts)) {
        return true;
      }
    }
    return false;
  }
}
