package headcourse.geom;

import java.util.List;

/** One directed edge of a path: straight, circular, elliptical or a cubic Bézier. */
public sealed interface Edge permits Straight, Arc, EllipticArc, Cubic {
  /** Where it begins. */
  Point from();

  /** Where it ends. */
  Point to();

  /** Its length in millimetres. */
  double length();

  /** The place at a fraction 0 … 1 of its parameter. */
  Point at(double t);

  /** The unit direction of travel at a fraction 0 … 1 of its parameter. */
  Vec tangent(double t);

  /** The edge travelled the other way. */
  Edge reversed();

  /** The edge under a similarity transform. */
  Edge transformed(Similarity map);

  /**
   * Vertices along the edge, its end included and its start left out, none of whose chords is
   * farther than {@code tolerance} from the curve.
   */
  List<Point> flattened(double tolerance);

  /** ∫ x dy − y dx over the edge; half the sum around a closed path is its area. */
  double crossIntegral();
}
