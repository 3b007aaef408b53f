package headcourse.stock.pile;

import java.util.Arrays;

/**
 * Which ends go with a length sawn off in all: rows come to what their pieces are long together,
 * less that, and so many pieces are neither longer nor shorter than all there are allow.
 *
 * @param slack how much less than the most all rows may come to at most; negative for nowhere
 * @param bearing the least that the bearings are off their targets then, pm
 */
record EndRange(long slack, long bearing) {
  private static final long NONE = Long.MAX_VALUE / 8;

  static EndRange of(SweepSide[] sides, CoverTable all, long sawn) {
    int stones = 0;
    long most = 0;
    long reach = 0;
    for (SweepSide s : sides) {
      stones += s.copies * s.row.stones;
      most += s.copies * s.mostNeed();
      reach += s.copies * (s.mostNeed() - s.leastNeed());
    }
    long high = most + sawn - all.shortest(0, stones);
    long low = Math.max(0, most + sawn - all.longest(stones));
    // By how much less than the most: the least that bearings are off, side after side.
    long[] least = new long[(int) Math.max(0, Math.min(high, reach) + 1)];
    Arrays.fill(least, Math.min(1, least.length), least.length, NONE);
    for (SweepSide s : sides) {
      least = with(s, least);
    }
    long bearing = NONE;
    for (int d = (int) Math.min(low, least.length); d < least.length; d++) {
      bearing = Math.min(bearing, least[d]);
    }
    return new EndRange(high, bearing);
  }

  private static long[] with(SweepSide s, long[] before) {
    long[] out = new long[before.length];
    Arrays.fill(out, NONE);
    long last = s.row.end(NONE);
    for (int d = 0; d < out.length; d++) {
      for (long e = last; e >= s.row.side.firstEnd(); e--) {
        long to = d + s.copies * (last - e);
        if (to >= out.length) {
          break;
        }
        if (s.row.off(e) >= 0) {
          out[(int) to] = Math.min(out[(int) to], before[d] + s.copies * s.row.off(e));
        }
      }
    }
    return out;
  }
}
