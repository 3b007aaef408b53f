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

  /** Moves feet out by one stone; keeps what stands and fits, and says whether any does. */
  boolean place(long[] from, int width, long[] to) {
    long pitch = terms.joint() + terms.min() + width;
    int word = (int) (pitch >> 6);
    int bit = (int) (pitch & 63);
    long last = reach[width] + pitch;
    long any = 0;
    for (int k = words - 1; k >= word; k--) {
      long moved = from[k - word] << bit;
      if (bit > 0 && k > word) {
        moved |= from[k - word - 1] >>> (64 - bit);
      }
      moved &= stands[k];
      if (last < k * 64L + 63) {
        moved &= last < k * 64L ? 0 : -1L >>> (63 - (last - k * 64L));
      }
      to[k] = moved;
      any |= moved;
    }
    return any != 0;
  }
}
