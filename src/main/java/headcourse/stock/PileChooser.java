package headcourse.stock;

import headcourse.diag.Diagnostic;
import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.HeadShape;
import headcourse.layout.Solution;
import headcourse.layout.flat.FlatHead;
import headcourse.layout.flat.FlatReading;
import headcourse.layout.flat.FlatShape;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** Sets out all heads of a job whose rhythm is {@code from-stock}, from one pile. */
public final class PileChooser {
  private final Job job;
  private final Function<String, Optional<HeadShape>> shapes;

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
    Solution[] solutions = new Solution[job.openings().size()];
    List<Integer> open = new ArrayList<>();
    for (int i = 0; i < solutions.length; i++) {
      if (job.openings().get(i).head().stones().rhythm() == HeadSpec.Rhythm.FROM_STOCK) {
        Optional<Solution> refused = refused(job.openings().get(i));
        if (refused.isPresent()) {
          solutions[i] = refused.get();
        } else {
          open.add(i);
        }
      }
    }
    if (open.isEmpty()) {
      return new FromStock(java.util.Arrays.asList(solutions), List.of(), List.of());
    }
    List<Opening> openings = open.stream().map(job.openings()::get).toList();
    KeySearch search = new KeySearch(job, openings, this::read);
    PilePlan first = search.best(Set.of()).map(PilePlan::of).orElse(null);
    PileReplacement.Outcome out =
        new PileReplacement(job, openings, this::read, job.fitted(), job.steps()).run(first);
    PileTelling telling = new PileTelling(job, openings, this::read);
    boolean ruledOut = first == null ? search.ruledOut() : out.ruledOut();
    for (int k = 0; k < open.size(); k++) {
      solutions[open.get(k)] =
          out.plan() == null
              ? telling.none(
                  openings.get(k), first, ruledOut, first == null ? search.steps() : job.steps())
              : telling.built(first, out, k);
    }
    List<FromStock.Taken> taken = out.plan() == null ? List.of() : out.plan().taken();
    return new FromStock(java.util.Arrays.asList(solutions), taken, out.changes());
  }

  private FlatReading read(Opening opening) {
    return ((FlatShape) shapes.apply(opening.head().shape()).orElseThrow()).read(job, opening);
  }

  private Diagnostic error(Opening opening, String message, String... hints) {
    return Diagnostic.error(job.spans().of(opening.path() + ".head.stones.rhythm"), message, hints);
  }

  private Optional<Solution> refused(Opening opening) {
    if (job.stock().items().isEmpty()) {
      return refused(
          error(
              opening, "from-stock needs to know what lies in the yard", "write it under stock:"));
    }
    HeadShape shape = shapes.apply(opening.head().shape()).orElseThrow();
    if (!(shape instanceof FlatShape)) {
      return curved(opening);
    }
    FlatReading reading = read(opening);
    if (reading.refused() != null) {
      return Optional.of(reading.refused());
    }
    FlatHead head = reading.head();
    for (var side : List.of(head.terms().left(), head.terms().right())) {
      var cases = head.cases(side, Double.NaN);
      if (cases.isEmpty() || cases.get(0).ends().isEmpty()) {
        return refused(
            error(
                opening,
                "the bearing asked for leaves no place for an end beside the jamb",
                "lower bearing.min or clear, or see to the wall beside the opening"));
      }
    }
    return Optional.empty();
  }

  private Optional<Solution> curved(Opening opening) {
    return refused(
        error(
            opening,
            "from-stock is for flat heads, soldier and jack; the stones of a "
                + opening.head().shape()
                + " head are cut to the curve and all alike",
            "write rhythm: even or graded, and the cutting plan takes what fits from the yard"));
  }

  private static Optional<Solution> refused(Diagnostic d) {
    return Optional.of(new Solution.Refused(List.of(d), List.of()));
  }
}
