package headcourse.layout.flat;

import headcourse.layout.Solution;
import headcourse.layout.side.FlatHead;

/**
 * A flat head ready for its stones, or why there is none.
 *
 * @param head the head, or null
 * @param refused why there is none, or null
 */
public record FlatReading(FlatHead head, Solution.Refused refused) {
  static FlatReading of(FlatHead head) {
    return new FlatReading(head, null);
  }
}
