package headcourse.layout.yard.rows;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Random piles, small and large. */
final class RandomPile {
  private RandomPile() {}

  /** A pile of a few pieces for one or two small heads; in some nothing comes out. */
  static Pile small(long seed) {
    Random r = new Random(seed);
    int heads = 1 + r.nextInt(4) / 3;
    int pieces = 4 + r.nextInt(heads == 1 ? 4 : 3);
    List<Pile.Head> of = new ArrayList<>();
    for (int h = 0; h < heads; h++) {
      int min = 3 + r.nextInt(3);
      int joint = r.nextInt(2);
      int start = r.nextInt(4);
      int jamb = start + 3 + r.nextInt(heads == 1 ? 9 : 5);
      int clear = r.nextInt(3);
      int bearing = 1 + r.nextInt(4);
      int range = 2 + r.nextInt(5);
      PlainSide left =
          new PlainSide(start, joint, jamb, clear, bearing, bearing + range, bearing + range / 2);
      PlainSide right =
          r.nextInt(3) > 0
              ? left
              : new PlainSide(start, joint, jamb, clear, bearing, bearing + 1, bearing);
      of.add(
          head(
              r.nextInt(9) == 0 ? 2 : 1,
              r.nextInt(3) > 0,
              r.nextInt(6) == 0 ? 1 + r.nextInt(2) : 0,
              new long[] {min, min + 2 + r.nextInt(5)},
              r.nextInt(3) == 0 ? 1 + r.nextInt(3) : Long.MAX_VALUE,
              left,
              right));
    }
    List<Pile.Piece> list = new ArrayList<>();
    for (int i = 0; i < pieces; i++) {
      List<Boolean> fits = new ArrayList<>();
      of.forEach(x -> fits.add(r.nextInt(12) > 0));
      list.add(piece(3 + r.nextInt(9), fits));
    }
    return new Pile(list, of, r.nextInt(4), false);
  }

  static Pile.Piece piece(long usable, List<Boolean> fits) {
    return new Pile.Piece(usable, fits, fits);
  }

  /** A head with one way and no key to be had from the pile. */
  static Pile.Head head(
      int copies, boolean mirror, int each, long[] widths, long jump, RowSide left, RowSide right) {
    Pile.Way way = new Pile.Way(Pile.Row.bare(left, each), Pile.Row.bare(right, each), -1, null);
    return new Pile.Head(copies, mirror, widths[0], widths[1], jump, List.of(way));
  }

  /**
   * A pile of measured pieces 5 to 8½ in wide, in sixteenths, for one head with {@code aSide}
   * stones a side, 4 to 8 in of bearing.
   */
  static Pile large(long seed, int pieces, int aSide, boolean mirror) {
    Random r = new Random(seed);
    List<Pile.Piece> list = new ArrayList<>();
    for (int i = 0; i < pieces; i++) {
      list.add(piece(80 + r.nextInt(57), List.of(true)));
    }
    long start = 64;
    long jamb = start + aSide * 108L - 96;
    PlainSide side = new PlainSide(start, 0, jamb, 24, 64, 128, 96);
    Pile.Head head = head(1, mirror, aSide, new long[] {80, 136}, Long.MAX_VALUE, side, side);
    return new Pile(list, List.of(head), 8, false);
  }

  /**
   * A pile whose lengths go by eights for a head whose ends all lie between sums of them, so that
   * each side must be sawn: up to sixty pieces, up to twelve stones a side.
   */
  static Pile coarse(long seed) {
    Random r = new Random(seed);
    int pieces = 30 + r.nextInt(31);
    int aSide = Math.min(12, (pieces - 4) / 4 + r.nextInt(4));
    List<Pile.Piece> list = new ArrayList<>();
    for (int i = 0; i < pieces; i++) {
      list.add(piece(80 + 8 * r.nextInt(8), List.of(true)));
    }
    long jamb = 64 + aSide * 104L - 96;
    long bearing = 67 + 8 * r.nextInt(4);
    int range = r.nextInt(3);
    PlainSide side = new PlainSide(64, 0, jamb, 24, bearing, bearing + range, bearing + range / 2);
    boolean mirror = r.nextInt(3) > 0;
    int each = r.nextBoolean() ? aSide : 0;
    Pile.Head head = head(1, mirror, each, new long[] {60, 136}, Long.MAX_VALUE, side, side);
    return new Pile(list, List.of(head), 8, false);
  }
}
