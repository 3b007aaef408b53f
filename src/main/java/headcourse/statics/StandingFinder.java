package headcourse.statics;

import headcourse.geom.Point;
import headcourse.job.Above;
import headcourse.job.Job;
import headcourse.layout.HeadLayout;
import headcourse.statics.Equilibrium.Safety;
import headcourse.statics.Equilibrium.State;
import headcourse.statics.Standing.Verdict;
import headcourse.statics.Yield.How;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.DoubleFunction;

/** Finds out whether a head would stand if it were solid. */
public final class StandingFinder {
  /** No depth is tried that is more, or less, than so many times that of the head. */
  private static final double FARTHEST = 16;

  /** A least depth is known to this part of the head's. */
  private static final double CLOSE = 1e-6;

  private static final int ROUNDS = 60;

  /** What a joint does with less of the work of failing is not named. */
  private static final double SLIGHT = 0.01;

  /** Rounding takes no more than this from a safety, in parts of the weight. */
  private static final double ROUNDING = 1e-9;

  private final DoubleFunction<Blocks> blocks;
  private final double most;

  private StandingFinder(DoubleFunction<Blocks> blocks, double most) {
    this.blocks = blocks;
    this.most = most;
  }

  /** A head of a job, by the job's friction, wall above and greatest thrust. */
  public static Standing of(Job job, HeadLayout head) {
    return of(head, job.stone().friction(), job.wall().above(), ThrustLimit.of(job));
  }

  /** Whether a head would stand with no more thrust than its job allows. */
  public static boolean stands(Job job, HeadLayout head) {
    Blocks blocks = new HeadBlocks(head, job.stone().friction(), job.wall().above()).at(1);
    return new Equilibrium(blocks).safety(ThrustLimit.of(job)).safety() >= -ROUNDING;
  }

  static Standing of(HeadLayout head, double friction, Above above, double most) {
    return of(new HeadBlocks(head, friction, above)::at, head.opening().head().height().mm(), most);
  }

  /**
   * Any row of blocks that can be had at other depths.
   *
   * @param blocks the row with its joints so many times as long
   * @param depth its depth, mm
   * @param most greatest thrust allowed, times the weight
   */
  public static Standing of(DoubleFunction<Blocks> blocks, double depth, double most) {
    return new StandingFinder(blocks, most).find(depth);
  }

  private Standing find(double depth) {
    Blocks drawn = blocks.apply(1);
    Equilibrium forces = new Equilibrium(drawn);
    Optional<State> least = least(drawn, forces);
    Safety now = forces.safety(most);
    boolean stands = now.safety() >= -ROUNDING;
    Bracket bracket = bracket(stands, now);
    Safety failing = stands && bracket != null ? bracket.below : now;
    Verdict verdict = stands ? Verdict.STANDS : least.isPresent() ? Verdict.PUSHES : Verdict.FALLS;
    List<Point> line = least.map(forces::line).orElse(List.of());
    return new Standing(
        verdict,
        drawn.friction(),
        most,
        drawn.weight(),
        least.map(State::thrust).orElse(null),
        least.isPresent() ? forces.greatestThrust() : null,
        depth,
        bracket == null ? null : bracket.high * depth,
        merged(failing.yields()),
        failing.pushes(),
        line,
        drawn.joints());
  }

  /** Midway between what is found from the left and from the right, so that neither side counts. */
  private static Optional<State> least(Blocks drawn, Equilibrium forces) {
    Optional<State> one = forces.leastThrust();
    Optional<State> other = new Equilibrium(drawn.mirrored()).leastThrust();
    return one.isEmpty() || other.isEmpty()
        ? Optional.empty()
        : Optional.of(one.get().middle(forces.mirrored(other.get())));
  }

  private Safety at(double share) {
    return new Equilibrium(blocks.apply(share)).safety(most);
  }

  /**
   * Shares of the depth between which it begins to stand.
   *
   * @param below what fails at the lower one
   */
  private record Bracket(double high, Safety below) {}

  /** None where no depth helps. */
  private Bracket bracket(boolean stands, Safety now) {
    double step = stands ? 0.5 : 1.25;
    double here = 1;
    Safety last = now;
    while (true) {
      double next = here * step;
      Safety there = next > FARTHEST || next < 1 / FARTHEST ? null : at(next);
      if (there == null) {
        return stands ? new Bracket(here, last) : null;
      }
      if (there.safety() >= -ROUNDING != stands) {
        return stands ? narrowed(next, there, here, last) : narrowed(here, last, next, there);
      }
      here = next;
      last = there;
    }
  }

  /** By false position, the end that stays counting for less each time (Illinois). */
  private Bracket narrowed(double from, Safety falls, double to, Safety holds) {
    double low = from;
    double high = to;
    double lowBy = falls.safety();
    double highBy = holds.safety();
    Safety below = falls;
    int side = 0;
    for (int n = 0; n < ROUNDS && high - low > CLOSE; n++) {
      double mid = (low * highBy - high * lowBy) / (highBy - lowBy);
      if (!(mid > low + CLOSE / 4 && mid < high - CLOSE / 4)) {
        // So close to one end that the other is to come nearer.
        mid = mid <= low + CLOSE / 4 ? low + CLOSE / 2 : high - CLOSE / 2;
      }
      Safety s = at(mid);
      if (s.safety() >= -ROUNDING) {
        high = mid;
        highBy = s.safety();
        lowBy = side > 0 ? lowBy / 2 : lowBy;
        side = 1;
      } else {
        low = mid;
        lowBy = s.safety();
        below = s;
        highBy = side < 0 ? highBy / 2 : highBy;
        side = -1;
      }
    }
    return new Bracket(high, below);
  }

  /** One line a joint and what it does, as parts of all. */
  private static List<Yield> merged(List<Yield> yields) {
    double all = yields.stream().mapToDouble(Yield::share).sum();
    Map<Integer, Map<How, Double>> sums = new TreeMap<>();
    for (Yield y : yields) {
      sums.computeIfAbsent(y.joint(), k -> new TreeMap<>()).merge(y.how(), y.share(), Double::sum);
    }
    List<Yield> merged = new ArrayList<>();
    sums.forEach((j, by) -> by.forEach((how, sum) -> merged.add(new Yield(j, how, sum / all))));
    merged.removeIf(y -> y.share() < SLIGHT);
    merged.sort(Comparator.comparingDouble((Yield y) -> -y.share()).thenComparing(Yield::joint));
    return merged;
  }
}
