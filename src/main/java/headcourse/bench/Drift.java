package headcourse.bench;

import headcourse.job.Job;
import headcourse.layout.HeadLayout;
import headcourse.layout.PlacedStone;
import headcourse.layout.Role;
import headcourse.layout.Side;
import headcourse.units.Length;

/**
 * How far off its mark a joint may stand.
 *
 * @param worst at most, either way
 * @param likely typically
 */
public record Drift(Length worst, Length likely) {
  /**
   * That of a joint: at most {@code m·τ + n·f}, likely {@code √m·τ + n·f/2}. n stones lie between
   * the centre line and it, the key's half as one; m of them are yet to be cut, for what was
   * measured is known; τ is the cutting tolerance, f what a dry joint opens by (nothing in mortar,
   * which takes errors up).
   *
   * @param index of the joint, from 0 at the key outwards
   */
  public static Drift at(Job job, HeadLayout head, Side side, int index) {
    int n = 0;
    int m = 0;
    for (PlacedStone s : head.stones()) {
      if (s.role() == Role.KEY || s.side() == side && s.index() <= index) {
        n++;
        m += s.fitted() ? 0 : 1;
      }
    }
    Length cut = job.setting().cutTolerance();
    Length opens = job.setting().dry() ? job.setting().opens() : Length.ZERO;
    return new Drift(
        cut.times(m).plus(opens.times(n)), Length.mm(Math.sqrt(m) * cut.mm() + n * opens.mm() / 2));
  }
}
