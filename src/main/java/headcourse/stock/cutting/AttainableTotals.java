package headcourse.stock.cutting;

import headcourse.stock.cutting.CuttingProblem.Bin;
import java.util.ArrayList;
import java.util.List;

/**
 * Which totals a number of blanks of each kind may come to, so that a bound may be raised to the
 * next of them.
 */
final class AttainableTotals {
  /** Of more combinations than this, or nearly so many of many kinds, nothing is said. */
  private static final int LOOKED_AT = 100_000;

  private static final int MANY = 6;

  private final List<Bin> kinds = new ArrayList<>();
  private final List<Integer> least = new ArrayList<>();
  private final List<Integer> most = new ArrayList<>();
  private final Objective objective;
  private long looked;
  private long from;
  private long to;
  private boolean up;
  private long found;

  /**
   * @param low by kind: so many blanks at least
   * @param high by kind: so many at most
   */
  AttainableTotals(CuttingProblem problem, Objective objective, int[] low, int[] high) {
    this.objective = objective;
    for (int b = 0; b < low.length; b++) {
      Bin bin = problem.bins().get(b);
      if (high[b] == 0) {
        continue;
      }
      int same = same(bin);
      if (same < 0) {
        kinds.add(bin);
        least.add(low[b]);
        most.add(high[b]);
      } else {
        least.set(same, least.get(same) + low[b]);
        most.set(same, most.get(same) + high[b]);
      }
    }
  }

  private int same(Bin bin) {
    for (int k = 0; k < kinds.size(); k++) {
      Bin other = kinds.get(k);
      if (objective.cost(other) == objective.cost(bin)
          && objective.toCap(other) == objective.toCap(bin)) {
        return k;
      }
    }
    return -1;
  }

  /**
   * The least total from there on and under the objective's; the objective's where there is none.
   */
  long next(long bound) {
    return look(bound, objective.under(), true);
  }

  /** The greatest total under the objective's; {@link Long#MIN_VALUE} where there is none. */
  long last() {
    return look(0, objective.under(), false);
  }

  private long look(long low, long high, boolean upward) {
    from = low;
    to = high;
    up = upward;
    found = upward ? high : Long.MIN_VALUE;
    looked = kinds.size() > MANY ? LOOKED_AT : 0;
    choose(0, 0, 0);
    if (looked > LOOKED_AT) {
      return upward ? low : high - 1;
    }
    return found;
  }

  private void choose(int k, long sum, long capped) {
    if (++looked > LOOKED_AT || sum >= (up ? found : to)) {
      return;
    }
    if (objective.capped() && capped > objective.cap()) {
      return;
    }
    if (k == kinds.size()) {
      if (sum >= from && (!objective.capped() || capped == objective.cap())) {
        found = up ? Math.min(found, sum) : Math.max(found, sum);
      }
      return;
    }
    Bin bin = kinds.get(k);
    long each = objective.cost(bin);
    long first = least.get(k);
    long last = most.get(k);
    if (k == kinds.size() - 1 && each > 0 && !objective.capped()) {
      // The last kind makes up what is wanting.
      if (up) {
        first = Math.max(first, (Math.max(0, from - sum) + each - 1) / each);
        last = Math.min(last, first);
      } else {
        last = Math.min(last, (to - 1 - sum) / each);
        first = Math.max(first, last);
      }
    }
    for (long n = first; n <= last && sum + n * each < to; n++) {
      choose(k + 1, sum + n * each, capped + n * objective.toCap(bin));
    }
  }
}
