package headcourse.layout;

import headcourse.job.Care;
import headcourse.job.Setting;
import headcourse.units.Length;

/**
 * How much room a joint wants to land: the worst that the tolerances bring, see {@link Drift}, or
 * what builds by the job's class of care reach in all but a few of a thousand when they are checked
 * after every third stone, whichever is more.
 *
 * <p>The second is three standard deviations: of the key's place, half the opening's width, a
 * reading, and of what comes after the last check, up to three cuts, three times the fence's one
 * error, and three mortar joints; dry joints open outwards by twice their mean (calculated).
 *
 * @param inward towards the centre line
 * @param outward away from it
 */
public record Reach(Length inward, Length outward) {
  private static final int BETWEEN_CHECKS = 3;
  private static final double DEVIATIONS = 3;

  /**
   * That of a joint with so much between it and the centre line.
   *
   * @param setting tolerances and care of the job
   * @param cuts stones yet to be cut, the key's half as one
   * @param joints joints
   */
  public static Reach of(Setting setting, int cuts, int joints) {
    Care care = setting.care();
    int after = Math.min(joints, BETWEEN_CHECKS);
    double fence = after * care.fence().mm();
    double mortar = setting.dry() ? 0 : Care.MORTAR.mm();
    double variance =
        square(care.key().mm())
            + square(care.site().mm() / 2)
            + square(care.read().mm())
            + Math.min(cuts, BETWEEN_CHECKS) * square(care.cut().mm())
            + square(fence)
            + after * square(mortar);
    Length reach = Length.mm(DEVIATIONS * Math.sqrt(variance));
    Length opened = setting.dry() ? care.opens().times(2 * after) : Length.ZERO;
    return new Reach(
        reach.max(Drift.inward(setting, cuts, joints)),
        reach.plus(opened).max(Drift.outward(setting, cuts, joints)));
  }

  private static double square(double x) {
    return x * x;
  }
}
