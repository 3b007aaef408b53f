package headcourse.layout.flat;

import headcourse.job.Fitted;
import headcourse.layout.HeadLayout;
import headcourse.layout.fitted.CutStonesComposer.Drawn;
import headcourse.layout.fitted.FittedReading;
import headcourse.layout.fitted.FittedSolver;
import headcourse.layout.side.Choice;
import headcourse.layout.side.FlatHead;
import headcourse.layout.side.FlatTerms;
import headcourse.layout.side.SideSolver;
import headcourse.layout.side.SidesSolver;
import java.util.List;

/** Solves a whole head: as drawn, and where stones are cut already, around them. */
final class HeadSolver {
  private final FlatHead head;
  private final SidesSolver sides;
  private FittedSolver fittedSolver;
  private Drawn drawn;

  HeadSolver(FlatHead head) {
    this.head = head;
    this.sides = new SidesSolver(head);
  }

  /** What solving took; see {@link SideSolver#effort}. */
  long effort() {
    return sides.effort() + (fittedSolver == null ? 0 : fittedSolver.effort());
  }

  /** The head as it would be without fitted stones, once solved; null where there is none. */
  HeadLayout drawn() {
    return drawn == null ? null : drawn.head();
  }

  /** The head, or null where there is none. */
  HeadLayout solve() {
    FlatTerms terms = head.terms();
    List<Fitted> fitted = FittedReading.of(terms.job(), terms.opening());
    SidesSolver.Pair pair = sides.pair();
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
