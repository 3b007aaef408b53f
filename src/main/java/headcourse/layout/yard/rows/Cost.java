package headcourse.layout.yard.rows;

import java.util.Arrays;

/**
 * What a choice costs, in the order in which it counts, but that length sawn off counts in two
 * places: first what is beyond the least by more than is given, last all of it.
 *
 * @param changes stones, copies counted, that are not as ticketed: another width or piece, one
 *     more, one less
 * @param moved stones ticketed that have another size or stand elsewhere, copies counted
 * @param shortfall the greatest shortfall of spare of any joint or end, pm
 * @param sawn length sawn off, ticks
 * @param imbalance difference of the sides, stone by stone, ticks; a stone without a partner counts
 *     whole; none where the sides need not be alike
 * @param bearing how far the bearings are from their target, pm
 */
public record Cost(
    int changes, int moved, long shortfall, long sawn, long imbalance, long bearing) {
  /** What costs nothing. */
  public static final Cost NONE = new Cost(0, 0, 0, 0, 0, 0);

  /** How many of the parts come before the difference of the sides. */
  static final int LEADING = 4;

  /** How many parts there are. */
  static final int PARTS = 7;

  /**
   * The parts one by one as they count.
   *
   * @param cap length sawn off that counts as none
   */
  long[] parts(long cap) {
    return new long[] {
      changes, moved, shortfall, Math.max(0, sawn - cap), imbalance, sawn, bearing
    };
  }

  /**
   * Compares as they count.
   *
   * @param cap length sawn off that counts as none
   */
  public int compare(Cost other, long cap) {
    return compare(other, cap, PARTS);
  }

  /** Compares as many parts as are given. */
  int compare(Cost other, long cap, int first) {
    return Arrays.compare(parts(cap), 0, first, other.parts(cap), 0, first);
  }
}
