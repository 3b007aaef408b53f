package headcourse.statics;

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
  /** No depth is tried that is more than so many times that of the head. */
  private static final double DEEPEST = 16;

  /** Nor one that is less. */
  private static final double THINNEST = 1 / 64.0;

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
    double now = forces.safety(most).safety();
    boolean stands = now >= -ROUNDING;
    Bracket bracket = bracket(stands, now);
    Blocks failing = stands && bracket != null ? blocks.apply(bracket.low) : drawn;
    Safety one = new Equilibrium(failing).safety(most);
    // In a head that is its own mirror image either side may be found; what one does, both do.
    Safety other = failing.even() ? one : new Equilibrium(failing.mirrored()).safety(most);
    return new Standing(
        stands ? Verdict.STANDS : least.isPresent() ? Verdict.PUSHES : Verdict.FALLS,
        drawn.friction(),
        most,
        drawn.weight(),
        least.map(State::thrust).orElse(null),
        least.isPresent() ? forces.greatestThrust() : null,
        depth,
        bracket == null ? null : bracket.high * depth,
        merged(one.yields(), other.yields(), drawn.loads().size()),
        one.pushes() || other.pushes(),
        least.map(forces::line).orElse(List.of()),
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

  private double at(double share) {
    return new Equilibrium(blocks.apply(share)).safety(most).safety();
  }

  /** Shares of the depth: the greatest known at which it falls, the least at which it holds. */
  private record Bracket(double low, double high) {}

  /** None where no depth helps. */
  private Bracket bracket(boolean stands, double now) {
    double here = 1;
    double last = now;
    while (true) {
      double next = here * (stands ? 0.5 : 1.25);
      if (next > DEEPEST || next < THINNEST) {
        return stands ? new Bracket(here, here) : null;
      }
      double there = at(next);
      if (there >= -ROUNDING != stands) {
        return stands ? narrowed(next, there, here, last) : narrowed(here, last, next, there);
      }
      here = next;
      last = there;
    }
  }

  /** By false position, the end that stays counting for less each time (Illinois). */
  private Bracket narrowed(double from, double falls, double to, double holds) {
    double low = from;
    double high = to;
    double lowBy = falls;
    double highBy = holds;
    int side = 0;
    for (int n = 0; n < ROUNDS && high - low > CLOSE * high; n++) {
      double least = CLOSE * high / 4;
      double mid = (low * highBy - high * lowBy) / (highBy - lowBy);
      // So close to one end that the other is to come nearer.
      mid = mid <= low + least ? low + 2 * least : mid >= high - least ? high - 2 * least : mid;
      double by = at(mid);
      if (by >= -ROUNDING) {
        high = mid;
        highBy = by;
        lowBy = side > 0 ? lowBy / 2 : lowBy;
        side = 1;
      } else {
        low = mid;
        lowBy = by;
        highBy = side < 0 ? highBy / 2 : highBy;
        side = -1;
      }
    }
    return new Bracket(low, high);
  }

  /**
   * One line a joint and what it does, as parts of all, midway between what is found from the left
   * and from the right.
   *
   * @param mirrored what the mirror image does
   * @param last number of the last joint
   */
  private static List<Yield> merged(List<Yield> yields, List<Yield> mirrored, int last) {
    Map<Integer, Map<How, Double>> sums = new TreeMap<>();
    double all = sum(yields);
    for (Yield y : yields) {
      add(sums, y.joint(), y.how(), y.share() / all / 2);
    }
    all = sum(mirrored);
    for (Yield y : mirrored) {
      add(sums, last - y.joint(), y.how(), y.share() / all / 2);
    }
    List<Yield> merged = new ArrayList<>();
    sums.forEach((j, by) -> by.forEach((how, share) -> merged.add(new Yield(j, how, share))));
    merged.removeIf(y -> y.share() < SLIGHT);
    merged.sort(Comparator.comparingDouble((Yield y) -> -y.share()).thenComparing(Yield::joint));
    return merged;
  }

  private static void add(Map<Integer, Map<How, Double>> sums, int joint, How how, double share) {
    sums.computeIfAbsent(joint, k -> new TreeMap<>()).merge(how, share, Double::sum);
  }

  private static double sum(List<Yield> yields) {
    return yields.stream().mapToDouble(Yield::share).sum();
  }
}
