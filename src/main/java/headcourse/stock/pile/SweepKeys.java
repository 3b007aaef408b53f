package headcourse.stock.pile;

/** What matters, for the pieces still to come, of those given so far. */
final class SweepKeys {
  private SweepKeys() {}

  /**
   * The state before a type.
   *
   * @param openIn by head: the slot of the stone that was begun, or −1
   */
  static SearchState of(int t, SweepBounds bounds, int[] openIn) {
    SweepSide[] sides = bounds.sides();
    int heads = openIn.length;
    long[] key = new long[1 + 2 * heads + 4 * sides.length];
    key[0] = t;
    for (int h = 0; h < heads; h++) {
      key[1 + 2 * h] = openIn[h];
      if (openIn[h] >= 0) {
        Batch b = sides[openIn[h] / 2].last(openIn[h] % 2 == 1);
        key[2 + 2 * h] = b.usable * 64 + b.missing();
      }
    }
    int at = 1 + 2 * heads;
    for (int q = 0; q < sides.length; q++) {
      sides[q].key(key, at + 4 * q);
    }
    for (int h = 0; h < heads; h++) {
      if (openIn[h] < 0 && bounds.alike(h)) {
        inOrder(key, at + 8 * h);
      }
    }
    return new SearchState(key);
  }

  /** Sides under the same rules may change places. */
  private static void inOrder(long[] key, int at) {
    int i = 0;
    while (i < 4 && key[at + i] == key[at + 4 + i]) {
      i++;
    }
    if (i < 4 && key[at + i] < key[at + 4 + i]) {
      for (int k = at; k < at + 4; k++) {
        long was = key[k];
        key[k] = key[k + 4];
        key[k + 4] = was;
      }
    }
  }
}
