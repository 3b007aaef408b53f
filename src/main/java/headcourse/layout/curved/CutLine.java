package headcourse.layout.curved;

import headcourse.geom.Point;
import headcourse.geom.Vec;

/**
 * The line of a joint on the right half, or of a stone's edge beside it.
 *
 * @param foot where the joint meets the soffit, or the place beside it
 * @param along unit direction away from the opening
 * @param s how far along the intrados the joint stands
 * @param joint the joint's number from the key outwards; −1 for the centre line
 */
record CutLine(Point foot, Vec along, double s, int joint) {
  /** The centre line of the opening. */
  static final CutLine CENTRE = new CutLine(Point.ORIGIN, new Vec(0, 1), 0, -1);

  /** Unit direction outwards along the curve, square to the line. */
  Vec across() {
    return along.normal().times(-1);
  }

  /** How far a place lies outwards of the line. */
  double beyond(Point p) {
    return p.minus(foot).dot(across());
  }

  /** The line moved outwards, parallel to itself. */
  CutLine moved(double by) {
    return new CutLine(foot.plus(across().times(by)), along, s, joint);
  }

  /** How far along the line it reaches a height; infinite where it never does. */
  double toHeight(double y) {
    return along.y() > 1e-12 ? (y - foot.y()) / along.y() : Double.POSITIVE_INFINITY;
  }

  /** How far along the line it reaches a distance from the centre line; infinite as above. */
  double toPlumb(double x) {
    return along.x() > 1e-12 ? (x - foot.x()) / along.x() : Double.POSITIVE_INFINITY;
  }

  /** The place so far along it. */
  Point at(double t) {
    return foot.plus(along.times(t));
  }
}
