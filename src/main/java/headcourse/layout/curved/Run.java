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

  /** Where it is at a length along it, and how it runs there. */
  Frame frame(double s);

  /** The piece between two lengths. */
  Edge between(double s0, double s1);

  /**
   * The piece of the parallel curve at a distance outside.
   *
   * @param d distance square to the curve, not negative
   */
  List<Edge> outside(double d, double s0, double s1);

  /**
   * A place on the curve.
   *
   * @param at the place
   * @param along unit direction of travel
   * @param curvature how fast it turns towards the opening, radians per mm; never negative
   */
  record Frame(Point at, Vec along, double curvature) {
    /** The place so far outside the curve, square to it. */
    Point outside(double d) {
      return at.plus(along.normal().times(d));
    }
  }
}
