package headcourse.stock.cutting;

/**
 * What the rest of a blank may still be worth, by the widths of the types from a place in the order
 * on: a knapsack, exact where all widths are ticks of a common grid; else on a coarse scale, widths
 * rounded down, room rounded up.
 */
final class KnapsackTable {
  private static final int COARSE = 600;
  private static final int FINE = 4_000;

  /** 1/16, 1/32 and 1/64 in, 1 mm, 0.5 mm and 0.1 mm in nm, and what their sums are rounded by. */
  private static final long[] GRIDS = {1_587_500, 793_750, 396_875, 1_000_000, 500_000, 100_000};

  private static final long ROUNDED = 2;

  private final long room;
  private final int cells;
  private final long grid;
  private final long[][] table;

  /**
   * @param order types
   * @param width by type, positive
   * @param worth by type
   * @param most by type: how many there are
   * @param room the most room that is asked for
   */
  KnapsackTable(int[] order, long[] width, long[] worth, int[] most, long room) {
    this.room = Math.max(1, room);
    this.grid = grid(order, width);
    this.cells = grid == 0 ? COARSE : (int) ((this.room + Nesting.SLACK) / grid);
    this.table = new long[order.length + 1][cells + 1];
    for (int i = order.length - 1; i >= 0; i--) {
      int t = order[i];
      long of = grid == 0 ? width[t] * cells / this.room : (width[t] + ROUNDED) / grid;
      int each = (int) Math.min(cells + 1L, of);
      for (int r = 0; r <= cells; r++) {
        long best = table[i + 1][r];
        for (int n = 1; n <= most[t] && (long) n * each <= r; n++) {
          best = Math.max(best, n * worth[t] + table[i + 1][r - n * each]);
        }
        table[i][r] = best;
      }
    }
  }

  /** The coarsest grid that all widths lie on; 0 where there is none. */
  private long grid(int[] order, long[] width) {
    for (long g : GRIDS) {
      boolean on = room / g < FINE;
      for (int t : order) {
        on &= (width[t] + ROUNDED) % g <= ROUNDED;
      }
      if (on) {
        return g;
      }
    }
    return 0;
  }

  /** How much it took to set up. */
  long work() {
    return (long) cells * table.length / 200;
  }

  /** No more than this is won with the types from a place on. */
  long of(int i, long left) {
    if (left < 0) {
      return 0;
    }
    long r = grid == 0 ? (left * cells + room - 1) / room : (left + Nesting.SLACK) / grid;
    return table[i][(int) Math.min(cells, r)];
  }
}
