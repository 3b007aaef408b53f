package headcourse.layout.yard.rows;

import java.util.function.IntFunction;

/**
 * What the rest of a side costs at least from a joint on: a backward dynamic programme over the
 * feet of its joints, each stone from the shortest piece there is, however often that is taken.
 */
final class Reach {
  /** Without a key the first joint stands on the centre line, its near edge a little beyond. */
  private static final int BEYOND = 256;

  static final long[] DEAD = {Store.NEVER, Store.NEVER, Store.NEVER};

  /** The greatest width that some piece could give. */
  final long widest;

  private final RowSide side;
  private final Pile.Head head;
  private final int each;
  private final Store store;
  private final int h;

  /** By stone, the last for all that follow one rule: the least by foot. */
  private final long[][][] layers;

  /**
   * @param layer the layer of a stone, or for number 0 that of all which follow one rule
   */
  Reach(Store store, int h, Pile.Head head, Pile.Row row, IntFunction<long[][]> layer) {
    this.store = store;
    this.h = h;
    this.head = head;
    this.side = row.side();
    this.each = row.each();
    this.widest = Math.min(head.max(), store.longest(store.of(h, false)));
    layers = new long[each > 0 ? each : Math.max(1, side.regularFrom())][][];
    for (int i = 0; i < layers.length; i++) {
      layers[i] = layer.apply(each == 0 && i == layers.length - 1 ? 0 : i + 1);
    }
  }

  /** A layer in which nothing is known yet. */
  static long[][] layer(RowSide side) {
    return new long[(int) Math.max(0, side.lastEnd() + BEYOND + 1)][];
  }

  /** Whether the rest can't come out with stone {@code index} next. */
  boolean dead(int index, long foot) {
    return least(index, foot)[0] >= Store.NEVER;
  }

  /**
   * With stone {@code index} next the least that is sawn off, all copies; that the bearing is off,
   * all copies, pm; and the least shortfall of spare, pm.
   */
  long[] least(int index, long foot) {
    if (each > 0 && index > each || foot < -BEYOND || foot > side.lastEnd()) {
      return DEAD;
    }
    int i = Math.min(index, layers.length) - 1;
    long[][] l = layers[i];
    int at = (int) foot + BEYOND;
    if (l[at] == null) {
      l[at] = from(i + 1, foot);
    }
    return l[at];
  }

  private long[] from(int index, long foot) {
    long[] least = DEAD.clone();
    long most = Math.min(widest, side.lastEnd() - foot - side.joint());
    for (long w = head.min(); w <= most; w++) {
      long outer = foot + side.joint() + w;
      // A sixteenth of a step of the search.
      store.steps.cells(Steps.CELLS / 16);
      long off = each == 0 || index == each ? side.bearingOff(outer) : -1;
      if (off >= 0) {
        stone(index, foot, outer, true, new long[] {0, head.copies() * off, 0}, least);
      }
      if (index != each && !dead(index + 1, outer)) {
        stone(index, foot, outer, false, least(index + 1, outer), least);
      }
    }
    return least;
  }

  /** Weighs a stone with what the rest costs from its outer joint on. */
  private void stone(int index, long inner, long outer, boolean last, long[] rest, long[] least) {
    if (!side.stands(index, inner, outer, last)) {
      return;
    }
    long waste = store.waste(h, false, side.extent(index, inner, outer, last));
    if (waste < Store.NEVER) {
      least[0] = Math.min(least[0], waste + rest[0]);
      least[1] = Math.min(least[1], rest[1]);
      least[2] = Math.min(least[2], Math.max(rest[2], side.shortfall(index, outer, last)));
    }
  }
}
