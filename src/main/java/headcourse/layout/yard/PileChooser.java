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
import java.util.HashMap;
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
  private final Map<Opening, Solution> solutions = new HashMap<>();
  private final List<FromStock.Taken> taken = new ArrayList<>();
  private final List<FromStock.Moved> changes = new ArrayList<>();

  private PileChooser(Job job, Function<String, Optional<HeadShape>> shapes) {
    this.job = job;
    this.shapes = shapes;
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
    List<Opening> flat = new ArrayList<>();
    Map<Opening, CurvedPile> curved = new LinkedHashMap<>();
    Set<String> held = new LinkedHashSet<>();
    for (Opening o : job.openings()) {
      if (o.head().stones().rhythm() != HeadSpec.Rhythm.FROM_STOCK) {
        continue;
      }
      if (job.stock().items().isEmpty()) {
        String message = "from-stock needs to know what lies in the yard";
        solutions.put(o, PileReport.refused(job, o, message, "write it under stock:"));
      } else if (shape(o) instanceof FlatShape) {
        refused(o).ifPresentOrElse(s -> solutions.put(o, s), () -> flat.add(o));
      } else {
        CurvedPile head = new CurvedPile(job, o, shape(o), held);
        head.taken().forEach(t -> held.add(t.piece()));
        curved.put(o, head);
      }
    }
    if (!flat.isEmpty()) {
      flat(flat, held);
    }
    curved.forEach(
        (o, head) -> {
          // Heads set before keep their pieces, whatever broke of this one's.
          Set<String> gone = new LinkedHashSet<>(held);
          taken.forEach(t -> gone.add(t.piece()));
          solutions.put(o, head.solution(gone, changes));
          taken.addAll(head.taken());
        });
    return new FromStock(job.openings().stream().map(solutions::get).toList(), taken, changes);
  }

  private HeadShape shape(Opening opening) {
    return shapes.apply(opening.head().shape()).orElseThrow();
  }

  private FlatReading read(Opening opening) {
    return ((FlatShape) shape(opening)).read(job, opening);
  }

  private void flat(List<Opening> openings, Set<String> held) {
    Replacement.Outcome out = new Replacement(job, openings, this::read, held).run();
    PileReport report = new PileReport(job, out);
    for (int k = 0; k < openings.size(); k++) {
      Opening o = openings.get(k);
      solutions.put(o, out.plan() == null ? report.none(o, k, this::read) : report.built(k));
    }
    taken.addAll(out.plan() == null ? List.of() : out.plan().taken());
    changes.addAll(out.changes());
  }

  /** Why nothing can be chosen for a flat head, whatever lies in the yard. */
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
            PileReport.refused(
                job,
                opening,
                "the bearing asked for leaves no place for an end beside the jamb",
                "lower bearing.min or clear, or see to the wall beside the opening"));
      }
    }
    return Optional.empty();
  }
}
