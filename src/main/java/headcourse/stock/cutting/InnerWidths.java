package headcourse.stock.cutting;

import headcourse.stock.cutting.CuttingProblem.Bin;

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
                ? nesting.slices.mean(t)
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

  /** How far a type leans to the left at most, in the first measure; no more than upright. */
  long low(int t) {
    return nesting.leans.isEmpty() ? 0 : nesting.leans.get(0).low(t);
  }

  /** How far a type leans to the right at most, in the first measure; no less than upright. */
  long high(int t) {
    return nesting.leans.isEmpty() ? 0 : nesting.leans.get(0).high(t);
  }

  /** What a blank has for inner widths and the difference of leans. */
  long room(Bin bin) {
    return bin.usable() + Nesting.SLACK + nesting.kerf;
  }

  /**
   * What is left in each measure for the inner widths of more beside these parts.
   *
   * @param present the types that there are any of
   */
  void rooms(Bin bin, int[] present, int[] counts, long[] rooms) {
    long usable = bin.usable() + Nesting.SLACK;
    if (present.length == 0) {
      java.util.Arrays.fill(rooms, room(bin));
    } else if (nesting.leans.isEmpty()) {
      rooms[0] = room(bin);
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
