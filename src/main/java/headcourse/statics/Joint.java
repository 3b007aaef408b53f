package headcourse.statics;

import headcourse.geom.Point;
import headcourse.geom.Vec;

/**
 * Where two blocks touch, or the last block and the wall.
 *
 * @param foot on the soffit
 * @param head on the back
 */
public record Joint(Point foot, Point head) {
  /** Its length, mm. */
  public double length() {
    return foot.distance(head);
  }

  /** From the soffit to the back, of length one. */
  Vec along() {
    return head.minus(foot).unit();
  }

  /** Square to it, from left to right. */
  Vec across() {
    Vec u = along();
    return new Vec(u.y(), 0 - u.x());
  }

  /** The joint with its foot where it is, and so much of its length. */
  Joint shortened(double share) {
    return new Joint(foot, foot.towards(head, share));
  }

  Joint mirrored() {
    return new Joint(foot.mirrored(), head.mirrored());
  }
}
