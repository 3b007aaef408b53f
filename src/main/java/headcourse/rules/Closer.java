package headcourse.rules;

import headcourse.layout.Side;
import headcourse.units.Length;

/**
 * How one course of the wall closes against an end of a head.
 *
 * @param side which end
 * @param course number of the course, from 1 at the lowest bed joint the job gives
 * @param from its lower bed joint above the soffit line
 * @param to its upper bed joint
 * @param lower how far from the jamb line the wall stone begins at the lower bed joint, or at the
 *     soffit where the course reaches below it
 * @param upper the same at the upper bed joint, or at the head's top where the course reaches above
 * @param under how much of the course lies below the soffit: the wall stone, or one more, runs
 *     under the end; zero where the course begins at it or higher
 * @param over how much of the course lies above the head's top: the strip to be closed over the
 *     end; zero where the course ends at it or lower
 */
public record Closer(
    Side side,
    int course,
    Length from,
    Length to,
    Length lower,
    Length upper,
    Length under,
    Length over) {
  /** How far the closer's cut runs off plumb over the part that meets the end; out is positive. */
  public Length offset() {
    return upper.minus(lower);
  }

  /** The height of the part that meets the end. */
  public Length height() {
    return to.minus(from).minus(under).minus(over);
  }
}
