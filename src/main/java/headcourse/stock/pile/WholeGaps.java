package headcourse.stock.pile;

import java.util.Arrays;

/** The least sum of differences of so many pairs of pieces, from some piece on. */
final class WholeGaps {
  private static final long NONE = Long.MAX_VALUE / 4;

  private final int[] firstOf;
  private final long[][] least;

  WholeGaps(PileTypes types) {
    int pieces = Arrays.stream(types.count).sum();
    long[] length = new long[pieces];
    firstOf = new int[types.size() + 1];
    int k = 0;
    for (int t = 0; t < types.size(); t++) {
      firstOf[t] = k;
      for (int i = 0; i < types.count[t]; i++) {
        length[k++] = types.usable[t];
      }
    }
    firstOf[types.size()] = k;
    least = new long[pieces + 2][pieces / 2 + 2];
    for (long[] row : least) {
      Arrays.fill(row, 1, row.length, NONE);
    }
    for (int i = pieces - 2; i >= 0; i--) {
      long gap = length[i + 1] - length[i];
      for (int m = 1; m < least[i].length; m++) {
        least[i][m] = Math.min(least[i + 1][m], least[i + 2][m - 1] + gap);
      }
    }
  }

  /** Of so many pairs from a type on, of which some pieces are used; huge where there are none. */
  long least(int type, int used, int pairs) {
    int from = firstOf[type] + used;
    return pairs >= least[from].length ? NONE : least[from][pairs];
  }
}
