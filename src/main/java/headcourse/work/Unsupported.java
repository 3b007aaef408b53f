package headcourse.work;

import headcourse.diag.Diagnostic;
import headcourse.job.Bundle;
import headcourse.job.HeadSpec;
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
      boolean fitted = job.fitted().stream().anyMatch(f -> f.opening().equals(o.mark()));
      if (fitted && o.head().stones().rhythm() == HeadSpec.Rhythm.FROM_STOCK) {
        said.add(
            refuse(
                job,
                "fitted." + o.mark(),
                "stones that are cut can't be solved around with the rhythm from-stock",
                "write rhythm: mixed for " + o.mark() + ", with the widths of the pieces left"));
      }
    }
    if (!job.spoiled().isEmpty()) {
      said.add(
          refuse(
              job,
              "spoiled",
              "spoiled: can't be solved around yet",
              "lower the count of that stock by one and leave spoiled: out"));
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
