package headcourse.rules;

import headcourse.bench.HeadBench;
import headcourse.bench.HeadWork;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.Solution;
import headcourse.layout.shapes.Shapes;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Heads as the program itself sets them out and works them up. */
final class SolvedHeads {
  private SolvedHeads() {}

  /** Every head of a job, or empty where one can't be set out. */
  static Optional<List<HeadWork>> of(Job job) {
    List<HeadWork> heads = new ArrayList<>();
    for (Opening o : job.openings()) {
      Solution s = Shapes.named(o.head().shape()).orElseThrow().setOut(job, o);
      if (!(s instanceof Solution.Solved solved)) {
        return Optional.empty();
      }
      heads.add(HeadBench.workUp(job, solved.head()));
    }
    return Optional.of(heads);
  }
}
