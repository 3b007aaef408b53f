package headcourse.stock;

import headcourse.diag.Diagnostic;
import headcourse.job.Fitted;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.HeadLayout;
import headcourse.layout.HeadLayout.Remark;
import headcourse.layout.Proof;
import headcourse.layout.Solution;
import headcourse.layout.flat.FittedHead;
import headcourse.layout.flat.FlatReading;
import headcourse.units.LengthFormat;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/** Says what came of a choice from the pile: the head, or why there is none. */
final class PileTelling {
  private final Job job;
  private final List<Opening> openings;
  private final Function<Opening, FlatReading> read;
  private final LengthFormat format;

  PileTelling(Job job, List<Opening> openings, Function<Opening, FlatReading> read) {
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
  Solution built(PilePlan first, PileReplacement.Outcome out, int k) {
    PilePlan plan = out.plan();
    double tick = job.grid().tick().mm();
    Proof proof =
        new Proof(
            plan.proved() ? Proof.Status.OPTIMAL : Proof.Status.BOUNDED,
            plan.cost().sawn() * tick,
            plan.bound().sawn() * tick,
            plan.steps());
    List<Remark> remarks = List.of(new Remark("from-stock", said(out)));
    HeadLayout before = first == null || first == plan ? null : first.heads().get(k).layout();
    return new Solution.Solved(plan.heads().get(k).layout(proof, remarks, before));
  }

  private String said(PileReplacement.Outcome out) {
    PilePlan plan = out.plan();
    String cost =
        format.plainWithUnit(job.grid().ticks(plan.cost().sawn()))
            + " sawn off in all, sides differ by "
            + format.plainWithUnit(job.grid().ticks(plan.cost().imbalance()));
    if (out.changed() == 0) {
      return "from the yard: "
          + cost
          + (plan.proved() ? "; no choice is better" : "; better was not ruled out");
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
        + (plan.proved() ? "; no choice with as few is better" : "; better was not ruled out");
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
   * @param ruledOut whether there is none, rather than none found
   * @param steps how many steps were taken
   */
  Solution none(Opening opening, PilePlan first, boolean ruledOut, long steps) {
    List<Fitted> fitted =
        job.fitted().stream()
            .filter(f -> openings.stream().anyMatch(o -> o.mark().equals(f.opening())))
            .toList();
    List<Diagnostic> gaps = gaps(opening, fitted, first);
    if (!gaps.isEmpty()) {
      return new Solution.Refused(gaps, List.of());
    }
    String hint =
        "add pieces to the yard, widen bearing.min … bearing.max, or allow narrower stones";
    String around = fitted.isEmpty() ? "" : " around the stones that are cut";
    String message =
        (ruledOut
                ? "no choice of the yard's pieces makes this head" + around + "; "
                : "no choice of the yard's pieces was found for this head"
                    + around
                    + " in "
                    + steps
                    + " steps; ")
            + large(opening)
            + " of them are large enough for a stone of it";
    return new Solution.Refused(List.of(error(opening, message, hint)), List.of());
  }

  private long large(Opening opening) {
    PileReader reader = new PileReader(job);
    Set<String> gone = new LinkedHashSet<>(job.spoiled());
    return reader.pieces(gone).stream()
        .filter(p -> reader.fits(p.item(), opening, false))
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
