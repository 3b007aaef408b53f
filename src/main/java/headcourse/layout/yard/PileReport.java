package headcourse.layout.yard;

import headcourse.diag.Diagnostic;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.HeadLayout;
import headcourse.layout.HeadLayout.Remark;
import headcourse.layout.Proof;
import headcourse.layout.Solution;
import headcourse.layout.flat.FlatReading;
import headcourse.layout.side.FlatHead;
import headcourse.units.LengthFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/**
 * Says what came of a choice from the pile: the head, or why there is none.
 *
 * @param job the job
 * @param out what it came to
 */
record PileReport(Job job, Replacement.Outcome out) {
  /** Why there is no head over an opening, said where its rhythm stands. */
  static Solution refused(Job job, Opening opening, String message, String... hints) {
    var span = job.spans().of(opening.path() + ".head.stones.rhythm");
    return new Solution.Refused(List.of(Diagnostic.error(span, message, hints)), List.of());
  }

  /** One head of the choice, by its number. */
  Solution built(int k) {
    PilePlan plan = out.plan();
    double tick = job.grid().tick().mm();
    long sawn = plan.cost().sawn();
    Proof proof =
        new Proof(
            plan.proved() ? Proof.Status.OPTIMAL : Proof.Status.BOUNDED,
            sawn * tick,
            (plan.proved() ? sawn : plan.least()) * tick,
            plan.steps());
    List<Remark> remarks = List.of(new Remark("from-stock", said()));
    PilePlan first = out.first();
    HeadLayout before = first == null || first == plan ? null : first.heads().get(k).layout();
    PilePlan.Head h = plan.heads().get(k);
    return new Solution.Solved(h.made().build(h.left(), h.right(), proof, remarks, before));
  }

  private String said() {
    PilePlan plan = out.plan();
    int n = out.changed();
    String fewest =
        n == out.least()
            ? ", fewer were not possible"
            : out.least() > 0 ? ", fewer than " + out.least() + " were not possible" : "";
    String changed = (n == 1 ? "1 stone" : n + " stones") + " otherwise than ticketed first";
    String best = n == 0 ? "; no choice is better" : "; no choice with as few is better";
    String least = "; at least " + length(job, plan.least()) + " is sawn off in any case";
    String open = (plan.least() > 0 ? least : "") + "; better was not ruled out";
    return "from the yard: "
        + (n == 0 ? "" : changed + fewest + "; ")
        + length(job, plan.cost().sawn())
        + " sawn off in all, sides differ by "
        + length(job, plan.cost().imbalance())
        + (plan.proved() ? best : open);
  }

  static String length(Job job, long ticks) {
    return new LengthFormat(job.units(), job.grid()).plainWithUnit(job.grid().ticks(ticks));
  }

  /**
   * Why a head is none.
   *
   * @param k its number
   */
  Solution none(Opening opening, int k, Function<Opening, FlatReading> read) {
    PilePlan.Head before = out.first() == null ? null : out.first().heads().get(k);
    FlatHead head = before == null ? read.apply(opening).head() : before.made().head();
    List<Diagnostic> gaps = PilePlan.Head.around(head, out.fitted(), before).problems();
    if (!gaps.isEmpty()) {
      return new Solution.Refused(gaps, List.of());
    }
    List<String> hints = new ArrayList<>();
    if (!out.ruledOut()) {
      hints.add("with steps: more can be looked at, as in steps: " + 10 * job.steps());
    }
    hints.add("add pieces to the yard, widen bearing.min … bearing.max, or allow narrower stones");
    String around = out.fitted().isEmpty() ? "" : " around the stones that are cut";
    long least = job.grid().ceil(opening.head().stones().min());
    Set<String> spoiled = Set.copyOf(job.report().spoiled());
    String none =
        out.ruledOut()
            ? " makes this head" + around
            : " was found for this head" + around + " in " + out.steps() + " steps";
    String message =
        "no choice of the yard's pieces"
            + none
            + "; "
            + new YardPieces(job).holding(opening, false, least, spoiled).size()
            + " of them are large enough for a stone of it";
    return refused(job, opening, message, hints.toArray(String[]::new));
  }
}
