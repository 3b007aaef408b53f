package headcourse.layout.yard;

import headcourse.diag.Diagnostic;
import headcourse.job.Fitted;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.HeadLayout;
import headcourse.layout.HeadLayout.Remark;
import headcourse.layout.Proof;
import headcourse.layout.Solution;
import headcourse.layout.fitted.FittedHead;
import headcourse.layout.flat.FlatReading;
import headcourse.units.LengthFormat;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/** Says what came of a choice from the pile: the head, or why there is none. */
final class PileReport {
  private final Job job;
  private final List<Opening> openings;
  private final Function<Opening, FlatReading> read;
  private final LengthFormat format;

  PileReport(Job job, List<Opening> openings, Function<Opening, FlatReading> read) {
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
        job.report().fitted().stream()
            .filter(f -> openings.stream().anyMatch(o -> o.mark().equals(f.opening())))
            .toList();
    List<Diagnostic> gaps = gaps(opening, fitted, first);
    if (!gaps.isEmpty()) {
      return new Solution.Refused(gaps, List.of());
    }
    List<String> hints = new ArrayList<>();
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
        List.of(error(opening, message, hints.toArray(String[]::new))), List.of());
  }

  private long large(Opening opening) {
    YardPieces yard = new YardPieces(job);
    Set<String> gone = new LinkedHashSet<>(job.report().spoiled());
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
}
