package headcourse.stock.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;

/** Patterns found so far, for searches of parts of the problem to begin with. */
final class PatternPool {
  /** More are not worth looking through. */
  private static final int MOST = 20_000;

  private final List<Packing.Pattern> patterns = new ArrayList<>();
  private final TreeSet<int[]> known = new TreeSet<>(Arrays::compare);

  void add(List<Packing.Pattern> more) {
    for (Packing.Pattern p : more) {
      int[] key = Arrays.copyOf(p.counts(), p.counts().length + 1);
      key[key.length - 1] = p.bin();
      if (patterns.size() < MOST && known.add(key)) {
        patterns.add(p);
      }
    }
  }

  /** Those that take no more than there is, and from what there is. */
  List<Packing.Pattern> within(CuttingProblem problem, StepBudget budget) {
    List<Packing.Pattern> out = new ArrayList<>();
    for (Packing.Pattern p : patterns) {
      boolean all = problem.bins().get(p.bin()).count() > 0;
      for (int t = 0; all && t < p.counts().length; t++) {
        all = p.counts()[t] <= problem.demand()[t];
      }
      if (all) {
        out.add(p);
      }
    }
    budget.spend(10L * patterns.size());
    return out;
  }
}
