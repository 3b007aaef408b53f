package headcourse.layout.yard.rows;

import java.util.Arrays;

/** So many stones of each side given their pieces, the shortest first. */
final class SweepState {
  final SweepState before;

  /** Which side took which piece, with the next ones for its copies. */
  final int taker;

  final int[] pieces;
  final long cover;

  final int[] count;
  final long[] sum;
  final long[] last;

  /** What pieces taken are longer than their stones may be. */
  final long waste;

  /** What pairs of the sides differ by so far. */
  long gap;

  /** No less is sawn off in all. */
  long low;

  SweepState(int sides) {
    before = null;
    taker = -1;
    pieces = null;
    cover = 0;
    count = new int[sides];
    sum = new long[sides];
    last = new long[sides];
    waste = 0;
  }

  SweepState(SweepState from, int taker, int[] pieces, long cover, long waste) {
    before = from;
    this.taker = taker;
    this.pieces = pieces;
    this.cover = cover;
    this.waste = from.waste + waste;
    gap = from.gap;
    count = from.count.clone();
    sum = from.sum.clone();
    last = from.last.clone();
    count[taker]++;
    sum[taker] += cover;
    last[taker] = cover;
  }

  /** What matters of it for the pieces still to come. */
  record Key(long[] of) {
    @Override
    public boolean equals(Object o) {
      return o instanceof Key k && Arrays.equals(of, k.of);
    }

    @Override
    public int hashCode() {
      return mix(Arrays.hashCode(of));
    }

    static int mix(int x) {
      int y = x * 0x9E3779B9;
      return y ^ y >>> 15;
    }
  }
}
