package headcourse.layout.yard;

import headcourse.job.HeadSpec;
import headcourse.layout.Drift;
import headcourse.layout.Side;
import headcourse.layout.flat.End;
import headcourse.layout.flat.FittedHead;
import headcourse.layout.flat.FlatTerms;
import headcourse.layout.flat.Lines;
import java.util.ArrayList;
import java.util.List;

/**
 * What is wanting of spare at a joint or an end when small errors add up to their worst, as {@link
 * headcourse.layout.Shortfall} has it of a head that is set out; lengths in pm.
 */
final class Spare {
  private final FlatTerms terms;
  private final Lines lines;
  private final boolean fan;
  private final long wall;
  private final int there;
  private final int cuts;
  private final List<Drift> drifts = new ArrayList<>();

  /**
   * @param left what is left of the side
   * @param cuts stones not measured, the key among them, up to where it begins
   */
  Spare(FittedHead.Left left, Side side, int cuts) {
    this.terms = left.terms();
    this.lines = left.rest().lines();
    this.fan = left.lengths() != null;
    this.wall = (side == Side.LEFT ? terms.left() : terms.right()).wall();
    this.there = left.there();
    this.cuts = cuts;
  }

  private Drift drift(int index) {
    while (drifts.size() < index) {
      int i = drifts.size() + 1;
      drifts.add(Drift.of(terms.job().setting(), cuts + i, there + i));
    }
    return drifts.get(index - 1);
  }

  /** What is wanting to keep a joint clear of the jamb line. */
  long joint(int index, long foot) {
    double tick = terms.tick();
    double s = (lines.soffit(index, foot) + terms.joint() / 2.0) * tick;
    double t = (lines.top(index, foot) + terms.joint() / 2.0) * tick;
    double half = terms.joint() / 2.0 * tick * Math.hypot(1, (t - s) / (terms.height() * tick));
    double clear = terms.head().clear().picometres();
    double wanting =
        s < terms.half()
            ? (fan ? s : Math.max(s, t))
                + half
                + drift(index).outward().picometres()
                - terms.half()
                + clear
            : terms.half()
                + clear
                - (fan ? s : Math.min(s, t))
                + half
                + drift(index).inward().picometres();
    return Math.max(0, Math.round(wanting));
  }

  /** What is wanting for the end to bear as it must. */
  long end(int index, End e) {
    long bearing = e.bearing();
    // A skewback that springs from the jamb itself is cut to it.
    if (fan && Math.abs(bearing) < terms.tick()) {
      return 0;
    }
    HeadSpec.Bearing asked = terms.bearing();
    long top = terms.past(e.top());
    long inward = drift(index).inward().picometres();
    long inmost = fan ? bearing : Math.min(bearing, top);
    long over = bearing - asked.max().picometres();
    over = wall == Long.MAX_VALUE ? over : Math.max(over, Math.max(bearing, top) - wall);
    long jamb = terms.head().clear().picometres() - inmost + inward;
    long least = asked.min().picometres() - bearing + inward;
    long greatest = over + drift(index).outward().picometres();
    return Math.max(Math.max(0, jamb), Math.max(least, greatest));
  }
}
