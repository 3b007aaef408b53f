package headcourse.drawing;

/** Moves labels along a line so that none is nearer to its neighbour than a spacing. */
public final class LabelSpacing {
  private LabelSpacing() {}

  /**
   * Places in the same order, at least {@code spacing} apart, with the least sum of squared moves
   * (pooling of adjacent violators), then pushed into the room as a whole.
   *
   * @param wanted where each would like to be, ascending
   * @param spacing least distance
   * @param low least place
   * @param high greatest place; where the room is too short for all, labels run past it
   */
  public static double[] along(double[] wanted, double spacing, double low, double high) {
    double[] before = new double[wanted.length];
    for (int i = 1; i < before.length; i++) {
      before[i] = i * spacing;
    }
    return shifted(wanted, before, low, high);
  }

  /** The same with a distance of its own from each to the next; the last is of no use. */
  public static double[] along(double[] wanted, double[] spacings, double low, double high) {
    double[] before = new double[wanted.length];
    for (int i = 1; i < before.length; i++) {
      before[i] = before[i - 1] + spacings[i - 1];
    }
    return shifted(wanted, before, low, high);
  }

  private static double[] shifted(double[] wanted, double[] before, double low, double high) {
    int n = wanted.length;
    double[] mean = new double[n];
    int[] count = new int[n];
    int blocks = 0;
    for (int i = 0; i < n; i++) {
      // In coordinates shifted by all spacings before, the places need only ascend.
      mean[blocks] = wanted[i] - before[i];
      count[blocks] = 1;
      blocks++;
      while (blocks > 1 && mean[blocks - 2] > mean[blocks - 1]) {
        int c = count[blocks - 2] + count[blocks - 1];
        mean[blocks - 2] =
            (mean[blocks - 2] * count[blocks - 2] + mean[blocks - 1] * count[blocks - 1]) / c;
        count[blocks - 2] = c;
        blocks--;
      }
    }
    double[] places = new double[n];
    int i = 0;
    for (int b = 0; b < blocks; b++) {
      for (int k = 0; k < count[b]; k++, i++) {
        double y = Math.max(low, Math.min(high - before[n - 1], mean[b]));
        places[i] = Math.max(y, low) + before[i];
      }
    }
    return places;
  }
}
