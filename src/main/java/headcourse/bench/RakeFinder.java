package headcourse.bench;

import headcourse.geom.Tolerance;
import headcourse.geom.Vec;
import headcourse.layout.FaceEdge.Where;
import headcourse.units.Angle;
import headcourse.units.Grid;
import headcourse.units.Length;

/** Finds how far a side edge runs off square to its stone's soffit. */
final class RakeFinder {
  private RakeFinder() {}

  /** {@code tan ρ = offset / over}, both between the ends of the edge. */
  static Rake rake(StoneFrame frame, Where side, Grid grid) {
    Vec run = frame.own(frame.high(side).minus(frame.low(side)));
    double out = side == Where.LEFT ? -run.x() : run.x();
    Rake.LongPoint longPoint =
        Math.abs(out) < Tolerance.SAME
            ? Rake.LongPoint.NEITHER
            : out > 0 ? Rake.LongPoint.TOP : Rake.LongPoint.BOTTOM;
    double off = longPoint == Rake.LongPoint.NEITHER ? 0 : Math.abs(out);
    return new Rake(Angle.ofRate(off, run.y()), grid.snapMm(off), Length.mm(run.y()), longPoint);
  }
}
