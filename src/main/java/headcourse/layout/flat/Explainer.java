package headcourse.layout.flat;

import headcourse.diag.Diagnostic;
import headcourse.diag.Severity;
import headcourse.job.HeadSpec;
import headcourse.job.HeadSpec.Rhythm;
import headcourse.layout.Change;
import headcourse.layout.HeadLayout;
import headcourse.layout.Solution;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Says why a flat head can't be set out. Every value that could give way is turned alone until the
 * head can be; what then comes out says what collides and by how much, so nothing is claimed that
 * was not tried.
 */
final class Explainer {
  /** How many changes are offered. */
  private static final int OFFERED = 3;

  /** What trying may take before it is cut short, about a second; counted, so always the same. */
  private static final long PATIENCE = 60_000_000;

  /** What each trial takes besides, and what it takes for each step of the grid. */
  private static final long TRIAL = 20_000;

  private static final long SETTING_OUT = 30;

  /** What trying pairs may take. */
  private static final long PAIRS = 2 * PATIENCE;

  private final FlatShape shape;
  private final FlatTerms terms;
  private final LengthFormat format;
  private final List<Diagnostic> problems = new ArrayList<>();
  private long effort;
  private long patience = PATIENCE;

  Explainer(FlatShape shape, FlatTerms terms) {
    this.shape = shape;
    this.terms = terms;
    this.format = new LengthFormat(terms.job().units(), terms.job().grid());
  }

  Solution.Refused explain() {
    plainCollisions();
    List<Knob.Turned> found = new ArrayList<>();
    for (Knob knob : Knobs.of(terms, format)) {
      Knob.Turned turned = knob.turned(this::tried);
      if (turned != null) {
        found.add(turned);
      }
    }
    found.sort(Comparator.comparingDouble(Knob.Turned::size));
    recutFirst(found);
    List<Change> changes = new ArrayList<>();
    List<String> hints = new ArrayList<>();
    for (Knob.Turned t : found) {
      String tells = t.knob().tells().apply(t.head());
      if (!tells.isEmpty()) {
        note(t.knob().path(), tells);
      }
      if (changes.size() < OFFERED) {
        Change c = change(t);
        changes.add(c);
        hints.add(words(c.path()) + ": " + c.value() + " (" + c.reason() + ")");
      }
    }
    List<List<Change>> together = new ArrayList<>();
    if (hints.isEmpty()) {
      hints.add("no single value makes it possible by itself; more than one has to give way");
      patience = effort + PAIRS;
      for (KnobPairs.Pair p : pairs()) {
        List<Change> both = List.of(change(p.first()), change(p.second()));
        together.add(both);
        hints.add(
            "together: "
                + String.join(
                    ", and ", both.stream().map(c -> words(c.path()) + ": " + c.value()).toList()));
      }
    }
    if (effort > patience) {
      hints.add("trying values was cut short, because so many widths are allowed");
    }
    problems.add(
        0,
        new Diagnostic(
            Severity.ERROR,
            terms.job().spans().of(terms.opening().path() + ".head"),
            headline(),
            hints));
    return new Solution.Refused(problems, changes, together);
  }

  private static Change change(Knob.Turned t) {
    return new Change(t.knob().path(), t.knob().text().apply(t.value()), t.knob().reason());
  }

  private List<KnobPairs.Pair> pairs() {
    List<KnobPairs.Pair> all =
        new KnobPairs(shape, format, this::tried, () -> effort > patience).of(terms);
    return all.subList(0, Math.min(OFFERED - 1, all.size()));
  }

  /** A stone that is cut already is named before all else. */
  private static void recutFirst(List<Knob.Turned> found) {
    found.stream()
        .filter(t -> FittedKnobs.is(t.knob()))
        .findFirst()
        .ifPresent(
            t -> {
              found.remove(t);
              found.add(0, t);
            });
  }

  private HeadLayout tried(Knob.Asked asked) {
    FlatReading reading = shape.read(asked.job(), asked.opening());
    if (reading.head() == null || effort > patience) {
      return null;
    }
    HeadSolver solver = new HeadSolver(reading.head());
    HeadLayout head = solver.solve();
    effort += solver.effort() + TRIAL + SETTING_OUT * (terms.half() / terms.tick());
    return head;
  }

  /** The path without the opening, which the message names. */
  private String words(String path) {
    String head = terms.opening().path() + ".";
    return path.startsWith(head) ? path.substring(head.length()) : path;
  }

  private String headline() {
    HeadSpec.Stones s = terms.stones();
    HeadSpec.Bearing b = terms.bearing();
    String each = s.eachSide() == null ? "" : s.eachSide() + " ";
    String widths =
        s.min().equals(s.max())
            ? size(s.min()) + " wide"
            : "from " + size(s.min()) + " to " + size(s.max()) + " wide";
    return terms.opening().mark()
        + ": no "
        + each
        + (s.rhythm() == Rhythm.EVEN ? "equal" : s.rhythm().word())
        + " stones "
        + widths
        + (s.eachSide() == null ? "" : " a side")
        + " end between "
        + size(b.min())
        + " and "
        + size(b.max())
        + " past the jambs with every joint at least "
        + size(terms.head().clear())
        + " from a jamb line";
  }

  /** What collides whatever the stones. */
  private void plainCollisions() {
    HeadSpec head = terms.head();
    if (terms.min() > terms.max()) {
      note(
          terms.opening().path() + ".head.stones.max",
          "no width on the grid lies between "
              + size(head.stones().min())
              + " and "
              + size(head.stones().max()));
    }
    wall(terms.left(), "left");
    wall(terms.right(), "right");
    FlatTerms.SideTerms ample = new FlatTerms.SideTerms(Long.MAX_VALUE, 0, terms.half());
    EndRange range = EndRange.of(terms, ample);
    if (range.first() > range.last()) {
      note(
          terms.opening().path() + ".head.bearing",
          "no end on the grid bears between "
              + size(head.bearing().min())
              + " and "
              + size(head.bearing().max()));
    }
    Length twice = head.clear().times(2);
    boolean springs = shape instanceof JackShape && !head.bearing().min().isPositive();
    if (!springs && head.stones().max().compareTo(twice) < 0) {
      note(
          terms.opening().path() + ".head.clear",
          "the stone over a jamb must pass it by "
              + size(head.clear())
              + " both ways, "
              + size(twice)
              + " in all: "
              + size(twice.minus(head.stones().max()))
              + " more than the widest allowed, "
              + size(head.stones().max()));
    }
  }

  private void wall(FlatTerms.SideTerms side, String name) {
    Length least = terms.bearing().min();
    if (side.wall() < least.picometres()) {
      Length wall = new Length(side.wall());
      note(
          terms.opening().path() + ".wall-" + name,
          "the wall on the "
              + name
              + " gives "
              + size(wall)
              + ": "
              + size(least.minus(wall))
              + " less than the least bearing, "
              + size(least));
    }
  }

  private void note(String path, String message) {
    problems.add(
        Diagnostic.note(terms.job().spans().of(path), terms.opening().mark() + ": " + message));
  }

  private String size(Length length) {
    return format.plainWithUnit(length);
  }
}
