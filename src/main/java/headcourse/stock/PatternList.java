package headcourse.stock;

import headcourse.stock.CuttingProblem.Bin;
import java.util.ArrayList;
import java.util.List;

/**
 * All ways to fill a kind of blank, where they are few enough to be listed: raked parts, of which
 * few go on a blank, but of which almost each is a type of its own.
 */
final class PatternList {
  private static final int LOOKED_AT = 200_000;

  private final CuttingProblem problem;
  private final Sequencer sequencer;
  private final Bin bin;
  private final List<int[]> patterns = new ArrayList<>();
  private final int[] counts;
  private final int[] chosen;
  private final long before;
  private int looked;

  private PatternList(CuttingProblem problem, Sequencer sequencer, Bin bin) {
    this.problem = problem;
    this.sequencer = sequencer;
    this.bin = bin;
    this.before = sequencer.work();
    this.counts = new int[problem.demand().length];
    this.chosen = new int[problem.parts()];
  }

  /** The ways, each as the types of its parts; or null where they are too many. */
  static List<int[]> of(CuttingProblem problem, Sequencer sequencer, Bin bin) {
    PatternList list = new PatternList(problem, sequencer, bin);
    list.extend(0, 0);
    return list.tired() ? null : list.patterns;
  }

  private boolean tired() {
    return looked + (sequencer.work() - before) / 4 > LOOKED_AT;
  }

  private void extend(int size, int from) {
    boolean leaf = true;
    for (int t = from; t < counts.length; t++) {
      if (counts[t] == problem.demand()[t] || !bin.takes()[t]) {
        continue;
      }
      looked++;
      if (tired()) {
        return;
      }
      counts[t]++;
      if (sequencer.fits(counts, bin.usable())) {
        leaf = false;
        chosen[size] = t;
        extend(size + 1, t);
      }
      counts[t]--;
    }
    if (leaf && size > 0) {
      patterns.add(java.util.Arrays.copyOf(chosen, size));
    }
  }
}
