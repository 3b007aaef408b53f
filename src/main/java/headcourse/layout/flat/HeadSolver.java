package headcourse.layout.flat;

import headcourse.job.Fitted;
import headcourse.layout.HeadLayout;
import headcourse.layout.flat.CutStonesComposer.Drawn;
import java.util.List;

/** Solves a whole head: as drawn, and where stones are cut already, around them. */
final class HeadSolver {
  private final FlatHead head;
  private final SidesSolver sides;
  private FittedSolver fittedSolver;

  HeadSolver(FlatHead head) {
    this.head = head;
    this.sides = new SidesSolver(head);
  }

  /** What solving took; see {@link SideSolver#effort}. */
  long effort() {
    return sides.effort() + (fittedSolver == null ? 0 : fittedSolver.effort());
  }

  /** The head, or null where there is none. */
  HeadLayout solve() {
    FlatTerms terms = head.terms();
    List<Fitted> fitted = FittedReading.of(terms.job(), terms.opening());
    SidesSolver.Pair pair = sides.pair();
    Drawn drawn = null;
    if (pair != null) {
      Choice left = pair.left().choice();
      Choice right = pair.right().choice();
      drawn = new Drawn(head.build(left, right, pair.proof(), List.of()), left, right);
    }
    if (fitted.isEmpty()) {
      return drawn == null ? null : drawn.head();
    }
    fittedSolver = new FittedSolver(head, fitted, drawn);
    return fittedSolver.solve();
  }
}
