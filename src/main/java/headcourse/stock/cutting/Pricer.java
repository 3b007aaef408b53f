package headcourse.stock.cutting;

import headcourse.stock.cutting.CuttingProblem.Bin;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Finds the most valuable ways to fill one blank, where each part has a value and each rule adds or
 * takes its own.
 *
 * <p>Fillings are told apart by which of their parts lean furthest to either side: with those two
 * laid, the difference between the greatest and the least lean on the blank is spent, and of each
 * other part only its inner width (see {@link LeanBound#inner}) still counts. The most promising
 * pair comes first; what lies beside it is left to {@link FillSearch}.
 */
final class Pricer {
  private static final int STEPS = 1_000_000;
  private static final int HASTY = 20_000;
  private static final int EARLY = 1_500;
  private static final int LATER = 6_000;

  private final CuttingProblem problem;
  private final Sequencer sequencer;
  private final Widths widths;
  private final List<Rule> rules;
  private final SpanBound spans;
  private long steps;

  Pricer(CuttingProblem problem, Sequencer sequencer, List<Rule> rules) {
    this.problem = problem;
    this.sequencer = sequencer;
    this.widths = new Widths(problem.nesting());
    this.rules = rules;
    this.spans = new SpanBound(problem, widths);
  }

  /**
   * Filled blanks.
   *
   * @param found those worth more than enough, the best first
   * @param bound no filling is worth more
   * @param whole whether the search was not ended early because enough was found
   */
  record Priced(List<int[]> found, long bound, boolean whole) {}

  /** Two types that lean furthest, maybe the same, and what may at most be won with them. */
  private record Start(int left, int right, long most) {}

  /** Steps of all searches. */
  long steps() {
    return steps;
  }

  /**
   * By kind of blank: no filling is worth more, quickly.
   *
   * @param worth by type, not negative
   * @param duals by rule, not negative where it asks for so many at least, else not positive
   */
  long[] most(long[] worth, long[] duals) {
    long[] shared = worth.clone();
    Ruling any = new Ruling(0, rules, duals);
    for (int t = 0; t < shared.length; t++) {
      shared[t] += any.share(t);
    }
    long before = spans.steps();
    long[] most = spans.most(shared);
    steps += spans.steps() - before;
    for (int b = 0; b < most.length; b++) {
      most[b] += most[b] == Long.MAX_VALUE ? 0 : new Ruling(b, rules, duals).always();
    }
    return most;
  }

  /**
   * The best fillings of a kind of blank.
   *
   * @param b the kind
   * @param worth by type, not negative
   * @param duals by rule, not negative where it asks for so many at least, else not positive
   * @param threshold what is worth no more is of no interest
   * @param hasty whether some good ones are enough
   */
  Priced price(int b, long[] worth, long[] duals, long threshold, boolean hasty) {
    Bin bin = problem.bins().get(b);
    Ruling ruling = new Ruling(b, rules, duals);
    long enough = Math.max(0, threshold - ruling.always());
    long early = problem.large() ? LATER : EARLY;
    FillSearch search =
        new FillSearch(
            problem,
            sequencer,
            widths,
            bin,
            ruling,
            worth,
            enough,
            hasty ? early : Long.MAX_VALUE,
            hasty ? HASTY : STEPS);
    if (bin.single()) {
      search.singles();
    } else {
      fillings(search);
    }
    steps += search.steps();
    return new Priced(search.found(), search.most() + ruling.always(), !search.stopped());
  }

  private void fillings(FillSearch search) {
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
    search.count(all.length * all.length / 8L);
    starts.sort(
        Comparator.comparingLong((Start s) -> 0 - s.most)
            .thenComparing(Start::left)
            .thenComparing(Start::right));
    for (Start s : starts) {
      if (s.most <= search.most() || search.stopped() || search.tired(s.most)) {
        break;
      }
      boolean[] others = new boolean[problem.demand().length];
      for (int i = 0; i < all.length; i++) {
        others[all[i]] = !furtherLeft(all, i, s.left) && !furtherRight(all, i, s.right);
      }
      search.from(all[s.left], all[s.right], others);
    }
  }

  /** Whether the two may be those of a filling. */
  private boolean furthest(int[] all, int left, int right) {
    return !furtherLeft(all, right, left) && !furtherRight(all, left, right);
  }

  private boolean furtherLeft(int[] all, int i, int than) {
    long a = widths.low(all[i]);
    long b = widths.low(all[than]);
    return a < b || a == b && i < than;
  }

  private boolean furtherRight(int[] all, int i, int than) {
    long a = widths.high(all[i]);
    long b = widths.high(all[than]);
    return a > b || a == b && i < than;
  }
}
