package headcourse.stock.cutting;

/** The least length that two parts take side by side. */
final class PairLengths {
  private final long[][] least;

  PairLengths(Nesting nesting) {
    int types = nesting.square ? 0 : nesting.types;
    least = new long[types][types];
    for (long[] row : least) {
      java.util.Arrays.fill(row, Long.MAX_VALUE);
    }
    if (types == 0) {
      return;
    }
    for (int i = 0; i < nesting.typeOf.length; i++) {
      for (int j = 0; j < nesting.typeOf.length; j++) {
        long reach = nesting.distance[i][j] + nesting.extent[j];
        int s = nesting.typeOf[i];
        int t = nesting.typeOf[j];
        long both = Math.max(nesting.extent[i], reach);
        least[s][t] = Math.min(least[s][t], both);
        least[t][s] = Math.min(least[t][s], both);
      }
    }
    for (int i = 0; i < nesting.typeOf.length; i++) {
      // One alone.
      int t = nesting.typeOf[i];
      least[t][t] = Math.min(least[t][t], nesting.extent[i]);
    }
  }

  /** Of one of each, or of one where they are the same. */
  long least(int s, int t) {
    return least.length == 0 ? 0 : least[s][t];
  }
}
