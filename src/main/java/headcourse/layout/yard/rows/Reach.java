package headcourse.layout.yard.rows;

/**
 * What the rest of a side costs at least from a joint on: a backward dynamic programme over the
 * feet of its joints, each stone from the shortest piece there is, however often that is taken.
 */
final class Reach {
  /** Without a key the first joint stands on the centre line, its near edge a little beyond. */
  private static final int BEYOND = 256;

  private final RowSide side;
  private final Pile.Head head;
  private final int each;
  private final long widest;
  private final Layer[] layers;
  private final Store store;
  private final int h;
  private long steps;

  /** By foot, for stones that follow one rule; computed from the last foot inwards. */
  static final class Layer {
    private final long[] sawn;
    private final long[] bearing;
    private final long[] shortfall;
    private int done;

    Layer(long last) {
      int n = (int) Math.max(0, last + BEYOND + 1);
      sawn = new long[n];
      bearing = new long[n];
      shortfall = new long[n];
      done = n;
    }
  }

  /**
   * @param shared the layer of the stones that follow one rule, where another side has it; or null
   */
  Reach(Pile pile, int h, Pile.Row row, Store store, Layer shared) {
    this.side = row.side();
    this.head = pile.heads().get(h);
    this.each = row.each();
    this.store = store;
    this.h = h;
    int[] of = store.of(h, false);
    this.widest = of.length == 0 ? -1 : Math.min(head.max(), store.usable(of[of.length - 1]));
    layers = new Layer[each > 0 ? each : Math.max(1, side.regularFrom())];
    for (int i = 0; i < layers.length; i++) {
      layers[i] =
          each == 0 && i == layers.length - 1 && shared != null
              ? shared
              : new Layer(side.lastEnd());
    }
  }

  Layer shared() {
    return each > 0 ? null : layers[layers.length - 1];
  }

  /** The greatest width that some piece could give. */
  long widest() {
    return widest;
  }

  long steps() {
    return steps;
  }

  /** Whether the rest can't come out with stone {@code index} next. */
  boolean dead(int index, long foot) {
    return sawn(index, foot) >= Store.NEVER;
  }

  /** The least that is sawn off, all copies. */
  long sawn(int index, long foot) {
    Layer l = at(index, foot);
    return l == null ? Store.NEVER : l.sawn[(int) foot + BEYOND];
  }

  /** The least that the bearing is off, all copies, pm. */
  long bearing(int index, long foot) {
    Layer l = at(index, foot);
    return l == null ? Store.NEVER : l.bearing[(int) foot + BEYOND];
  }

  /** The least shortfall of spare, pm. */
  long shortfall(int index, long foot) {
    Layer l = at(index, foot);
    return l == null ? Store.NEVER : l.shortfall[(int) foot + BEYOND];
  }

  private Layer at(int index, long foot) {
    if (each > 0 && index > each || foot < -BEYOND || foot > side.lastEnd()) {
      return null;
    }
    int i = Math.min(index, layers.length) - 1;
    Layer l = layers[i];
    while (l.done > foot + BEYOND) {
      fill(l, i + 1, --l.done - BEYOND);
    }
    return l;
  }

  private void fill(Layer l, int index, int foot) {
    long sawn = Store.NEVER;
    long bearing = Store.NEVER;
    long shortfall = Store.NEVER;
    long most = Math.min(widest, side.lastEnd() - foot - side.joint());
    for (long w = head.min(); w <= most; w++) {
      long outer = foot + side.joint() + w;
      steps++;
      if (each == 0 || index == each) {
        long off = side.bearingOff(outer);
        if (off >= 0 && side.stands(index, foot, outer, true)) {
          long waste = store.waste(h, false, side.extent(index, foot, outer, true));
          if (waste < Store.NEVER) {
            sawn = Math.min(sawn, waste);
            bearing = Math.min(bearing, head.copies() * off);
            shortfall = Math.min(shortfall, side.shortfall(index, outer, true));
          }
        }
      }
      if (index != each && !dead(index + 1, outer) && side.stands(index, foot, outer, false)) {
        long waste = store.waste(h, false, side.extent(index, foot, outer, false));
        if (waste < Store.NEVER) {
          sawn = Math.min(sawn, waste + sawn(index + 1, outer));
          bearing = Math.min(bearing, bearing(index + 1, outer));
          long s = side.shortfall(index, outer, false);
          shortfall = Math.min(shortfall, Math.max(s, shortfall(index + 1, outer)));
        }
      }
    }
    l.sawn[foot + BEYOND] = sawn;
    l.bearing[foot + BEYOND] = bearing;
    l.shortfall[foot + BEYOND] = shortfall;
  }
}
