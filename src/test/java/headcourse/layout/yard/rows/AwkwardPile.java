package headcourse.layout.yard.rows;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Random piles that are awkward to set from: few pieces or up to sixty, all of nearly one length,
 * of a coarse step, or longer than a stone may be; neighbours that may hardly differ; unequal
 * sides; heads of up to twenty-four stones, one or two of them, some over two openings.
 */
final class AwkwardPile {
  private final Random r;
  private final int unit;
  private final int heads;
  private final boolean small;
  private final List<Pile.Head> of = new ArrayList<>();
  private long least = Long.MAX_VALUE;
  private long greatest;
  private int stones;

  private AwkwardPile(long seed, boolean small, int number) {
    r = new Random(seed * 7_919 + 17);
    // Ticks to about an inch: a coarse grid, sixteenths, millimetres, half millimetres.
    unit = small ? 2 : new int[] {4, 16, 25, 50}[r.nextInt(4)];
    heads = number > 0 ? number : 1 + r.nextInt(4) / 3;
    this.small = small;
  }

  /** The pile of a seed; in some nothing comes out. */
  static Pile of(long seed) {
    return new AwkwardPile(seed, false, 0).make();
  }

  /** A few pieces on a coarse grid for a small head. */
  static Pile small(long seed) {
    return new AwkwardPile(seed, true, 1).make();
  }

  /** Sixty to eighty pieces for three heads. */
  static Pile large(long seed) {
    return new AwkwardPile(seed, false, 3).make();
  }

  private Pile make() {
    for (int h = 0; h < heads; h++) {
      head();
    }
    int spare = small ? r.nextInt(3) : new int[] {0, 1, 2, 4, 8, 30}[r.nextInt(6)];
    int pieces =
        heads > 2 ? Math.max(60, Math.min(80, stones + spare)) : Math.min(60, stones + spare);
    long low = least - r.nextInt(unit) + (r.nextInt(3) == 0 ? 0 : (greatest - least) / 3);
    long high = Math.max(low + 1, greatest + r.nextInt(3) * unit);
    int kind = r.nextInt(5);
    long one = low + r.nextInt((int) (high - low));
    int step = kind == 1 ? Math.max(2, unit / 2) : 1;
    List<Pile.Piece> list = new ArrayList<>();
    for (int i = 0; i < pieces; i++) {
      long usable =
          switch (kind) {
            case 0 -> one + r.nextInt(3);
            case 1 -> low + r.nextInt((int) (high - low)) / step * step;
            // Two lengths and little between them.
            case 2 -> (r.nextBoolean() ? low : high) + r.nextInt(Math.max(1, unit / 4));
            default -> low + r.nextInt((int) (high - low));
          };
      List<Boolean> fits = new ArrayList<>();
      for (int h = 0; h < heads; h++) {
        fits.add(heads == 1 || r.nextInt(10) > 0);
      }
      list.add(RandomPile.piece(usable, fits));
    }
    return new Pile(list, of, unit / 2, false);
  }

  private void head() {
    int copies = r.nextInt(8) == 0 ? 2 : 1;
    int most = heads == 1 ? 12 : heads == 2 ? 7 : 8;
    int aSide = small ? 2 / copies + r.nextInt(2) : 2 + r.nextInt(most / copies - 1);
    long min = 4L * unit + r.nextInt(unit);
    long max = min + unit * (1 + r.nextInt(4)) + r.nextInt(unit);
    long mean = (min + max) / 2;
    long joint = r.nextInt(3) == 0 ? Math.max(1, unit / 4) : 0;
    long start = 2L * unit + r.nextInt(unit);
    long clear = unit / 2 + r.nextInt(unit);
    long reach = start + aSide * (mean + joint);
    PlainSide left = side(start, joint, reach, clear);
    PlainSide right = r.nextInt(3) > 0 ? left : side(start, joint, reach, clear);
    long jump =
        switch (r.nextInt(4)) {
          case 0 -> 1 + r.nextInt(unit);
          case 1 -> Math.max(1, unit / 8);
          default -> Long.MAX_VALUE;
        };
    int each = r.nextInt(3) == 0 ? aSide : 0;
    of.add(
        RandomPile.head(copies, r.nextInt(3) > 0, each, new long[] {min, max}, jump, left, right));
    least = Math.min(least, min);
    greatest = Math.max(greatest, max);
    stones += 2 * copies * aSide;
  }

  private PlainSide side(long start, long joint, long reach, long clear) {
    long bearing = 2L * unit + r.nextInt(4 * unit);
    int range = r.nextInt(3) == 0 ? r.nextInt(3) : r.nextInt(3 * unit);
    long target = bearing + (range == 0 ? 0 : r.nextInt(range + 1));
    return new PlainSide(start, joint, reach - bearing, clear, bearing, bearing + range, target);
  }
}
