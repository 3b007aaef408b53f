package headcourse.layout.side;

import headcourse.job.Setting;
import headcourse.layout.Reach;

/**
 * What the joints of a side and its end want of spare: the {@link Reach} towards what they must
 * keep to, less the distance to it; never less than 0. {@link headcourse.layout.Shortfall} says of
 * a head that is set out what the tolerances alone want.
 */
public final class Spare {
  private final FlatTerms terms;
  private final Lines lines;
  private final boolean fan;
  private final long clear;
  private final long[][] drift = new long[2][64];
  private int known = -1;

  Spare(FlatTerms terms, Lines lines, boolean fan) {
    this.terms = terms;
    this.lines = lines;
    this.fan = fan;
    this.clear = terms.head().clear().picometres();
  }

  /** How far joint {@code index} may drift towards the centre line, pm. */
  long inward(int index) {
    return drift(0, index);
  }

  /** How far it may drift away from it, pm. */
  long outward(int index) {
    return drift(1, index);
  }

  private long drift(int way, int index) {
    while (known < index) {
      known++;
      if (known == drift[0].length) {
        drift[0] = java.util.Arrays.copyOf(drift[0], 2 * known);
        drift[1] = java.util.Arrays.copyOf(drift[1], 2 * known);
      }
      int joints = known + lines.there();
      int cuts = joints + (terms.head().key() == null ? 0 : 1) - lines.measured();
      Setting setting = terms.job().setting();
      Reach reach = Reach.of(setting, cuts, joints);
      drift[0][known] = reach.inward().picometres();
      drift[1][known] = reach.outward().picometres();
    }
    return drift[way][index];
  }

  /** What the line that the first stone begins at wants, pm. */
  long start() {
    double s = lines.trueSoffit();
    double t = lines.trueTop();
    return joint(0, s, t, SideCheck.slant(terms, s, t));
  }

  /** What joint {@code index} wants at a foot where it may stand, pm. */
  long joint(int index, long foot) {
    long s = lines.soffit(index, foot);
    long t = lines.top(index, foot);
    return joint(index, s, t, SideCheck.slant(terms, s, t));
  }

  private long joint(int index, double s, double t, double extra) {
    double tick = terms.tick();
    double outer = (fan ? s : Math.max(s, t)) + terms.joint() + extra;
    long inside = terms.near() - clear - Math.round(outer * tick);
    // A joint that lies off the grid may be past its limit by what arithmetic leaves of nothing.
    if (inside > -1000) {
      return Math.max(0, outward(index) - Math.max(0, inside));
    }
    double inner = (fan ? s : Math.min(s, t)) - extra;
    long beyond = Math.round(inner * tick) - terms.far() - clear;
    return Math.max(0, inward(index) - beyond);
  }

  /** What an end wants after so many stones, pm. */
  long end(int count, End end) {
    if (end.inward() == End.FIXED) {
      return 0;
    }
    return Math.max(0, Math.max(inward(count) - end.inward(), outward(count) - end.outward()));
  }

  /** What a whole choice wants, pm. */
  public static long of(FlatTerms terms, boolean fan, Choice choice) {
    Spare spare = new Spare(terms, choice.lines(), fan);
    long most = spare.start();
    for (int i = 1; i <= choice.feet().length; i++) {
      most = Math.max(most, spare.joint(i, choice.feet()[i - 1]));
    }
    int count = choice.feet().length + 1;
    return choice.end() == null ? most : Math.max(most, spare.end(count, choice.end()));
  }
}
