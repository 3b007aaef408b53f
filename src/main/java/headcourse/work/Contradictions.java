package headcourse.work;

import headcourse.diag.Diagnostic;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.Jambs;
import headcourse.layout.shapes.Shapes;
import java.util.ArrayList;
import java.util.List;

/** What a job file may say that does not go together; each is refused where it stands. */
final class Contradictions {
  private Contradictions() {}

  static List<Diagnostic> in(Job job) {
    List<Diagnostic> said = new ArrayList<>(new Piers(job).contradictions());
    for (Opening o : job.openings()) {
      boolean flat = Shapes.named(o.head().shape()).orElseThrow().flat();
      if (!flat && !Jambs.of(o).even()) {
        said.add(
            refuse(
                job,
                o.path() + ".measured",
                "a curved head is struck from the middle between the jambs at its springing, but"
                    + " here the centre mark, plumbed up, is off it",
                "mark the middle at the springing, and leave centre-off and plumb out"));
      }
      if (!flat && o.measured() != null && !o.measured().soffit().isEmpty()) {
        said.add(
            refuse(
                job,
                o.path() + ".measured.soffit",
                "levels are taken of a level rough head; this one is curved",
                "leave soffit out of measured, and check the centring against the full-size"
                    + " template"));
      }
      boolean fitted = job.report().fitted().stream().anyMatch(f -> f.opening().equals(o.mark()));
      if (fitted && o.count() > 1) {
        said.add(
            refuse(
                job,
                "fitted." + o.mark(),
                "stones are fitted in " + o.mark() + ", of which there are " + o.count(),
                "give the one they stand in its own mark and count: 1"));
      }
    }
    return said;
  }

  private static Diagnostic refuse(Job job, String path, String message, String hint) {
    return Diagnostic.error(job.spans().of(path), message, hint);
  }
}
