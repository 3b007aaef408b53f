package headcourse.layout;

import headcourse.geom.Point;
import headcourse.units.Length;

/** How far the nearest joint of a head stands from a jamb line. */
public final class Lap {
  private Lap() {}

  /**
   * The least distance of a joint's nearer edge from the jamb line of its side, on the soffit line
   * in flat heads, along the chord to the springing in curved ones; an end that closes on a
   * skewback at the jamb doesn't count.
   *
   * @param joint width of a joint
   */
  public static Length of(HeadLayout head, Length joint, Length tick) {
    double least = Double.POSITIVE_INFINITY;
    for (JointLine j : head.joints()) {
      boolean end = j.outer().isEmpty();
      double jamb = head.jamb(j.side()).mm();
      double half = end ? 0 : joint.mm() / 2;
      double at = Math.abs(end ? j.soffitMark().mm() : foot(j));
      boolean springs = end && (head.curved() || head.fanned() && at - jamb < tick.mm());
      if (!springs) {
        double off =
            head.curved()
                ? j.foot().distance(new Point(j.side().sign() * jamb, 0))
                : Math.abs(at - jamb);
        least = Math.min(least, off - half);
      }
    }
    return Length.mm(Math.max(0, Double.isInfinite(least) ? 0 : least));
  }

  /** Where a joint crosses the soffit line, though under a camber it begins above it. */
  private static double foot(JointLine j) {
    Point foot = j.foot();
    Point head = j.head();
    return foot.x() - foot.y() * (head.x() - foot.x()) / (head.y() - foot.y());
  }
}
