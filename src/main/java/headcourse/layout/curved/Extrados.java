package headcourse.layout.curved;

import headcourse.geom.Edge;
import headcourse.geom.Point;
import java.util.List;

/**
 * The right half of the line that a head's stones run up to. Stone 0 is the key's right half; stone
 * i lies between joints i − 1 and i.
 */
interface Extrados {
  /** Where the edge of a stone, or a joint, ends on it. */
  Point head(CutLine line);

  /**
   * The top of a stone, from its inner edge to its outer.
   *
   * @param stone its number
   * @param inner its inner edge; the centre line for the key
   * @param outer its outer edge
   */
  List<Edge> top(int stone, CutLine inner, CutLine outer);

  /** The same for a key that stands up so much higher. */
  Extrados raised(double rise);

  /** How near a joint runs to a corner where it would leave a sliver; infinite where none is. */
  double sliver(List<CutLine> joints);

  /** All of it, from the centre line to the skewback. */
  List<Edge> half();
}
