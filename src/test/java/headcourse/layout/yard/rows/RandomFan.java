package headcourse.layout.yard.rows;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Random piles for fans, small and large. */
final class RandomFan {
  private RandomFan() {}

  /** A few pieces for one or two small heads, mostly fans; in some nothing comes out. */
  static Pile small(long seed) {
    Random r = new Random(seed);
    int heads = 1 + r.nextInt(4) / 3;
    int pieces = 4 + r.nextInt(heads == 1 ? 3 : 2);
    List<Pile.Head> of = new ArrayList<>();
    for (int h = 0; h < heads; h++) {
      of.add(head(r, heads == 1 ? 9 : 5, h > 0 && r.nextBoolean()));
    }
    List<Pile.Piece> list = new ArrayList<>();
    for (int i = 0; i < pieces; i++) {
      List<Boolean> fits = new ArrayList<>();
      of.forEach(x -> fits.add(r.nextInt(12) > 0));
      list.add(RandomPile.piece(4 + r.nextInt(9), fits));
    }
    return new Pile(list, of, r.nextInt(4), false);
  }

  /** Seven or eight pieces for one fan. */
  static Pile one(long seed) {
    Random r = new Random(seed);
    Pile.Head head = head(r, 10, false);
    List<Pile.Piece> list = new ArrayList<>();
    int pieces = 7 + r.nextInt(2);
    for (int i = 0; i < pieces; i++) {
      list.add(RandomPile.piece(4 + r.nextInt(11), List.of(r.nextInt(12) > 0)));
    }
    return new Pile(list, List.of(head), 8, false);
  }

  private static Pile.Head head(Random r, int run, boolean upright) {
    int min = 3 + r.nextInt(3);
    int joint = r.nextInt(2);
    int start = r.nextInt(4);
    int jamb = start + 3 + r.nextInt(run);
    int clear = r.nextInt(3);
    int first = jamb + 1 + r.nextInt(4);
    int last = first + r.nextInt(4);
    boolean onTop = r.nextInt(3) == 0;
    boolean alike = r.nextInt(3) > 0;
    List<Pile.Way> fans = new ArrayList<>();
    int each = r.nextInt(6) == 0 ? 1 + r.nextInt(2) : 0;
    int n = upright ? 1 : 1 + r.nextInt(3);
    for (int f = 0; f < n; f++) {
      double growth = upright ? 1 : 1.05 + r.nextDouble() / 2;
      RowSide left = side(start, joint, growth, onTop, jamb, clear, first, last);
      RowSide right =
          alike ? left : side(start, joint, growth, onTop, jamb, clear, first + 1, last + 1);
      long key = r.nextInt(3) == 0 ? 3 + r.nextInt(5) : -1;
      fans.add(new Pile.Way(Pile.Row.bare(left, each), Pile.Row.bare(right, each), key, null));
    }
    return new Pile.Head(
        r.nextInt(9) == 0 ? 2 : 1,
        r.nextInt(3) > 0,
        min,
        min + 2 + r.nextInt(5),
        r.nextInt(3) == 0 ? 1 + r.nextInt(3) : Long.MAX_VALUE,
        fans);
  }

  private static RowSide side(
      int start, int joint, double growth, boolean onTop, int jamb, int clear, int a, int b) {
    return new PlainFan(start, joint, growth, onTop, jamb, clear, a, b, (a + b) / 2);
  }

  /**
   * Measured pieces, in sixteenths, for one fan with stones 4 to 8 in wide, about {@code aSide} of
   * them a side, that strikes {@code depth} of its height below: from what the first stones need up
   * to what the last ones do.
   */
  static Pile large(long seed, int pieces, int aSide, double depth, boolean mirror) {
    Random r = new Random(seed);
    int start = 48;
    int jamb = start + aSide * 92 - 64;
    int longest = (int) ((jamb + 96) / depth) + 128;
    List<Pile.Piece> list = new ArrayList<>();
    for (int i = 0; i < pieces; i++) {
      list.add(RandomPile.piece(72 + r.nextInt(longest - 72), List.of(true)));
    }
    RowSide side =
        new PlainFan(start, 0, 1 + 1 / depth, false, jamb, 24, jamb + 32, jamb + 96, jamb + 64);
    Pile.Head head =
        RandomPile.head(1, mirror, 0, new long[] {64, 128}, Long.MAX_VALUE, side, side);
    return new Pile(list, List.of(head), 8, false);
  }
}
