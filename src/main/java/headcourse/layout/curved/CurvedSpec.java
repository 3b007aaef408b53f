package headcourse.layout.curved;

import headcourse.diag.Diagnostic;
import headcourse.job.Change;
import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.job.ShapeDef.ParamDef;
import headcourse.layout.HeadLayout.Remark;
import headcourse.layout.Jambs;
import headcourse.layout.Solution;
import headcourse.units.Grid;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
import headcourse.units.Limit;
import headcourse.units.Units;
import java.util.ArrayList;
import java.util.List;

/** What the job gives for one curved head, in millimetres, and the ways to speak of it. */
final class CurvedSpec {
  /** No measure of a head is longer, mm. */
  private static final double FARTHEST = 100_000;

  /**
   * Of the span: as sharp at the springing as the flattest ellipse that is set out, whose rise is a
   * tenth of its half span. Common practice, no source.
   */
  private static final double LEAST_HAUNCH = 1 / 200.0;

  private final Job job;
  private final Opening opening;
  private final List<Remark> remarks = new ArrayList<>();
  private long effort = 1;

  CurvedSpec(Job job, Opening opening) {
    this.job = job;
    this.opening = opening;
  }

  /** Counts steps of work. */
  void took(long steps) {
    effort += steps;
  }

  long effort() {
    return effort;
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
    return Jambs.of(opening).width().half();
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

  /** Refuses a length that nobody could set out. */
  void checkLengths(List<ParamDef> params) throws NoHead {
    for (ParamDef p : params) {
      Double mm = length(p.name());
      boolean none = mm == null || mm == 0;
      if (!none && (mm < tick() / 2 || mm > FARTHEST)) {
        throw refuse(
            p.name(),
            p.name() + " is " + say(mm) + ", which can't be set out: too small, or too large");
      }
    }
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
    if (!(Math.abs(mm) < 10 * FARTHEST)) {
      return mm < 0 ? "less than nothing" : "more than a kilometre";
    }
    return fine().plainWithUnit(Length.mm(mm));
  }

  /** A limit that must not be passed, or the worst that there is, rounded to the safe side. */
  String say(Limit limit, double mm) {
    return limit.plainWithUnit(fine(), Length.mm(mm));
  }

  private LengthFormat fine() {
    boolean inch = job.units() == Units.INCH;
    return new LengthFormat(job.units(), new Grid(inch ? Length.inches(1 / 64.0) : Length.mm(0.1)));
  }

  /** The least radius of a haunch: of a smaller one nothing is left but a corner, mm. */
  double leastHaunch() {
    return 2 * halfSpan() * LEAST_HAUNCH;
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
    List<Diagnostic> problems = new ArrayList<>();
    problems.add(
        Diagnostic.error(job.spans().of(path(keys.get(0))), opening.mark() + ": " + message));
    for (String other : keys.subList(1, keys.size())) {
      if (job.spans().given(path(other))) {
        problems.add(
            Diagnostic.note(
                job.spans().of(path(other)), opening.mark() + ": " + other + " has a part in it"));
      }
    }
    return new NoHead(
        new Solution.Refused(problems, changes.stream().map(List::of).toList(), effort));
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
    List<String> keys = new ArrayList<>(List.of(key));
    keys.addAll(others);
    String message =
        key
            + " is "
            + say(asked)
            + ", but "
            + by
            + " makes it "
            + say(follows)
            + "; give one of them, or make them agree";
    return refuse(keys, message, List.of(near(key, follows, "agrees with " + by)));
  }

  /** Notes what was done on the program's own account. */
  void remark(String key, String message) {
    remark(key, message, List.of());
  }

  /** The same with the values that the message says. */
  void remark(String key, String message, List<String> values) {
    remarks.add(new Remark(key, message, values));
  }

  List<Remark> remarks() {
    return List.copyOf(remarks);
  }
}
