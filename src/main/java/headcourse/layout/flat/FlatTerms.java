package headcourse.layout.flat;

import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.units.Length;

/**
 * What a flat head must keep to, in ticks of the job's grid unless said.
 *
 * @param job the job
 * @param opening the opening
 * @param tick one tick, pm
 * @param half half the clear width, pm; may be off the grid
 * @param height height of the ordinary stones
 * @param rise how far the key stands up
 * @param drop how far the key hangs down
 * @param joint width of a joint
 * @param min least width of a stone
 * @param max greatest width of a stone
 * @param target width to aim at, pm
 * @param step what {@code graded} takes off from stone to stone, or the least difference between
 *     neighbours in {@code mixed}
 * @param jump greatest difference between neighbours; {@link Long#MAX_VALUE} where unbounded
 * @param usable greatest extent a blank yields; {@link Long#MAX_VALUE} where the yard does not say
 * @param left the left side
 * @param right the right side
 */
public record FlatTerms(
    Job job,
    Opening opening,
    long tick,
    long half,
    long height,
    long rise,
    long drop,
    long joint,
    long min,
    long max,
    long target,
    long step,
    long jump,
    long usable,
    SideTerms left,
    SideTerms right) {

  /**
   * What one side adds.
   *
   * @param wall wall beside the opening, pm; {@link Long#MAX_VALUE} where ample
   * @param seed what decides among equals on this side
   */
  public record SideTerms(long wall, long seed) {}

  /** What the job asks of the head. */
  public HeadSpec head() {
    return opening.head();
  }

  /** What the job asks of its stones. */
  public HeadSpec.Stones stones() {
    return opening.head().stones();
  }

  /** What the job asks of its bearings. */
  public HeadSpec.Bearing bearing() {
    return opening.head().bearing();
  }

  /** Both sides at once: the shorter of the two walls. */
  SideTerms both() {
    return new SideTerms(Math.min(left.wall, right.wall), left.seed);
  }

  /** How far a foot passes the jamb line, pm. */
  public long past(long foot) {
    return foot * tick - half;
  }

  /** So many ticks. */
  Length length(long ticks) {
    return new Length(ticks * tick);
  }

  /** So many ticks, mm. */
  double mm(long ticks) {
    return length(ticks).mm();
  }
}
