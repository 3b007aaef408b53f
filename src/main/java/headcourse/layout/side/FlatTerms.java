package headcourse.layout.side;

import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.Side;
import headcourse.units.Length;

/**
 * What a flat head must keep to, in ticks of the job's grid unless said.
 *
 * @param job the job
 * @param opening the opening
 * @param tick one tick, pm
 * @param half distance of the jamb lines from the centre line, pm; may be off the grid; where they
 *     differ, the mean of the two
 * @param near distance of the nearer jamb line, pm
 * @param far distance of the farther jamb line, pm
 * @param height height of the ordinary stones
 * @param rise how far the key stands up
 * @param drop how far the key hangs down
 * @param joint width of a joint
 * @param widths what the stones' widths must keep to
 * @param usable greatest extent a blank yields; {@link Long#MAX_VALUE} where the yard does not say
 * @param left the left side
 * @param right the right side
 */
public record FlatTerms(
    Job job,
    Opening opening,
    long tick,
    long half,
    long near,
    long far,
    long height,
    long rise,
    long drop,
    long joint,
    Widths widths,
    long usable,
    SideTerms left,
    SideTerms right) {

  /**
   * What one side adds.
   *
   * @param wall wall beside the opening, pm; {@link Long#MAX_VALUE} where ample
   * @param seed what decides among equals on this side
   * @param jamb distance of its jamb line from the centre line, pm
   */
  public record SideTerms(long wall, long seed, long jamb) {}

  /**
   * What widths must keep to, in ticks unless said.
   *
   * @param min least width of a stone
   * @param max greatest width of a stone
   * @param target width to aim at, pm
   * @param step what {@code graded} takes off from stone to stone, or the least difference between
   *     neighbours in {@code mixed}
   * @param jump greatest difference between neighbours; {@link Long#MAX_VALUE} where unbounded
   */
  public record Widths(long min, long max, long target, long step, long jump) {
    /** The same, aiming elsewhere. */
    Widths aiming(long other) {
      return new Widths(min, max, other, step, jump);
    }
  }

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
  public SideTerms both() {
    return new SideTerms(Math.min(left.wall, right.wall), left.seed, half);
  }

  /** Whether the jamb lines stand at different distances. */
  public boolean lopsided() {
    return near != far;
  }

  /** The side that these terms are for; where both share them, either. */
  Side own() {
    return half == left.jamb ? Side.LEFT : Side.RIGHT;
  }

  /** The terms for one side by itself: its own jamb line alone counts. */
  FlatTerms alone(SideTerms side) {
    return new FlatTerms(
        job, opening, tick, side.jamb, side.jamb, side.jamb, height, rise, drop, joint, widths,
        usable, left, right);
  }

  /**
   * The terms for what is left of a side when its first stones are there. Their number counts
   * towards {@code each-side}, and a grade goes on where it stands.
   */
  public FlatTerms after(int stones) {
    if (stones == 0) {
      return this;
    }
    Integer each = stones().eachSide();
    Opening rest =
        each == null ? opening : opening.with(head().with(stones().withEachSide(each - stones)));
    boolean graded = stones().rhythm() == HeadSpec.Rhythm.GRADED;
    long taken = graded ? widths.step * tick * stones / 2 : 0;
    return new FlatTerms(
        job,
        rest,
        tick,
        half,
        near,
        far,
        height,
        rise,
        drop,
        joint,
        widths.aiming(widths.target - taken),
        usable,
        left,
        right);
  }

  /** How far a foot passes the jamb line, pm; the mean of both sides where they differ. */
  public long past(long foot) {
    return foot * tick - half;
  }

  /** How far a foot passes the nearer jamb line, pm. */
  public long pastNear(long foot) {
    return foot * tick - near;
  }

  /** How far a foot passes the farther jamb line, pm. */
  public long pastFar(long foot) {
    return foot * tick - far;
  }

  /** So many ticks. */
  public Length length(long ticks) {
    return new Length(ticks * tick);
  }

  /** So many ticks, mm. */
  public double mm(long ticks) {
    return length(ticks).mm();
  }
}
