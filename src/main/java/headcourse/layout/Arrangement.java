package headcourse.layout;

import headcourse.units.Length;
import java.util.List;
import java.util.function.Supplier;

/**
 * One way to fill a head with stones that keeps everything the job asks of it, before it is set
 * out.
 *
 * @param left widths of the left side's ordinary stones from the key outwards, on the line that
 *     widths are counted on; what a curved soffit's chords measure
 * @param right the same of the right side
 * @param byCount whether the number of stones alone decides it, as in curved heads; else the widths
 *     do
 * @param shortfall what it wants of spare to land, see {@link Proof}
 * @param key width of the key on the soffit line; zero where there is none
 * @param keyTop width of the key on the top line
 * @param lap least distance of a joint, or of an end that lies on the wall, from the jamb line
 * @param head sets it out
 */
public record Arrangement(
    List<Length> left,
    List<Length> right,
    boolean byCount,
    Length shortfall,
    Length key,
    Length keyTop,
    Length lap,
    Supplier<HeadLayout> head) {
  /** Copies the lists. */
  public Arrangement {
    left = List.copyOf(left);
    right = List.copyOf(right);
  }

  /** How many stones both sides have. */
  public int stones() {
    return left.size() + right.size();
  }

  /** All widths together. */
  public Length widths() {
    Length sum = Length.ZERO;
    for (Length w : left) {
      sum = sum.plus(w);
    }
    for (Length w : right) {
      sum = sum.plus(w);
    }
    return sum;
  }
}
