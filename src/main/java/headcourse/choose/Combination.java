package headcourse.choose;

import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.Arrangement;
import headcourse.layout.HeadShape;
import headcourse.layout.shapes.Shapes;
import java.util.List;

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
    HeadShape shape = Shapes.named(opening().head().shape()).orElseThrow();
    return shape.arrangements(job, opening());
  }
}
