package headcourse.stock;

/**
 * What the rest of a blank may still be worth, by the widths of the types from a place in the order
 * on: a knapsack on a coarse scale, widths rounded down, room rounded up.
 */
final class Completion {
  private static final int CELLS = 600;

  private final long room;
  private final long[][] table;

  /**
   * @param order types
   * @param width by type, positive
   * @param worth by type
   * @param most by type: how many there are
   * @param room the most room that is asked for
   */
  Completion(int[] order, long[] width, long[] worth, int[] most, long room) {
    this.room = Math.max(1, room);
    this.table = new long[order.length + 1][CELLS + 1];
    for (int i = order.length - 1; i >= 0; i--) {
      int t = order[i];
      int cells = (int) Math.min(CELLS + 1L, width[t] * CELLS / this.room);
      for (int r = 0; r <= CELLS; r++) {
        long best = table[i + 1][r];
        for (int n = 1; n <= most[t] && (long) n * cells <= r; n++) {
          best = Math.max(best, n * worth[t] + table[i + 1][r - n * cells]);
        }
        table[i][r] = best;
      }
    }
  }

  /** No more than this is won with the types from a place on. */
  long of(int i, long left) {
    return left < 0 ? 0 : table[i][(int) Math.min(CELLS, (left * CELLS + room - 1) / room)];
  }
}
