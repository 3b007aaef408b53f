package headcourse.stock.cutting;

import headcourse.stock.cutting.CuttingProblem.Bin;
import java.util.Arrays;

/**
 * What parts take of a blank at least, in each of a few measures (between the arris and a height;
 * see {@link LeanBound}): each part an inner width, and all together the difference between the
 * greatest and the least lean among them.
 */
final class InnerWidths {
  private final Nesting nesting;
  private final long[][] inner;

  InnerWidths(Nesting nesting) {
    this.nesting = nesting;
    inner = new long[Math.max(1, nesting.leans.size())][nesting.types];
    for (int k = 0; k < inner.length; k++) {
      for (int t = 0; t < nesting.types; t++) {
        inner[k][t] =
            nesting.leans.isEmpty()
                ? nesting.widths[0][t]
                : Math.max(1, nesting.leans.get(k).inner(t) - 1);
      }
    }
  }

  /** How many measures there are. */
  int measures() {
    return inner.length;
  }

  long inner(int measure, int t) {
    return inner[measure][t];
  }

  /**
   * What is left in each measure for the inner widths of more beside these parts.
   *
   * @param present the types that there are any of
   */
  void rooms(Bin bin, int[] present, int[] counts, long[] rooms) {
    long usable = bin.usable() + Nesting.SLACK;
    if (present.length == 0 || nesting.leans.isEmpty()) {
      Arrays.fill(rooms, usable + nesting.kerf);
      for (int t : present) {
        rooms[0] -= counts[t] * inner[0][t];
      }
    } else {
      for (int k = 0; k < rooms.length; k++) {
        rooms[k] = usable - nesting.leans.get(k).least(present, counts);
      }
    }
  }
}
