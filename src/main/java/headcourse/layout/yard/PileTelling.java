package headcourse.layout.yard;

import headcourse.diag.Diagnostic;
import headcourse.job.Fitted;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.Change;
import headcourse.layout.HeadLayout;
import headcourse.layout.HeadLayout.Remark;
import headcourse.layout.HeadShape;
import headcourse.layout.Proof;
import headcourse.layout.Solution;
import headcourse.layout.flat.FittedHead;
import headcourse.layout.flat.FlatReading;
import headcourse.layout.flat.Recut;
import headcourse.units.LengthFormat;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** Says what came of a choice from the pile: the head, or why there is none. */
final class PileTelling {
  /** What trying to recut one stone may take, in steps. */
  private static final long TRY = 20_000;

  /** How often other values are tried, for all openings. */
  private static final int TRIES = 36;

  private final Job job;
  private final List<Opening> openings;
  private final Function<Opening, FlatReading> read;
  private final LengthFormat format;
  private final Set<String> held;
  private final Function<String, Optional<HeadShape>> shapes;

  PileTelling(
      Job job,
      List<Opening> openings,
      Function<Opening, FlatReading> read,
      Function<String, Optional<HeadShape>> shapes,
      Set<String> held) {
    this.held = held;
    this.shapes = shapes;
    this.job = job;
    this.openings = openings;
    this.read = read;
    this.format = new LengthFormat(job.units(), job.grid());
  }

  /**
   * One head of a choice.
   *
   * @param first the choice as it was first ticketed, or null
   * @param k number of the head
   */
  Solution built(PilePlan first, Replacement.Outcome out, int k) {
    PilePlan plan = out.plan();
    double tick = job.grid().tick().mm();
    long bound = plan.proved() ? plan.cost().sawn() : plan.least();
    Proof proof =
        new Proof(
            plan.proved() ? Proof.Status.OPTIMAL : Proof.Status.BOUNDED,
            plan.cost().sawn() * tick,
            bound * tick,
            plan.steps());
    List<Remark> remarks = List.of(new Remark("from-stock", said(out)));
    HeadLayout before = first == null || first == plan ? null : first.heads().get(k).layout();
    return new Solution.Solved(plan.heads().get(k).layout(proof, remarks, before));
  }

  private String said(Replacement.Outcome out) {
    PilePlan plan = out.plan();
    String cost =
        format.plainWithUnit(job.grid().ticks(plan.cost().sawn()))
            + " sawn off in all, sides differ by "
            + format.plainWithUnit(job.grid().ticks(plan.cost().imbalance()));
    if (out.changed() == 0) {
      return "from the yard: " + cost + (plan.proved() ? "; no choice is better" : open(plan));
    }
    String fewest = "";
    if (out.changed() == out.least()) {
      fewest = ", fewer were not possible";
    } else if (out.least() > 0) {
      fewest = ", fewer than " + out.least() + " were not possible";
    }
    return "from the yard: "
        + stones(out.changed())
        + " otherwise than ticketed first"
        + fewest
        + "; "
        + cost
        + (plan.proved() ? "; no choice with as few is better" : open(plan));
  }

  /** What is known where the choice is not proved best. */
  private String open(PilePlan plan) {
    return plan.least() > 0
        ? "; at least "
            + format.plainWithUnit(job.grid().ticks(plan.least()))
            + " is sawn off in any case; better was not ruled out"
        : "; better was not ruled out";
  }

  private static String stones(int n) {
    return n == 1 ? "1 stone" : n + " stones";
  }

  private Diagnostic error(Opening opening, String message, String... hints) {
    return Diagnostic.error(job.spans().of(opening.path() + ".head.stones.rhythm"), message, hints);
  }

  /**
   * Why there is no head.
   *
   * @param first the choice without spoiled pieces and without stones that are cut, or null
   * @param told what the last search came to
   */
  Solution none(Opening opening, PilePlan first, Replacement.Outcome told) {
    List<Fitted> fitted =
        job.fitted().stream()
            .filter(f -> openings.stream().anyMatch(o -> o.mark().equals(f.opening())))
            .toList();
    List<Diagnostic> gaps = gaps(opening, fitted, first);
    if (!gaps.isEmpty()) {
      return new Solution.Refused(gaps, List.of());
    }
    List<Change> changes = new ArrayList<>();
    for (Fitted f : fitted) {
      if (f.opening().equals(opening.mark()) && changes.size() < 2) {
        recut(f, fitted, first, changes);
      }
    }
    // In a fan what was not measured hangs on a drawing that a short trial need not come to.
    boolean fans = first != null && first.heads().stream().anyMatch(h -> h.made().head().fanned());
    if (changes.isEmpty() && (fitted.isEmpty() || !fans)) {
      int tries = TRIES / openings.size();
      changes.addAll(new PileTries(shapes, openings, held, tries).of(job, opening));
    }
    List<String> hints = new ArrayList<>();
    changes.forEach(c -> hints.add(c.path() + ": " + c.value() + " (" + c.reason() + ")"));
    if (!told.ruledOut()) {
      hints.add("with steps: more can be looked at, as in steps: " + 10 * job.steps());
    }
    hints.add("add pieces to the yard, widen bearing.min … bearing.max, or allow narrower stones");
    String around = fitted.isEmpty() ? "" : " around the stones that are cut";
    String message =
        (told.ruledOut()
                ? "no choice of the yard's pieces makes this head" + around + "; "
                : "no choice of the yard's pieces was found for this head"
                    + around
                    + " in "
                    + told.steps()
                    + " steps; ")
            + large(opening)
            + " of them are large enough for a stone of it";
    return new Solution.Refused(
        List.of(error(opening, message, hints.toArray(String[]::new))), changes);
  }

  private long large(Opening opening) {
    YardPieces yard = new YardPieces(job);
    Set<String> gone = new LinkedHashSet<>(job.spoiled());
    return yard.but(gone).stream()
        .filter(p -> yard.fits(p.item(), opening, false))
        .filter(p -> p.usable() >= job.grid().ceil(opening.head().stones().min()))
        .count();
  }

  private List<Diagnostic> gaps(Opening opening, List<Fitted> fitted, PilePlan first) {
    if (first == null) {
      FlatReading reading = read.apply(opening);
      return FittedHead.of(reading.head(), fitted, null, null, null).problems();
    }
    for (PilePlan.Head h : first.heads()) {
      if (h.mark().equals(opening.mark())) {
        return FittedHead.of(h.made().head(), fitted, h.layout(), h.left(), h.right()).problems();
      }
    }
    return List.of();
  }

  private boolean works(List<Fitted> then, long steps, PilePlan first) {
    return new Replacement(job, openings, read, then, held, steps).run(first).plan() != null;
  }

  /** Adds the least change of a stone's width with which there is a choice. */
  private void recut(Fitted f, List<Fitted> all, PilePlan first, List<Change> changes) {
    Recut recut = new Recut(job, f);
    for (Fitted other : recut.others()) {
      List<Fitted> then = new ArrayList<>(all);
      then.replaceAll(x -> x == f ? other : x);
      if (works(then, Math.min(TRY, job.steps()), first) && works(then, job.steps(), first)) {
        changes.add(
            new Change(f.path(), recut.text(other), "recut " + f.stone() + ", or cut another"));
        return;
      }
    }
  }
}
