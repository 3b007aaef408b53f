package headcourse.bench;

import headcourse.geom.HalfPlane;
import headcourse.geom.Point;
import headcourse.geom.Tolerance;
import headcourse.geom.Vec;
import headcourse.job.HeadSpec.Soffit;
import headcourse.job.Job;
import headcourse.layout.FaceEdge.Where;
import headcourse.layout.HeadLayout;
import headcourse.layout.Side;
import headcourse.layout.VSoffit;
import headcourse.units.Length;
import java.util.Optional;

/**
 * What of a stone runs back under the head.
 *
 * @param depth outside depth from the stone's own face; zero without a return
 * @param relief how far it is cut away from the outer end inward, on the grid
 * @param seatFrom x of its outer end, mm
 */
public record ReturnLeg(Length depth, Length relief, double seatFrom) {
  /** A soffit steeper than this has no jamb stone under it: cosine of 45°. */
  private static final double LEVEL = Math.sqrt(0.5);

  /**
   * The return covers the reveal; a stone that stands proud needs as much more. A V that leaves too
   * little of it has none: its soffit is covered by pieces of its own. Past the jamb it stays on
   * for the seat, at most a tick more, so that what is cut away is whole ticks.
   */
  static ReturnLeg of(Job job, HeadLayout head, StoneFrame frame) {
    Length deep = head.opening().reveal().plus(frame.stone().proud());
    double outer = frame.low(frame.outer()).x();
    if (head.opening().head().soffit() == Soffit.NONE) {
      return new ReturnLeg(Length.ZERO, Length.ZERO, frame.low(frame.inner()).x());
    }
    Optional<VSoffit> v = VSoffit.of(frame.stone());
    if (v.isPresent() && !corner(job, head, v.get())) {
      return new ReturnLeg(Length.ZERO, Length.ZERO, outer);
    }
    int sign = frame.stone().side().sign();
    if (frame.stone().side() == Side.CENTRE || frame.along().x() < LEVEL) {
      return new ReturnLeg(deep, Length.ZERO, outer);
    }
    double seatEnd = head.jamb(frame.stone().side()).plus(head.opening().head().seat()).mm();
    double inner = sign * frame.low(frame.inner()).x();
    if (inner >= seatEnd - Tolerance.SAME) {
      return new ReturnLeg(Length.ZERO, Length.ZERO, sign * inner);
    }
    long ticks = job.grid().floor(Length.mm(sign * outer - seatEnd + Tolerance.SAME));
    Length relief = job.grid().ticks(Math.max(0, ticks));
    return new ReturnLeg(deep, relief, outer - sign * relief.mm());
  }

  /**
   * Whether a corner can give a V: over the apex as much of its return must be left as a slot
   * leaves before the face (common practice, no source).
   */
  private static boolean corner(Job job, HeadLayout head, VSoffit v) {
    Length left = job.stone().thickness().minus(v.depth());
    return head.opening().head().soffit() == Soffit.RETURNED
        && left.compareTo(job.fastener().cover()) >= 0;
  }

  /** Whether there is one. */
  public boolean present() {
    return depth.isPositive();
  }

  /** Whether it reaches the side edge. */
  boolean reaches(StoneFrame frame, Where side) {
    return present() && (relief.isZero() || side != frame.outer());
  }

  /** Where it is left on, as seen from the front. */
  HalfPlane kept(Side side) {
    return new HalfPlane(new Point(seatFrom, 0), new Vec(-side.sign(), 0));
  }
}
