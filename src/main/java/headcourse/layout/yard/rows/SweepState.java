package headcourse.layout.yard.rows;

/** So many stones of each side given their pieces, the shortest first. */
final class SweepState extends LayeredSearch.State {
  private final SweepSide[] sides;
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

  /** The piece that is next to be taken or left. */
  int at;

  /** What pairs of the sides differ by so far. */
  long gap;

  /** No less is sawn off in all. */
  long low;

  SweepState(SweepSide[] sides) {
    this.sides = sides;
    before = null;
    taker = -1;
    pieces = null;
    cover = 0;
    count = new int[sides.length];
    sum = new long[sides.length];
    last = new long[sides.length];
    waste = 0;
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
    count = from.count.clone();
    sum = from.sum.clone();
    last = from.last.clone();
    count[taker]++;
    sum[taker] += cover;
    last[taker] = cover;
  }

  /** Whether all sides have their stones. */
  boolean whole() {
    for (int u = 0; u < count.length; u++) {
      if (count[u] < sides[u].stones) {
        return false;
      }
    }
    return true;
  }

  @Override
  int layer() {
    return at;
  }

  @Override
  long[] key() {
    long[] of = new long[3 * sides.length];
    for (int u = 0; u < sides.length; u++) {
      boolean counts = count[u] == sides[u].stones || sides[u].jump < Store.NEVER;
      of[3 * u] = count[u];
      of[3 * u + 1] = sum[u];
      of[3 * u + 2] = counts ? last[u] : 0;
    }
    return of;
  }
}
