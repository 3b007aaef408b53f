package headcourse.work;

import headcourse.diag.Diagnostic;
import headcourse.job.Job;
import java.util.ArrayList;
import java.util.List;

/** What a job may say that can't be done yet; each is refused where it stands. */
final class Unsupported {
  private Unsupported() {}

  static List<Diagnostic> in(Job job) {
    List<Diagnostic> said = new ArrayList<>();
    return said;
  }
}
