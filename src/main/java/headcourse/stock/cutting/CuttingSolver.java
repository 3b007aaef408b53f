package headcourse.stock.cutting;

import headcourse.stock.cutting.Components.Component;
import java.util.ArrayList;
import java.util.List;

/**
 * Puts parts on blanks: as few missing as can be, then least price, fewest blanks, least length.
 *
 * <p>Parts that share no kind of blank are solved apart. Each such component starts from a
 * heuristic incumbent, and is done where that meets a lower bound; otherwise an exact search goes
 * on from there until it is proved or the steps are used up. All of it counts steps.
 */
public final class CuttingSolver {
  /**
   * The share of the budget in which most plans are proved; only the others are worth annealing.
   */
  private static final double SOON = 0.04;

  private final long limit;

  /**
   * @param limit how many steps it may take
   */
  public CuttingSolver(long limit) {
    this.limit = limit;
  }

  /**
   * A packing and how good it is known to be.
   *
   * @param packing the packing
   * @param bound no packing costs less
   * @param proved whether none is better
   * @param steps how many steps it took
   * @param sequencer knows how the parts of each blank lie
   */
  public record Result(
      Packing packing, Cost bound, boolean proved, long steps, Sequencer sequencer) {}

  /** Solves; parts that no blank takes are missing. */
  public Result solve(CuttingProblem problem) {
    StepBudget budget = StepBudget.of(limit);
    Sequencer sequencer = new Sequencer(problem.nesting(), budget);
    List<Packing.Pattern> patterns = new ArrayList<>();
    int[] missing = new int[problem.demand().length];
    Cost bound = Cost.NONE;
    boolean proved = true;
    List<Component> components = Components.of(problem);
    int open = components.stream().mapToInt(c -> c.problem().parts()).sum();
    for (Component c : components) {
      int parts = c.problem().parts();
      CuttingProblem all = c.problem().withPlaces(parts);
      Result r = solve(all, sequencer, budget.share((double) parts / open));
      open -= parts;
      for (Packing.Pattern p : r.packing.patterns()) {
        if (all.bins().get(p.bin()).single()) {
          missing[Nesting.present(p.counts())[0]]++;
        } else {
          patterns.add(new Packing.Pattern(c.kinds()[p.bin()], p.counts()));
        }
      }
      bound = bound.plus(r.bound);
      proved &= r.proved;
    }
    return new Result(
        Packing.of(problem, patterns, missing), bound, proved, budget.steps(), sequencer);
  }

  private static Result solve(CuttingProblem problem, Sequencer sequencer, StepBudget budget) {
    Packing incumbent = new FirstFit(problem, sequencer).solve();
    Cost bound = LowerBound.of(problem);
    Result soon = new Lexicographic(problem, sequencer, budget.share(SOON)).solve(incumbent, bound);
    if (soon.proved()) {
      return soon;
    }
    Packing annealed = new Annealing(problem, sequencer).better(soon.packing());
    return new Lexicographic(problem, sequencer, budget).solve(annealed, bound);
  }
}
