package headcourse.bench;

import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Props;
import headcourse.layout.HeadLayout;
import headcourse.layout.Side;
import headcourse.units.Length;
import headcourse.units.Limit;
import java.util.Optional;

/**
 * Plans what carries a head while its mortar is green.
 *
 * <p>A plank on its flat over posts at a spacing s sags 5 q s⁴ / 384 E I between two of them, if it
 * does not run on beyond (beam formula), I = b t³/12. So s is the fourth root of 384 E I f / 5 q
 * for a sag f; a post carries q s. A centring of two ribs stands on four posts that share its load.
 */
public final class PropFinder {
  private static final double GRAVITY = 9.80665;
  private static final double MM_PER_M = 1000;
  private static final int RIB_POSTS = 4;

  private PropFinder() {}

  /** The plan; empty where no stone hangs over the opening. */
  public static Optional<PropPlan> find(Job job, HeadWork head) {
    HeadLayout layout = head.layout();
    double kg = head.pieces().stream().mapToDouble(Piece::hangingKg).sum();
    if (head.pieces().isEmpty() || kg <= 0) {
      return Optional.empty();
    }
    Props props = job.props();
    Length wide = layout.jamb(Side.LEFT).plus(layout.jamb(Side.RIGHT));
    Length over =
        curved(layout) ? wide : wide.plus(bears(layout, Side.LEFT)).plus(bears(layout, Side.RIGHT));
    double load = props.push() * kg / over.mm() * MM_PER_M;
    HeadSpec.Key key = layout.opening().head().key();
    Length drop = key == null ? Length.ZERO : key.drop();
    if (curved(layout)) {
      return Optional.of(
          new PropPlan(true, kg, over, load, null, RIB_POSTS, props.push() * kg / RIB_POSTS, drop));
    }
    double most = spacing(props, load).min(wide).mm();
    Length printed = Limit.MOST.on(job.grid(), Length.mm(most));
    int bays = (int) Math.ceil(wide.mm() / printed.mm() - 1e-9);
    double post = load * printed.mm() / MM_PER_M;
    return Optional.of(new PropPlan(false, kg, over, load, printed, bays + 1, post, drop));
  }

  private static Length bears(HeadLayout layout, Side side) {
    return layout.bearing(side).onWall();
  }

  /** Whether the soffit is struck, and not level or cambered. */
  static boolean curved(HeadLayout layout) {
    return layout.curve() != null && layout.curve().striking() == null;
  }

  /** How far apart posts may stand under so many kilograms a metre. */
  static Length spacing(Props props, double kgPerM) {
    double q = kgPerM * GRAVITY / MM_PER_M;
    double i = props.width().mm() * Math.pow(props.thickness().mm(), 3) / 12;
    double fourth = 384 * props.stiffness() * i * props.sag().mm() / (5 * q);
    return Length.mm(Math.min(Math.pow(fourth, 0.25), 1e6));
  }
}
