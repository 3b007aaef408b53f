package headcourse.layout.flat;

import headcourse.diag.Diagnostic;
import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.HeadLayout;
import headcourse.layout.Solution;
import headcourse.layout.fitted.FittedReading;
import java.util.List;

/** Sets out one flat head by its rhythm, or says why it can't be. */
final class FlatSolver {
  private FlatSolver() {}

  static Solution solve(FlatShape shape, Job job, Opening opening) {
    String path = opening.path() + ".head.stones.rhythm";
    if (opening.head().stones().rhythm() == HeadSpec.Rhythm.FROM_STOCK) {
      return new Solution.Refused(
          List.of(
              Diagnostic.error(
                  job.spans().of(path),
                  "rhythm from-stock chooses for all openings of a job together, from the yard",
                  "a single head can be even, graded or mixed")),
          List.of());
    }
    FlatReading reading = shape.read(job, opening);
    if (reading.head() == null) {
      return reading.refused();
    }
    FittedReading fitted = new FittedReading(job, opening);
    if (!fitted.problems().isEmpty()) {
      return new Solution.Refused(fitted.problems(), List.of());
    }
    HeadSolver solver = new HeadSolver(reading.head());
    HeadLayout head = solver.solve();
    if (head != null) {
      return new Solution.Solved(head, solver.effort());
    }
    List<Diagnostic> gaps = fitted.gaps(solver.drawn());
    if (!gaps.isEmpty()) {
      return new Solution.Refused(gaps, List.of());
    }
    return new Solution.Refused(FlatRefusal.of(reading.head()), List.of(), solver.effort());
  }
}
