package headcourse.bench;

import headcourse.units.Length;

/**
 * A strip of cut edge that no neighbour covers, to be dressed.
 *
 * @param edge which edge
 * @param why what leaves it open
 * @param length along the edge
 * @param depth how much of the thickness shows
 */
public record ExposedEdge(EdgeName edge, Why why, Length length, Length depth) {
  /** What leaves an edge open. */
  public enum Why {
    /** The stone stands proud of its neighbour. */
    PROUD,
    /** It hangs below its neighbour. */
    DROP,
    /** It stands above its neighbour. */
    RISE,
    /** Its top has nothing above. */
    TOP,
    /** Its return ends in the open. */
    RETURN,
    /** It is seen from below, with no return to cover it. */
    SOFFIT
  }
}
