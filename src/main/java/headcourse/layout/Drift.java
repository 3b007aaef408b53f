package headcourse.layout;

import headcourse.job.Job;
import headcourse.job.Setting;
import headcourse.units.Length;

/**
 * How far off its mark a joint may stand when small errors add up from the centre line outwards.
 * One-sided, because a dry joint can open but never close; a mortar joint gives and takes.
 *
 * @param inward at most, towards the centre line
 * @param outward at most, away from it
 * @param mean where it is likely to stand, away from it
 * @param likely how far about that it typically is, either way
 */
public record Drift(Length inward, Length outward, Length mean, Length likely) {
  /**
   * What cuts and joints come to. With a cutting tolerance of ±τ and joints that open by f: inward
   * m·τ, outward m·τ + n·f, typically √m·τ about n·f/2 for m cuts and n dry joints; in mortar n·f
   * more either way, typically √(m·τ² + n·f²) about nothing.
   *
   * @param setting tolerances of the job
   * @param cuts stones yet to be cut between the centre line and the joint, the key's half as one
   * @param joints joints between the centre line and the joint
   */
  public static Drift of(Setting setting, int cuts, int joints) {
    Length inward = inward(setting, cuts, joints);
    Length outward = outward(setting, cuts, joints);
    double tau = setting.cutTolerance().mm();
    double f = setting.opens().mm();
    return setting.dry()
        ? new Drift(inward, outward, Length.mm(joints * f / 2), Length.mm(Math.sqrt(cuts) * tau))
        : new Drift(
            inward, outward, Length.ZERO, Length.mm(Math.sqrt(cuts * tau * tau + joints * f * f)));
  }

  /** The most that cuts and joints come to towards the centre line. */
  public static Length inward(Setting setting, int cuts, int joints) {
    Length cut = setting.cutTolerance().times(cuts);
    return setting.dry() ? cut : cut.plus(setting.opens().times(joints));
  }

  /** The most that they come to away from it. */
  public static Length outward(Setting setting, int cuts, int joints) {
    return setting.cutTolerance().times(cuts).plus(setting.opens().times(joints));
  }

  /**
   * That of a joint of a head: the outer edge of stone {@code index} has the key and {@code index}
   * stones between it and the centre line, of which those that were measured are known, and {@code
   * index} joints.
   *
   * @param index of the joint, from 0 at the key outwards
   */
  public static Drift at(Job job, HeadLayout head, Side side, int index) {
    int cuts = 0;
    for (PlacedStone s : head.stones()) {
      boolean within = s.role() == Role.KEY || s.side() == side && s.index() <= index;
      cuts += within && !s.fitted() ? 1 : 0;
    }
    return of(job.setting(), cuts, index);
  }
}
