package headcourse.layout.curved;

import headcourse.geom.Edge;
import headcourse.geom.Point;
import headcourse.geom.Vec;
import java.util.List;

/**
 * One smooth piece of an intrados, travelled outwards from the crown and measured along itself in
 * millimetres. Places a little beyond its ends are those of the curve carried on.
 */
interface Run {
  /** Its length. */
  double length();

  /** The place at a length along it. */
  Point at(double s);

  /** The unit direction of travel. */
  Vec tangent(double s);

  /** How fast it turns towards the opening, radians per mm; never negative. */
  double curvature(double s);

  /** The piece between two lengths. */
  Edge between(double s0, double s1);

  /**
   * The piece of the parallel curve at a distance outside.
   *
   * @param d distance square to the curve, not negative
   */
  List<Edge> outside(double d, double s0, double s1);

  /** Away from the opening, square to the curve. */
  default Vec normal(double s) {
    return tangent(s).normal();
  }
}
