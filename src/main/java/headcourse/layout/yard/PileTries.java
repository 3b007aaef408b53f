package headcourse.layout.yard;

import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.Change;
import headcourse.layout.HeadLayout;
import headcourse.layout.HeadShape;
import headcourse.layout.Solution;
import headcourse.layout.flat.FlatReading;
import headcourse.layout.flat.FlatShape;
import headcourse.layout.flat.Turns;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** Tries values of an opening set from the pile otherwise until the whole pile comes out. */
final class PileTries {
  private static final int OFFERED = 3;
  private static final long STEPS = 20_000;
  private static final int FEW = 12;

  private final Function<String, Optional<HeadShape>> shapes;
  private final List<Opening> openings;
  private final Set<String> held;
  private int left;

  /**
   * @param openings all that are set from the pile
   * @param held pieces that heads set before have taken
   * @param tries how many trials it may take
   */
  PileTries(
      Function<String, Optional<HeadShape>> shapes,
      List<Opening> openings,
      Set<String> held,
      int tries) {
    this.held = held;
    this.shapes = shapes;
    this.openings = openings;
    this.left = tries;
  }

  /** Changes of one opening's values each of which makes the job possible. */
  List<Change> of(Job job, Opening opening) {
    FlatReading reading = read(job, opening);
    if (reading.head() == null) {
      return List.of();
    }
    boolean fresh = job.spoiled().isEmpty() && job.fitted().isEmpty();
    // Each trial of a fan takes long.
    boolean fans = openings.stream().map(o -> read(job, o)).anyMatch(PileTries::fanned);
    left = fans ? Math.min(left, FEW) : left;
    return Turns.of(
        reading.head().terms(),
        (j, o) -> left-- <= 0 ? null : tried(j, o, true),
        // What is soon found is found in any case, but for what befell the stones after that.
        (j, o) -> fresh || tried(j, o, false) != null,
        OFFERED);
  }

  private static boolean fanned(FlatReading r) {
    return r.head() != null && r.head().fanned();
  }

  private FlatReading read(Job job, Opening o) {
    return ((FlatShape) shapes.apply(o.head().shape()).orElseThrow()).read(job, o);
  }

  private HeadLayout tried(Job asked, Opening turned, boolean soon) {
    long steps = Math.min(STEPS, asked.steps());
    List<Opening> all = new ArrayList<>(asked.openings());
    all.replaceAll(o -> o.path().equals(turned.path()) ? turned : o);
    Job job = asked.withOpenings(all).withSteps(steps);
    List<Opening> pile = new ArrayList<>(openings);
    pile.replaceAll(o -> o.path().equals(turned.path()) ? turned : o);
    HeadLayout own = null;
    if (turned.head().stones().rhythm() != HeadSpec.Rhythm.FROM_STOCK) {
      Solution s = shapes.apply(turned.head().shape()).orElseThrow().setOut(job, turned);
      pile.remove(turned);
      own = s instanceof Solution.Solved ok ? ok.head() : null;
      if (own == null || pile.isEmpty()) {
        return own;
      }
    }
    Function<Opening, FlatReading> read = o -> read(job, o);
    Replacement.Outcome out =
        new Replacement(job, pile, read, job.fitted(), held, steps).first(soon);
    PilePlan plan =
        new Replacement(job, pile, read, job.fitted(), held, steps).run(out.plan()).plan();
    return plan == null ? null : own != null ? own : plan.heads().get(0).layout();
  }
}
