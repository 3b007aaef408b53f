package headcourse.stock.cutting;

import headcourse.stock.cutting.CuttingProblem.Bin;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The pricing problem: the patterns of one kind of blank that are worth most, where each part has a
 * dual value and each pattern row adds or takes its own.
 *
 * <p>Patterns are told apart by which of their parts lean furthest to either side: with those two
 * laid, the difference between the greatest and the least lean on the blank is spent, and of each
 * other part only its inner width (see {@link LeanBound#inner}) still counts. The most promising
 * pair comes first; what lies beside it is left to {@link PatternSearch}.
 */
final class Pricing {
  /** So many nodes at most of a search that is to give a bound, and of a hasty one. */
  private static final int NODES = 1_000_000;

  private static final int HASTY = 20_000;

  /** A hasty search ends after so many nodes once it has found enough; later in large problems. */
  private static final int EARLY = 1_500;

  private static final int LATER = 6_000;

  private final CuttingProblem problem;
  private final Sequencer sequencer;
  private final InnerWidths widths;
  private final List<PatternRow> rows;

  Pricing(CuttingProblem problem, Sequencer sequencer, List<PatternRow> rows) {
    this.problem = problem;
    this.sequencer = sequencer;
    this.widths = new InnerWidths(problem.nesting());
    this.rows = rows;
  }

  /**
   * What was found.
   *
   * @param found those worth more than enough, the best first
   * @param bound no pattern is worth more
   * @param whole whether the search was not ended early because enough was found
   */
  record Priced(List<int[]> found, long bound, boolean whole) {}

  /** Two types that lean furthest, maybe the same, and what may at most be won with them. */
  private record Start(int left, int right, long most) {}

  /**
   * The best patterns of a kind of blank.
   *
   * @param b the kind
   * @param worth by type, not negative
   * @param duals by row, not negative where it asks for so many at least, else not positive
   * @param threshold what is worth no more is of no interest
   * @param hasty whether some good ones are enough
   * @param budget where it is out, the search only bounds what is left
   */
  Priced price(
      int b, long[] worth, long[] duals, long threshold, boolean hasty, StepBudget budget) {
    Bin bin = problem.bins().get(b);
    RowDuals rowDuals = new RowDuals(b, rows, duals);
    long enough = Math.max(0, threshold - rowDuals.always());
    long early = problem.large() ? LATER : EARLY;
    PatternSearch search =
        new PatternSearch(
            problem,
            sequencer,
            budget,
            widths,
            bin,
            rowDuals,
            worth,
            enough,
            hasty ? early : Long.MAX_VALUE,
            hasty ? HASTY : NODES);
    if (bin.single()) {
      search.singles();
    } else {
      patterns(search, budget);
    }
    return new Priced(search.found(), search.most() + rowDuals.always(), !search.stopped());
  }

  private void patterns(PatternSearch search, StepBudget budget) {
    if (problem.nesting().square) {
      search.all();
      return;
    }
    int[] all = search.order();
    List<Start> starts = new ArrayList<>();
    for (int left = 0; left < all.length; left++) {
      for (int right = 0; right < all.length; right++) {
        if (furthest(all, left, right)) {
          long most = search.hope(all[left], all[right]);
          if (most > search.most()) {
            starts.add(new Start(left, right, most));
          }
        }
      }
    }
    budget.spend(6L * all.length * all.length);
    starts.sort(
        Comparator.comparingLong((Start s) -> 0 - s.most)
            .thenComparing(Start::left)
            .thenComparing(Start::right));
    for (Start s : starts) {
      if (s.most <= search.most() || search.stopped() || search.tired(s.most)) {
        break;
      }
      budget.spend(8L * all.length);
      boolean[] others = new boolean[problem.demand().length];
      for (int i = 0; i < all.length; i++) {
        others[all[i]] = !furtherLeft(all, i, s.left) && !furtherRight(all, i, s.right);
      }
      search.from(all[s.left], all[s.right], others);
    }
  }

  /** Whether the two may be those of a pattern. */
  private boolean furthest(int[] all, int left, int right) {
    return !furtherLeft(all, right, left) && !furtherRight(all, left, right);
  }

  private boolean furtherLeft(int[] all, int i, int than) {
    LeanBound lean = problem.nesting().leans.get(0);
    return first(lean.low(all[i]), i, lean.low(all[than]), than);
  }

  private boolean furtherRight(int[] all, int i, int than) {
    LeanBound lean = problem.nesting().leans.get(0);
    return first(0 - lean.high(all[i]), i, 0 - lean.high(all[than]), than);
  }

  private static boolean first(long a, int i, long b, int than) {
    return a < b || a == b && i < than;
  }
}
