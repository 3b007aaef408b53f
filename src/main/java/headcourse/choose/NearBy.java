package headcourse.choose;

import headcourse.diag.Diagnostic;
import headcourse.diag.Outcome;
import headcourse.diag.Severity;
import headcourse.job.Change;
import headcourse.job.Job;
import headcourse.layout.HeadLayout;
import headcourse.layout.Side;
import headcourse.work.ShopWork;
import headcourse.work.WorkUp;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A head with a given number of stones a side, beside the one that is drawn.
 *
 * @param eachSide how many stones to each side
 * @param drawn whether it is the number that is drawn
 * @param worked the opening alone, worked out; empty where it can't be set out so
 * @param refusal why not, in a sentence; empty where it can
 * @param blanks how many blanks it takes, by the cutting plan for this head alone; 0 where refused
 */
public record NearBy(
    int eachSide, boolean drawn, Optional<ShopWork> worked, String refusal, int blanks) {
  /** So many fewer and more are looked at. */
  private static final int WITHIN = 2;

  /** How a note ends that names a key and says no more. */
  private static final String PART = "has a part in it";

  /**
   * The heads near the one that is drawn, fewest stones first.
   *
   * @param job the job as it was read from its file
   * @param opening number of the opening
   * @param head the head that is drawn there
   */
  public static List<NearBy> of(Job job, int opening, HeadLayout head) {
    int now = (int) head.stones().stream().filter(s -> s.side() == Side.LEFT).count();
    List<NearBy> all = new ArrayList<>();
    for (int n = Math.max(1, now - WITHIN); n <= now + WITHIN; n++) {
      all.add(with(job, opening, n, n == now));
    }
    return all;
  }

  private static NearBy with(Job job, int opening, int eachSide, boolean drawn) {
    Outcome<Job> read = job.spans().rewriting().with(changes(job, opening, eachSide));
    Outcome<ShopWork> work =
        read.value()
            .map(j -> WorkUp.of(j.alone(opening)))
            .orElseGet(() -> Outcome.failed(read.diagnostics()));
    return new NearBy(
        eachSide,
        drawn,
        work.value(),
        work.value().isPresent() ? "" : reason(work.diagnostics()),
        work.value().map(w -> BlankCount.of(w.stock())).orElse(0));
  }

  /** A choice and widths that are given fix the number too, and go. */
  private static List<Change> changes(Job job, int opening, int eachSide) {
    String path = job.openings().get(opening).path();
    List<Change> all = new ArrayList<>();
    for (String key : List.of(".chosen", ".choose", ".head.stones.widths")) {
      if (job.spans().given(path + key)) {
        all.add(new Change(path + key, null, ""));
      }
    }
    String number = Integer.toString(eachSide);
    all.add(new Change(path + ".head.stones.each-side", number, ""));
    return all;
  }

  /** What a head falls short of, where that is told; else that it is refused. */
  private static String reason(List<Diagnostic> said) {
    return said.stream()
        .filter(d -> d.severity() == Severity.NOTE && !d.message().endsWith(PART))
        .findFirst()
        .or(() -> said.stream().filter(d -> d.severity() == Severity.ERROR).findFirst())
        .map(d -> d.message().replaceFirst("^[A-Za-z0-9_-]{1,16}: ", ""))
        .orElse("");
  }
}
