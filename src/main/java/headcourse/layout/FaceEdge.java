package headcourse.layout;

import headcourse.geom.Edge;

/**
 * An edge of a stone's face.
 *
 * @param edge the edge, travelled with the stone on its left
 * @param where which side of the stone it bounds
 */
public record FaceEdge(Edge edge, Where where) {
  /** Which side of a stone, seen from outside. */
  public enum Where {
    /** Below. */
    SOFFIT,
    /** To the right. */
    RIGHT,
    /** Above. */
    TOP,
    /** To the left. */
    LEFT
  }
}
