package headcourse.sheet;

import java.util.Arrays;

/** Moves labels along a line so that none is nearer to its neighbour than a spacing. */
public final class Spread {
  private Spread() {}

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
    double[] offsets = new double[wanted.length];
    Arrays.setAll(offsets, i -> i * spacing);
    return shifted(wanted, offsets, low, high);
  }

  /**
   * The same for labels that begin at their places and are of unequal widths.
   *
   * @param wanted where each would like to begin, ascending
   * @param widths their widths
   * @param between least air between two of them
   * @param low where the first may begin at the least
   * @param end where the last must end; where the room is too short for all, labels run past it
   */
  public static double[] side(
      double[] wanted, double[] widths, double between, double low, double end) {
    double[] offsets = new double[wanted.length];
    double sum = 0;
    for (int i = 0; i < offsets.length; i++) {
      offsets[i] = sum;
      sum += widths[i] + between;
    }
    double last = widths.length == 0 ? 0 : widths[widths.length - 1];
    return shifted(wanted, offsets, low, end - last);
  }

  private static double[] shifted(double[] wanted, double[] offsets, double low, double high) {
    int n = wanted.length;
    double[] mean = new double[n];
    int[] count = new int[n];
    int blocks = 0;
    for (int i = 0; i < n; i++) {
      // In shifted coordinates y = x − offset the places need only ascend.
      mean[blocks] = wanted[i] - offsets[i];
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
        double y = Math.max(low, Math.min(high - offsets[n - 1], mean[b]));
        places[i] = y + offsets[i];
      }
    }
    return places;
  }

  /** The same without bounds. */
  public static double[] along(double[] wanted, double spacing) {
    double[] copy = Arrays.copyOf(wanted, wanted.length);
    return along(copy, spacing, -1e9, 1e9);
  }
}
