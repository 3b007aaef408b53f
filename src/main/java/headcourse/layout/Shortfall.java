package headcourse.layout;

import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.units.Length;

/**
 * What one side of a flat head wants of spare to land when small errors add up to their worst.
 * Spare is the distance of a joint, or of the end, to the nearest thing that it must keep to, less
 * the {@link Drift} towards it. None is negative; where all are zero the side lands whatever
 * happens within the job's tolerances.
 *
 * @param jamb wanting to keep every joint, and the end, clear of the jamb line
 * @param least wanting to bear the least that is asked
 * @param greatest wanting to bear no more than is allowed, or than the wall gives
 */
public record Shortfall(Length jamb, Length least, Length greatest) {
  /** Nothing is wanting. */
  public static final Shortfall SURE = new Shortfall(Length.ZERO, Length.ZERO, Length.ZERO);

  /** The greatest of them. */
  public Length most() {
    return jamb.max(least).max(greatest);
  }

  /**
   * That of a side; nothing is wanting on curved heads, whose ends are fixed. A skewback that
   * springs from the jamb itself is cut to it, so only joints count there.
   */
  public static Shortfall of(Job job, HeadLayout head, Side side) {
    boolean fan = head.curve() != null;
    if (fan && head.curve().striking() == null) {
      return SURE;
    }
    Length jamb = Length.ZERO;
    int last = 0;
    for (JointLine j : head.joints()) {
      if (j.side() == side && !j.outer().isEmpty()) {
        jamb = jamb.max(joint(job, head, j, fan));
      }
      last = j.side() == side ? Math.max(last, j.index()) : last;
    }
    Length bearing = head.bearing(side).onWall();
    if (fan && bearing.abs().compareTo(job.grid().tick()) < 0) {
      return new Shortfall(jamb, Length.ZERO, Length.ZERO);
    }
    Drift drift = Drift.at(job, head, side, last);
    HeadSpec.Bearing asked = head.opening().head().bearing();
    Length top = head.bearing(side).onTop();
    Length inmost = fan ? bearing : bearing.min(top);
    Length clear = head.opening().head().clear();
    Length wall = side == Side.LEFT ? head.opening().wallLeft() : head.opening().wallRight();
    Length over = bearing.minus(asked.max());
    Length off = wall == null ? over : over.max(bearing.max(top).minus(wall));
    return new Shortfall(
        jamb.max(clear.minus(inmost).plus(drift.inward())),
        Length.ZERO.max(asked.min().minus(bearing).plus(drift.inward())),
        Length.ZERO.max(off.plus(drift.outward())));
  }

  private static Length joint(Job job, HeadLayout head, JointLine j, boolean fan) {
    double rise = j.head().y() - j.foot().y();
    double slope = Math.abs((j.head().x() - j.foot().x()) / rise);
    double head0 = Math.abs(j.head().x());
    double foot = Math.abs(j.foot().x() - (j.head().x() - j.foot().x()) / rise * j.foot().y());
    double half = job.setting().joint().mm() / 2 * Math.hypot(1, slope);
    double clear = head.opening().head().clear().mm();
    double jamb = head.jamb(j.side()).mm();
    Drift drift = Drift.at(job, head, j.side(), j.index());
    double out = (fan ? foot : Math.max(foot, head0)) + half;
    double in = (fan ? foot : Math.min(foot, head0)) - half;
    double wanting =
        foot < jamb
            ? out + drift.outward().mm() - (jamb - clear)
            : jamb + clear - (in - drift.inward().mm());
    return Length.mm(Math.max(0, wanting));
  }
}
