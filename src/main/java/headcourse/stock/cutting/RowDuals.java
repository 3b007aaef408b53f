package headcourse.stock.cutting;

import java.util.ArrayList;
import java.util.List;

/** What pattern rows add to, or take from, the value of patterns on one kind of blank. */
final class RowDuals {
  private final int kind;
  private final List<PatternRow> all;
  private final List<PatternRow> rows = new ArrayList<>();
  private final List<Long> duals = new ArrayList<>();
  private long always;

  /**
   * @param values by row, not negative where it asks for so many at least, else not positive
   */
  RowDuals(int kind, List<PatternRow> all, long[] values) {
    this.kind = kind;
    this.all = all;
    for (int i = 0; i < values.length; i++) {
      if (all.get(i).counts(kind)) {
        always += values[i];
      } else if (values[i] != 0 && all.get(i).on(kind)) {
        rows.add(all.get(i));
        duals.add(values[i]);
      }
    }
  }

  /** What is added for every blank, whatever lies on it. */
  long always() {
    return always;
  }

  /** What a part of a type may bring in of all that is added, shared among the parts it takes. */
  long share(int type) {
    long sum = 0;
    for (int r = 0; r < rows.size(); r++) {
      sum += rows.get(r).has(type) ? each(r) : 0;
    }
    return sum;
  }

  /** What each part brings in that a row takes; nothing where it takes away. */
  private long each(int r) {
    return duals.get(r) > 0 ? duals.get(r) / rows.get(r).size() + 1 : 0;
  }

  /** What is added for a pattern. */
  long of(int[] counts) {
    long sum = 0;
    for (int r = 0; r < duals.size(); r++) {
      sum += duals.get(r) * rows.get(r).of(kind, counts);
    }
    return sum;
  }

  /** What is taken away for a pattern, and the shares of its parts in what is added. */
  long hope(int[] counts) {
    long sum = 0;
    for (int r = 0; r < rows.size(); r++) {
      PatternRow row = rows.get(r);
      sum += each(r) * row.present(counts) + Math.min(0, duals.get(r)) * row.of(kind, counts);
    }
    return sum;
  }

  /** Whether no blank filled like this, nor one with more on it, is of use. */
  boolean forbids(int[] counts) {
    for (PatternRow r : all) {
      if (r.forbids(kind, counts)) {
        return true;
      }
    }
    return false;
  }
}
