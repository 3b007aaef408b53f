package headcourse.layout.yard;

import headcourse.diag.Diagnostic;
import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.HeadShape;
import headcourse.layout.Solution;
import headcourse.layout.flat.FlatReading;
import headcourse.layout.flat.FlatShape;
import headcourse.layout.side.FlatHead;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** Sets out all heads of a job whose rhythm is {@code from-stock}, from one pile. */
public final class PileChooser {
  private final Job job;
  private final Function<String, Optional<HeadShape>> shapes;
  private final Solution[] solutions;
  private final List<FromStock.Taken> taken = new ArrayList<>();
  private final List<FromStock.Moved> changes = new ArrayList<>();
  private final Map<Integer, CurvedPile> curved = new LinkedHashMap<>();
  private final Set<String> held = new LinkedHashSet<>();

  private PileChooser(Job job, Function<String, Optional<HeadShape>> shapes) {
    this.job = job;
    this.shapes = shapes;
    this.solutions = new Solution[job.openings().size()];
  }

  /**
   * Sets them out together, or says why it can't be done.
   *
   * @param job the job
   * @param shapes the head shape with a name
   */
  public static FromStock setOut(Job job, Function<String, Optional<HeadShape>> shapes) {
    return new PileChooser(job, shapes).run();
  }

  private FromStock run() {
    List<Integer> open = new ArrayList<>();
    for (int i = 0; i < solutions.length; i++) {
      Opening o = job.openings().get(i);
      if (o.head().stones().rhythm() != HeadSpec.Rhythm.FROM_STOCK) {
        continue;
      }
      HeadShape shape = shapes.apply(o.head().shape()).orElseThrow();
      if (job.stock().items().isEmpty()) {
        solutions[i] =
            refused(
                error(
                    o, "from-stock needs to know what lies in the yard", "write it under stock:"));
      } else if (!(shape instanceof FlatShape)) {
        curved(i, new CurvedPile(job, o, shape));
      } else {
        solutions[i] = refused(o).orElse(null);
        if (solutions[i] == null) {
          open.add(i);
        }
      }
    }
    if (!open.isEmpty()) {
      flat(open);
    }
    curved.forEach(this::afterwards);
    return new FromStock(Arrays.asList(solutions), taken, changes);
  }

  private void flat(List<Integer> open) {
    List<Opening> openings = open.stream().map(job.openings()::get).toList();
    Replacement.Outcome start = replacement(openings).first();
    PilePlan first = start.plan();
    Replacement.Outcome out = replacement(openings).run(first);
    PileReport report = new PileReport(job, openings, this::read);
    for (int k = 0; k < open.size(); k++) {
      solutions[open.get(k)] =
          out.plan() == null
              ? report.none(openings.get(k), first, out.told(start))
              : report.built(first, out, k);
    }
    if (out.plan() != null) {
      taken.addAll(out.plan().taken());
    }
    changes.addAll(out.changes());
  }

  private void curved(int i, CurvedPile head) {
    head.choose(held);
    if (head.found()) {
      head.taken().forEach(t -> held.add(t.piece()));
      curved.put(i, head);
    } else {
      solutions[i] = noneCurved(job.openings().get(i), head);
    }
  }

  private Solution noneCurved(Opening o, CurvedPile head) {
    return head.refused() != null
        ? head.refused()
        : refused(
            error(
                o,
                "no number of stones that the widths allow can be had from the yard's pieces",
                "add pieces to the yard, or allow narrower stones",
                "write rhythm: even or graded, and the cutting plan takes what fits"));
  }

  /** Goes through what broke of a curved head's pieces; heads set before keep theirs. */
  private void afterwards(int i, CurvedPile head) {
    Set<String> gone = new LinkedHashSet<>(held);
    taken.forEach(t -> gone.add(t.piece()));
    boolean found = true;
    for (String piece : job.report().spoiled()) {
      gone.add(piece);
      found &= head.replace(piece, gone, changes);
    }
    taken.addAll(found ? head.taken() : List.of());
    solutions[i] = found ? head.built() : noneCurved(job.openings().get(i), head);
  }

  private Replacement replacement(List<Opening> openings) {
    return new Replacement(job, openings, this::read, job.report().fitted(), held, job.steps());
  }

  private FlatReading read(Opening opening) {
    return ((FlatShape) shapes.apply(opening.head().shape()).orElseThrow()).read(job, opening);
  }

  private Diagnostic error(Opening opening, String message, String... hints) {
    return Diagnostic.error(job.spans().of(opening.path() + ".head.stones.rhythm"), message, hints);
  }

  private Optional<Solution> refused(Opening opening) {
    FlatReading reading = read(opening);
    if (reading.refused() != null) {
      return Optional.of(reading.refused());
    }
    FlatHead head = reading.head();
    for (var side : List.of(head.terms().left(), head.terms().right())) {
      var cases = head.cases(side, Double.NaN);
      if (cases.isEmpty() || cases.get(0).ends().isEmpty()) {
        return Optional.of(
            refused(
                error(
                    opening,
                    "the bearing asked for leaves no place for an end beside the jamb",
                    "lower bearing.min or clear, or see to the wall beside the opening")));
      }
    }
    return Optional.empty();
  }

  private static Solution refused(Diagnostic d) {
    return new Solution.Refused(List.of(d), List.of());
  }
}
