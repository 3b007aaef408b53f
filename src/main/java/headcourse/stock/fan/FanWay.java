package headcourse.stock.fan;

/**
 * One way to set a head: a striking point, with the ends aimed at on both sides.
 *
 * @param fan place of the striking point in the head's list
 * @param sawn what is sawn off the keys
 * @param left what the left side can do
 * @param right what the right side can do
 * @param pairs what both can do together where they are to be alike, or null where not known
 */
record FanWay(int fan, long sawn, FanReach left, FanReach right, FanPairs pairs) {
  FanReach side(int s) {
    return s == 0 ? left : right;
  }

  /** The least that is sawn off. */
  long leastSawn() {
    return sawn + left.sawn(0, 0) + right.sawn(0, 0);
  }

  /** The least that the bearings are off, pm. */
  long leastOff() {
    return left.off(0, 0) + right.off(0, 0);
  }

  /** Whether both sides can come to an end at all. */
  boolean comesOut() {
    return left.sawn(0, 0) < FanReach.NEVER && right.sawn(0, 0) < FanReach.NEVER;
  }

  /** The least that both sides must still differ by, from such feet on. */
  long gap(int l, int r) {
    long low = (left.firstEnd - l) - (long) (right.lastEnd - r);
    long high = (left.lastEnd - l) - (long) (right.firstEnd - r);
    long gap = Math.max(0, Math.max(low, -high));
    // With as many stones on both sides; else one of them counts whole.
    return Math.min(gap, left.rows.min);
  }

  /** Whether both sides may be so near alike with nothing sawn off, as far as that is known. */
  boolean paired(int stones, int l, int r, long differ) {
    long start = left.rows.start();
    return pairs == null
        || stones < left.rows.rules() - 1
        || pairs.within(stones, start + l, start + r, differ);
  }
}
