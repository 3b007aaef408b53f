package headcourse.choose;

import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.Arrangement;
import headcourse.layout.HeadShape;
import headcourse.layout.Solution;
import headcourse.layout.shapes.Shapes;
import java.util.List;
import java.util.Optional;

/**
 * One value for each thing that varies, and the job with them written in.
 *
 * @param settings what is set
 * @param job the job with that, and no opening but the one
 */
record Combination(Settings settings, Job job) {
  Opening opening() {
    return job.openings().get(0);
  }

  /** Shape, rhythm and joints: what a client sees at once. */
  Look look() {
    return Look.of(job);
  }

  List<Arrangement> arrangements() {
    return shape().arrangements(job, opening());
  }

  private HeadShape shape() {
    return Shapes.named(opening().head().shape()).orElseThrow();
  }

  /** Why no head comes of it. */
  Optional<String> refusal() {
    return shape().setOut(job, opening()) instanceof Solution.Refused r && !r.problems().isEmpty()
        ? Optional.of(opening().head().shape() + ": " + r.problems().get(0).message())
        : Optional.empty();
  }
}
