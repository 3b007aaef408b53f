package headcourse.layout.flat;

/** Where the joint after one stone may stand, and how far out each width fits: a bit a tick. */
final class StoneMasks {
  private final FlatTerms terms;
  private final SideCheck check;
  private final long start;
  private final int index;
  private final int words;
  private final long[] stands;
  private final long[] reach;

  StoneMasks(FlatTerms terms, SideCheck check, long start, int words, int index) {
    this.terms = terms;
    this.check = check;
    this.start = start;
    this.index = index;
    this.words = words;
    this.stands = new long[words];
    this.reach = new long[(int) (terms.max() - terms.min() + 1)];
    for (long at = 0; at < words * 64L; at++) {
      if (check.jointStands(index, start + at)) {
        stands[(int) (at >> 6)] |= 1L << (at & 63);
      }
    }
    for (int w = 0; w < reach.length; w++) {
      reach[w] = reach(terms.joint() + terms.min() + w);
    }
  }

  /** Fanned stones grow outwards, so what fits does so up to some foot; upright ones anywhere. */
  private long reach(long pitch) {
    if (index == 1) {
      return check.stoneFits(1, start, start + pitch) ? 0 : -1;
    }
    long good = -1;
    long bad = words * 64L;
    while (bad - good > 1) {
      long mid = (good + bad) >>> 1;
      if (check.stoneFits(index, start + mid, start + mid + pitch)) {
        good = mid;
      } else {
        bad = mid;
      }
    }
    return good;
  }

  /**
   * Moves feet out by one stone; keeps what stands and fits, and says whether any does.
   *
   * @param from a row of feet
   * @param fromWord the word it begins with
   * @param to the row that they are moved to
   * @param toWord the word it begins with
   */
  boolean place(long[] from, int fromWord, int width, long[] to, int toWord) {
    long pitch = terms.joint() + terms.min() + width;
    int bit = (int) (pitch & 63);
    int shift = (int) (pitch >> 6) + fromWord;
    long last = reach[width] + pitch;
    long any = 0;
    int least = Math.max(toWord, shift);
    int most = Math.min(toWord + to.length - 1, shift + from.length);
    for (int k = least; k <= most; k++) {
      int i = k - shift;
      long moved = i < from.length ? from[i] << bit : 0;
      if (bit > 0 && i > 0) {
        moved |= from[i - 1] >>> (64 - bit);
      }
      moved &= stands[k];
      if (last < k * 64L + 63) {
        moved &= last < k * 64L ? 0 : -1L >>> (63 - (last - k * 64L));
      }
      to[k - toWord] = moved;
      any |= moved;
    }
    return any != 0;
  }
}
