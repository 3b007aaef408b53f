package headcourse.layout.curved;

import headcourse.diag.Diagnostic;
import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.Change;
import headcourse.layout.HeadLayout.Remark;
import headcourse.layout.Solution;
import headcourse.units.Grid;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
import java.util.ArrayList;
import java.util.List;

/** What the job gives for one curved head, in millimetres, and the ways to speak of it. */
final class Given {
  private final Job job;
  private final Opening opening;
  private final List<Remark> remarks = new ArrayList<>();

  Given(Job job, Opening opening) {
    this.job = job;
    this.opening = opening;
  }

  Job job() {
    return job;
  }

  Opening opening() {
    return opening;
  }

  HeadSpec head() {
    return opening.head();
  }

  /** Half the clear width at the head, as measured where it was. */
  Length half() {
    boolean built = opening.measured() != null && opening.measured().widthHead() != null;
    return (built ? opening.measured().widthHead() : opening.width()).half();
  }

  /** Half the clear width, mm. */
  double halfSpan() {
    return half().mm();
  }

  /** The lesser wall beside the opening, mm; infinite where both are ample. */
  double wall() {
    double least = Double.POSITIVE_INFINITY;
    for (Length w : new Length[] {opening.wallLeft(), opening.wallRight()}) {
      least = w == null ? least : Math.min(least, w.mm());
    }
    return least;
  }

  /** Width of a joint, mm. */
  double joint() {
    return job.setting().joint().mm();
  }

  /** One step of the grid, mm: measures that differ by no more agree. */
  double tick() {
    return job.grid().tick().mm();
  }

  /** A length of the shape's own, mm, or null where the job leaves it open. */
  Double length(String key) {
    return head().params().length(key).map(Length::mm).orElse(null);
  }

  /** A word of the shape's own. */
  String word(String key, String otherwise) {
    return head().params().word(key).orElse(otherwise);
  }

  /** Where a key of the head stands in the job. */
  String path(String key) {
    return opening.path() + ".head." + key;
  }

  /** A length as messages have it, to the nearest 1/64 in or 0.1 mm. */
  String say(double mm) {
    Grid fine =
        new Grid(
            job.units() == headcourse.units.Units.INCH ? Length.inches(1 / 64.0) : Length.mm(0.1));
    return new LengthFormat(job.units(), fine).plainWithUnit(Length.mm(mm));
  }

  /** A change to a length: rounded down to the grid. */
  Change lower(String key, double mm, String reason) {
    return to(key, job.grid().floor(Length.mm(mm + 1e-6)), reason);
  }

  /** A change to a length: rounded up to the grid. */
  Change higher(String key, double mm, String reason) {
    return to(key, job.grid().ceil(Length.mm(mm - 1e-6)), reason);
  }

  /** A change to a length: rounded to the grid. */
  Change near(String key, double mm, String reason) {
    return to(key, job.grid().nearest(Length.mm(mm)), reason);
  }

  private Change to(String key, long ticks, String reason) {
    LengthFormat plain = new LengthFormat(job.units(), job.grid());
    return new Change(path(key), plain.plain(job.grid().ticks(ticks)), reason);
  }

  /** A change to something that is no length. */
  Change change(String key, String value, String reason) {
    return new Change(path(key), value, reason);
  }

  /** Says no. */
  NoHead refuse(String key, String message, Change... changes) {
    return refuse(List.of(key), message, List.of(changes));
  }

  /** Says no, pointing at every value that has a part in it. */
  NoHead refuse(List<String> keys, String message, List<Change> changes) {
    String[] hints =
        changes.stream()
            .map(c -> "write " + c.path() + ": " + c.value() + " — " + c.reason())
            .toArray(String[]::new);
    List<Diagnostic> problems = new ArrayList<>();
    for (String key : keys) {
      boolean first = problems.isEmpty();
      problems.add(
          Diagnostic.error(
              job.spans().of(path(key)),
              opening.mark() + ": " + message,
              first ? hints : new String[0]));
    }
    return new NoHead(new Solution.Refused(problems, changes));
  }

  /**
   * Two values that should be one thing and are not.
   *
   * @param key what is changed to make them agree
   * @param others what it disagrees with
   * @param by the others in words
   * @param asked what the job says, mm
   * @param follows what the others make it, mm
   */
  NoHead contradiction(String key, List<String> others, String by, double asked, double follows) {
    NoHead no =
        refuse(
            key,
            key
                + " is "
                + say(asked)
                + ", but "
                + by
                + " makes it "
                + say(follows)
                + "; give one of them, or make them agree",
            near(key, follows, "agrees with " + by));
    List<Diagnostic> problems = new ArrayList<>(no.refused().problems());
    for (String other : others) {
      if (job.spans().given(path(other))) {
        problems.add(
            Diagnostic.note(
                job.spans().of(path(other)), opening.mark() + ": " + by + " stands here"));
      }
    }
    return new NoHead(new Solution.Refused(problems, no.refused().changes()));
  }

  /** Notes what was done on the program's own account. */
  void remark(String key, String message) {
    remarks.add(new Remark(key, message));
  }

  List<Remark> remarks() {
    return List.copyOf(remarks);
  }
}
