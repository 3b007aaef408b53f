package headcourse.layout.yard.rows;

import java.util.Arrays;
import java.util.stream.Stream;

/** So many stones of each side given their pieces, the shortest first. */
final class SweepState extends LayeredSearch.State {
  private final SweepSide[] sides;
  final SweepState before;

  /** Which side took which piece, with the next ones for its copies; −1 before the first. */
  int taker = -1;

  int[] pieces;
  long cover;

  final int[] count;
  final long[] sum;

  /** The longest stone of each side; without any, longer than all. */
  final long[] last;

  /** How many stones of all sides are still to come. */
  private int open;

  /** What pieces taken are longer than their stones may be. */
  long waste;

  /** The piece that is next to be taken or left. */
  int at;

  /** What pairs of the sides differ by so far. */
  long gap;

  /** No less is sawn off in all. */
  long low;

  SweepState(SweepSide[] sides) {
    this.sides = sides;
    before = null;
    count = new int[sides.length];
    sum = new long[sides.length];
    last = new long[sides.length];
    Arrays.fill(last, SweepSide.FREE);
    open = Stream.of(sides).mapToInt(x -> x.stones).sum();
  }

  SweepState(SweepState from, int taker, int[] pieces, long cover, long waste, int at) {
    sides = from.sides;
    before = from;
    this.taker = taker;
    this.pieces = pieces;
    this.cover = cover;
    this.waste = from.waste + waste;
    this.at = at;
    gap = from.gap;
    open = from.open - 1;
    count = from.count.clone();
    sum = from.sum.clone();
    last = from.last.clone();
    count[taker]++;
    sum[taker] += cover;
    last[taker] = cover;
  }

  /** Whether all sides have their stones. */
  boolean whole() {
    return open == 0;
  }

  @Override
  int layer() {
    return at;
  }

  @Override
  long[] key() {
    long[] of = new long[3 * sides.length];
    for (int u = 0; u < sides.length; u++) {
      boolean steep = sides[u].jump < SweepSide.FREE;
      boolean counts = steep && count[u] > 0 || count[u] == sides[u].stones;
      of[3 * u] = count[u];
      of[3 * u + 1] = sum[u];
      of[3 * u + 2] = counts ? last[u] : 0;
    }
    return of;
  }
}
