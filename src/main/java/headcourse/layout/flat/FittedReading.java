package headcourse.layout.flat;

import headcourse.diag.Diagnostic;
import headcourse.job.Fitted;
import headcourse.job.Job;
import headcourse.job.Opening;
import java.util.ArrayList;
import java.util.List;

/** The stones of one opening that the job says are cut. */
final class FittedReading {
  private final Job job;
  private final Opening opening;

  FittedReading(Job job, Opening opening) {
    this.job = job;
    this.opening = opening;
  }

  static List<Fitted> of(Job job, Opening opening) {
    return job.fitted().stream().filter(f -> f.opening().equals(opening.mark())).toList();
  }

  /** What can't be solved around whatever the rest is. */
  List<Diagnostic> problems() {
    List<Diagnostic> all = new ArrayList<>();
    for (Fitted f : of(job, opening)) {
      boolean key = f.stone().equals("K");
      if (key && opening.head().key() == null) {
        all.add(
            Diagnostic.error(
                job.spans().of(f.path()),
                opening.mark() + ": a key is fitted, but this head has none",
                "leave K out, or give the head a key:"));
      }
    }
    return all;
  }
}
