package headcourse.work;

import headcourse.diag.Diagnostic;
import headcourse.job.Bundle;
import headcourse.job.Job;
import headcourse.job.Opening;
import java.util.ArrayList;
import java.util.List;

/** What a job file may say that can't be worked out yet; each is refused where it stands. */
final class Unsupported {
  private Unsupported() {}

  static List<Diagnostic> in(Job job) {
    List<Diagnostic> said = new ArrayList<>();
    for (Opening o : job.openings()) {
      if (o.measured() != null) {
        said.add(
            refuse(
                job,
                o.path() + ".measured",
                "measured: can't be set out on yet",
                "write the measured width as width: and leave measured: out"));
      }
    }
    if (!job.fitted().isEmpty()) {
      said.add(
          refuse(
              job,
              "fitted",
              "fitted: can't be solved around yet",
              "leave fitted: out and trim on the wall"));
    }
    if (!job.spoiled().isEmpty()) {
      said.add(
          refuse(
              job,
              "spoiled",
              "spoiled: can't be solved around yet",
              "lower the count of that stock by one and leave spoiled: out"));
    }
    if (!job.info().revisionOf().isEmpty()) {
      said.add(
          refuse(
              job,
              "job.revision-of",
              "revision-of: can't be compared with yet",
              "say what changed under revisions: and leave revision-of: out"));
    }
    for (Bundle b : Bundle.values()) {
      if (job.papers().of(b).roll()) {
        said.add(
            refuse(job, "paper", "paper off a roll can't be drawn on yet", "write paper: arch-d"));
        break;
      }
    }
    return said;
  }

  private static Diagnostic refuse(Job job, String path, String message, String hint) {
    return Diagnostic.error(job.spans().of(path), message, hint);
  }
}
