package headcourse.layout.flat;

import headcourse.job.HeadSpec;
import headcourse.layout.HeadLayout;
import headcourse.layout.Proof;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Chooses both sides: alike, or each by itself where mixed widths need not mirror. */
final class SidesSolver {
  private final FlatHead head;
  private final FlatTerms terms;
  private final SideSolver solver;

  SidesSolver(FlatHead head) {
    this.head = head;
    this.terms = head.terms();
    this.solver =
        terms.stones().rhythm() == HeadSpec.Rhythm.MIXED
            ? new MixedSolver(terms, head.geometry())
            : new DividedSolver(terms, head.geometry(), terms.step());
  }

  /** What solving took; see {@link SideSolver#effort}. */
  long effort() {
    return solver.effort();
  }

  private record Pair(SideResult left, SideResult right) {}

  /** The head, or null where there is none. */
  HeadLayout solve() {
    if (terms.stones().mirror() || terms.stones().rhythm() != HeadSpec.Rhythm.MIXED) {
      // The sides differ by their walls alone, so what the shorter allows serves both, and where
      // it allows nothing there is no head.
      SideResult both = side(terms.both(), Double.NaN);
      return both.choice() == null ? null : built(new Pair(both, both));
    }
    Pair pair = apart();
    return pair == null ? null : built(pair);
  }

  private SideResult side(FlatTerms.SideTerms side, double striking) {
    return solver.solve(head.cases(side, striking), side.seed());
  }

  /**
   * Each side by itself. One striking point serves both; the side with the shorter wall settles it,
   * by its best choice, or by the best with which the other side can live.
   */
  private Pair apart() {
    boolean leftFirst = terms.left().wall() <= terms.right().wall();
    FlatTerms.SideTerms first = leftFirst ? terms.left() : terms.right();
    FlatTerms.SideTerms second = leftFirst ? terms.right() : terms.left();
    List<SideCase> cases = head.cases(first, Double.NaN);
    Pair pair = pair(solver.solve(cases, first.seed()), second, leftFirst);
    if (pair != null || cases.size() < 2) {
      return pair;
    }
    long target = terms.bearing().target().picometres();
    List<SideCase> nearest = new ArrayList<>(cases);
    nearest.sort(Comparator.comparingLong(c -> Math.abs(c.ends().get(0).bearing() - target)));
    for (SideCase c : nearest) {
      pair = pair(solver.solve(List.of(c), first.seed()), second, leftFirst);
      if (pair != null) {
        return pair;
      }
    }
    return null;
  }

  private Pair pair(SideResult one, FlatTerms.SideTerms second, boolean leftFirst) {
    if (one.choice() == null) {
      return null;
    }
    double striking = one.choice().lines().striking();
    SideResult two = side(second, head.geometry().fanned() ? striking : Double.NaN);
    if (two.choice() == null) {
      return null;
    }
    return leftFirst ? new Pair(one, two) : new Pair(two, one);
  }

  private HeadLayout built(Pair pair) {
    double cost = Math.max(pair.left().cost(), pair.right().cost());
    long steps = pair.left().steps() + (pair.left() == pair.right() ? 0 : pair.right().steps());
    Proof proof = new Proof(Proof.Status.OPTIMAL, cost, cost, steps);
    return head.build(pair.left().choice(), pair.right().choice(), proof, List.of());
  }
}
