package headcourse.layout.side;

import java.util.function.LongPredicate;

/** Where the joint after one stone may stand, and how far out each width fits: a bit a tick. */
final class StoneMasks {
  private final FlatTerms terms;
  private final SideCheck check;
  private final Asked asked;
  private final long start;
  private final int index;
  private final int words;
  final long[] stands;
  private final long[] reach;
  private final long seat;
  private final long[] near;
  private final long[] far;

  /**
   * For one stone of a side.
   *
   * @param alike those of another stone whose widths keep the same rule, or null
   */
  StoneMasks(FlatTerms terms, Asked asked, long start, int words, int index, StoneMasks alike) {
    this.terms = terms;
    this.check = asked.check();
    this.asked = asked;
    this.start = start;
    this.index = index;
    this.words = words;
    this.stands = alike != null && check.alike() ? alike.stands : stands();
    if (alike != null) {
      this.reach = alike.reach;
      this.seat = alike.seat;
      this.near = alike.near;
      this.far = alike.far;
      return;
    }
    int widths = (int) (terms.widths().max() - terms.widths().min() + 1);
    this.reach = new long[widths];
    this.near = asked.counts() ? new long[widths] : null;
    this.far = asked.counts() ? new long[widths] : null;
    this.seat = asked.counts() ? seat() : 0;
    for (int w = 0; w < widths; w++) {
      long pitch = terms.joint() + terms.widths().min() + w;
      reach[w] = reach(pitch);
      if (asked.counts()) {
        near[w] = last(pitch, -1, Math.min(seat - 1, reach[w]));
        far[w] = last(pitch, seat - 1, reach[w]);
      }
    }
  }

  // Joints stand up to a foot and from another on, but for what is unsteady about these.
  private long[] stands() {
    long all = words * 64L;
    long in = turn(-1, all, at -> check.inside(index, start + at)) - 1;
    long from = turn(in, all, at -> !check.beyond(index, start + at));
    long ticks = check.unsteady(index, start, start + all - 1);
    long surelyIn = ticks == 0 ? in : away(in, true, -1, ticks);
    long notIn = ticks == 0 ? in + 1 : away(in, true, 1, ticks);
    long notBeyond = ticks == 0 ? from - 1 : away(from, false, -1, ticks);
    long surelyBeyond = ticks == 0 ? from : away(from, false, 1, ticks);
    long[] bits = new long[words];
    for (int k = 0; k < words; k++) {
      bits[k] = within(k, 0, surelyIn) | within(k, surelyBeyond, all);
    }
    for (long at = surelyIn + 1; at < surelyBeyond; at++) {
      if ((at < notIn || at > notBeyond) && check.jointStands(index, start + at)) {
        bits[(int) (at >> 6)] |= 1L << (at & 63);
      }
    }
    return bits;
  }

  /** The first place after one that holds where it no longer does. */
  private static long turn(long low, long high, LongPredicate holds) {
    while (high - low > 1) {
      long mid = (low + high) >>> 1;
      if (holds.test(mid)) {
        low = mid;
      } else {
        high = mid;
      }
    }
    return high;
  }

  /** The first place on the way that lies more than so many ticks along x from one. */
  private long away(long at, boolean farther, int way, long ticks) {
    long all = words * 64L;
    long to = Math.max(0, Math.min(all - 1, at));
    long edge = check.across(index, start + to, farther);
    while (to >= 0
        && to < all
        && Math.abs(check.across(index, start + to, farther) - edge) <= ticks) {
      to += way;
    }
    return to;
  }

  /** The bits of a word that lie between two places, both counted. */
  private static long within(int word, long from, long to) {
    long low = from - word * 64L;
    long high = to - word * 64L;
    if (low > 63 || high < 0 || from > to) {
      return 0;
    }
    long bits = -1L >>> (63 - Math.min(63, high));
    return low <= 0 ? bits : bits & -1L << low;
  }

  /** Where stones begin that have no return. */
  private long seat() {
    long at = 0;
    while (at < words * 64L && !asked.blanks().pastSeat(index, start + at)) {
      at++;
    }
    return at;
  }

  /** The last place up to one where a stone may begin that is not too long. */
  private long last(long pitch, long before, long to) {
    long good = before;
    long bad = to + 1;
    while (bad - good > 1) {
      long mid = Math.floorDiv(good + bad, 2);
      if (asked.blanks().tooLong(index, start + mid, start + mid + pitch)) {
        bad = mid;
      } else {
        good = mid;
      }
    }
    return good;
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

  /** The bits of a word where a joint may stand after a stone, too long for its blanks or not. */
  private long fits(int word, int width, long pitch, boolean tooLong) {
    long all = within(word, 0, reach[width] + pitch);
    if (near == null) {
      return tooLong ? 0 : all;
    }
    long fit =
        within(word, 0, near[width] + pitch) | within(word, seat + pitch, far[width] + pitch);
    return all & (tooLong ? ~fit : fit);
  }

  /**
   * Moves feet out by one stone; adds what stands and fits, and says whether any does.
   *
   * @param from a row of feet
   * @param fromWord the word it begins with
   * @param tooLong whether the stone is to be too long for its blanks
   * @param to the row that they are moved to
   * @param toWord the word it begins with
   */
  boolean place(long[] from, int fromWord, int width, boolean tooLong, long[] to, int toWord) {
    long pitch = terms.joint() + terms.widths().min() + width;
    int bit = (int) (pitch & 63);
    int shift = (int) (pitch >> 6) + fromWord;
    long any = 0;
    int least = Math.max(toWord, shift);
    int most = Math.min(toWord + to.length - 1, shift + from.length);
    long last = reach[width] + pitch;
    boolean plain = near == null;
    for (int k = least; k <= most; k++) {
      int i = k - shift;
      long moved = i < from.length ? from[i] << bit : 0;
      if (bit > 0 && i > 0) {
        moved |= from[i - 1] >>> (64 - bit);
      }
      if (moved == 0) {
        continue;
      }
      moved &= stands[k];
      if (!plain || last < k * 64L + 63) {
        moved &= fits(k, width, pitch, tooLong);
      }
      to[k - toWord] |= moved;
      any |= moved;
    }
    return any != 0;
  }
}
