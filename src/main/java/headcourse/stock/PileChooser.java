package headcourse.stock;

import headcourse.diag.Diagnostic;
import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.Change;
import headcourse.layout.HeadLayout.Remark;
import headcourse.layout.HeadShape;
import headcourse.layout.Proof;
import headcourse.layout.Solution;
import headcourse.layout.flat.FlatHead;
import headcourse.layout.flat.FlatReading;
import headcourse.layout.flat.FlatShape;
import headcourse.units.LengthFormat;
import java.util.ArrayList;
import java.util.LinkedHashSet;
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
    List<FromStock.Taken> taken = new ArrayList<>();
    List<StockPlan.Moved> changes = new ArrayList<>();
    if (!open.isEmpty()) {
      List<Opening> openings = open.stream().map(job.openings()::get).toList();
      PileReplacement.Outcome out = new PileReplacement(job, openings, this::read).run();
      Optional<KeyedPile> best = out.best();
      for (int k = 0; k < open.size(); k++) {
        Opening o = openings.get(k);
        solutions[open.get(k)] = best.isEmpty() ? none(o, out.ruledOut()) : built(best.get(), k);
      }
      best.ifPresent(b -> taken.addAll(b.taken()));
      changes.addAll(out.changes());
    }
    return new FromStock(java.util.Arrays.asList(solutions), taken, changes);
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

  private Solution none(Opening opening, boolean ruledOut) {
    PileReader reader = new PileReader(job);
    Set<String> gone = new LinkedHashSet<>(job.spoiled());
    long fitting =
        reader.pieces(gone).stream()
            .filter(p -> reader.fits(p.item(), opening, false))
            .filter(p -> p.usable() >= job.grid().ceil(opening.head().stones().min()))
            .count();
    return new Solution.Refused(
        List.of(
            error(
                opening,
                (ruledOut
                        ? "no choice of the yard's pieces makes this head; "
                        : "no choice of the yard's pieces was found for this head in "
                            + job.steps()
                            + " steps; ")
                    + fitting
                    + " of them are large enough for a stone of it",
                "add pieces to the yard, widen bearing.min … bearing.max, or allow narrower stones")),
        List.of(
            new Change(
                opening.path() + ".head.stones.rhythm",
                "even",
                "sets it out by itself, and orders what the yard has not got")));
  }

  private Solution built(KeyedPile best, int k) {
    Pile.Answer a = best.answer();
    LengthFormat format = new LengthFormat(job.units(), job.grid());
    double tick = job.grid().tick().mm();
    Proof proof =
        new Proof(
            a.proved() ? Proof.Status.OPTIMAL : Proof.Status.BOUNDED,
            a.cost().sawn() * tick,
            a.bound().sawn() * tick,
            a.steps());
    String said =
        "from the yard: "
            + format.plainWithUnit(job.grid().ticks(a.cost().sawn()))
            + " sawn off in all, sides differ by "
            + format.plainWithUnit(job.grid().ticks(a.cost().imbalance()))
            + (a.proved() ? "; no choice is better" : "; better was not ruled out");
    Pile.Chosen c = a.heads().get(k);
    KeyedPile.Sides sides = best.sides().get(k);
    return new Solution.Solved(
        sides
            .head()
            .build(
                sides.left().choice(c.left()),
                sides.right().choice(c.right()),
                proof,
                List.of(new Remark("from-stock", said))));
  }
}
