package headcourse.layout.yard;

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
      if (job.stock().items().isEmpty()) {
        String message = "from-stock needs to know what lies in the yard";
        solutions[i] = PileReport.refused(job, o, message, "write it under stock:");
      } else if (!(shape(o) instanceof FlatShape)) {
        CurvedPile head = new CurvedPile(job, o, shape(o));
        head.choose(held);
        head.taken().forEach(t -> held.add(t.piece()));
        curved.put(i, head);
      } else {
        solutions[i] = refused(o);
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

  private HeadShape shape(Opening opening) {
    return shapes.apply(opening.head().shape()).orElseThrow();
  }

  private FlatReading read(Opening opening) {
    return ((FlatShape) shape(opening)).read(job, opening);
  }

  private void flat(List<Integer> open) {
    List<Opening> openings = open.stream().map(job.openings()::get).toList();
    Replacement.Outcome out = new Replacement(job, openings, this::read, held).run();
    PileReport report = new PileReport(job, out);
    for (int k = 0; k < open.size(); k++) {
      solutions[open.get(k)] =
          out.plan() == null ? report.none(openings.get(k), k, this::read) : report.built(k);
    }
    if (out.plan() != null) {
      taken.addAll(out.plan().taken());
    }
    changes.addAll(out.changes());
  }

  /** Goes through what broke of a curved head's pieces; heads set before keep theirs. */
  private void afterwards(int i, CurvedPile head) {
    Set<String> gone = new LinkedHashSet<>(held);
    taken.forEach(t -> gone.add(t.piece()));
    solutions[i] = head.solution(gone, changes);
    taken.addAll(head.taken());
  }

  /** Why nothing can be chosen for a flat head, whatever lies in the yard; or null. */
  private Solution refused(Opening opening) {
    FlatReading reading = read(opening);
    if (reading.refused() != null) {
      return reading.refused();
    }
    FlatHead head = reading.head();
    for (var side : List.of(head.terms().left(), head.terms().right())) {
      var cases = head.cases(side, Double.NaN);
      if (cases.isEmpty() || cases.get(0).ends().isEmpty()) {
        return PileReport.refused(
            job,
            opening,
            "the bearing asked for leaves no place for an end beside the jamb",
            "lower bearing.min or clear, or see to the wall beside the opening");
      }
    }
    return null;
  }
}
