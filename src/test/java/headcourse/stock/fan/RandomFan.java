package headcourse.stock.fan;

import headcourse.stock.pile.Pile;
import headcourse.stock.pile.PileSide;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Random piles for fans, small and large. */
public final class RandomFan {
  private RandomFan() {}

  /** A few pieces for one or two small heads, mostly fans; in some nothing comes out. */
  public static FanPile small(long seed) {
    Random r = new Random(seed);
    int heads = 1 + r.nextInt(4) / 3;
    int pieces = 4 + r.nextInt(heads == 1 ? 3 : 2);
    List<FanPile.Head> of = new ArrayList<>();
    for (int h = 0; h < heads; h++) {
      of.add(head(r, heads == 1 ? 9 : 5, h > 0 && r.nextBoolean()));
    }
    List<Pile.Piece> list = new ArrayList<>();
    for (int i = 0; i < pieces; i++) {
      List<Boolean> fits = new ArrayList<>();
      of.forEach(x -> fits.add(r.nextInt(12) > 0));
      list.add(new Pile.Piece("P#" + (i + 1), 4 + r.nextInt(9), fits));
    }
    return new FanPile(list, of);
  }

  /** Seven or eight pieces for one fan. */
  static FanPile one(long seed) {
    Random r = new Random(seed);
    FanPile.Head head = head(r, 10, false);
    List<Pile.Piece> list = new ArrayList<>();
    int pieces = 7 + r.nextInt(2);
    for (int i = 0; i < pieces; i++) {
      list.add(new Pile.Piece("P#" + (i + 1), 4 + r.nextInt(11), List.of(r.nextInt(12) > 0)));
    }
    return new FanPile(list, List.of(head));
  }

  private static FanPile.Head head(Random r, int run, boolean upright) {
    int min = 3 + r.nextInt(3);
    int joint = r.nextInt(2);
    int start = r.nextInt(4);
    int jamb = start + 3 + r.nextInt(run);
    int clear = r.nextInt(3);
    int first = jamb + 1 + r.nextInt(4);
    int last = first + r.nextInt(4);
    boolean onTop = r.nextInt(3) == 0;
    boolean alike = r.nextInt(3) > 0;
    List<FanPile.Fan> fans = new ArrayList<>();
    int n = upright ? 1 : 1 + r.nextInt(3);
    for (int f = 0; f < n; f++) {
      double growth = upright ? 1 : 1.05 + r.nextDouble() / 2;
      PileSide left = side(start, joint, growth, onTop, jamb, clear, first, last);
      PileSide right =
          alike ? left : side(start, joint, growth, onTop, jamb, clear, first + 1, last + 1);
      fans.add(new FanPile.Fan(left, right, r.nextInt(3)));
    }
    return new FanPile.Head(
        r.nextInt(9) == 0 ? 2 : 1,
        r.nextInt(3) > 0,
        r.nextInt(6) == 0 ? 1 + r.nextInt(2) : 0,
        min,
        min + 2 + r.nextInt(5),
        r.nextInt(3) == 0 ? 1 + r.nextInt(3) : Long.MAX_VALUE,
        fans);
  }

  private static PileSide side(
      int start, int joint, double growth, boolean onTop, int jamb, int clear, int a, int b) {
    return new PlainFan(start, joint, growth, onTop, jamb, clear, a, b, (a + b) / 2);
  }

  /**
   * Measured pieces, in sixteenths, for one fan with stones 4 to 8 in wide, about {@code aSide} of
   * them a side, that strikes {@code depth} of its height below: from what the first stones need up
   * to what the last ones do.
   */
  static FanPile large(long seed, int pieces, int aSide, double depth, boolean mirror) {
    Random r = new Random(seed);
    int start = 48;
    int jamb = start + aSide * 92 - 64;
    int longest = (int) ((jamb + 96) / depth) + 128;
    List<Pile.Piece> list = new ArrayList<>();
    for (int i = 0; i < pieces; i++) {
      list.add(new Pile.Piece("P#" + (i + 1), 72 + r.nextInt(longest - 72), List.of(true)));
    }
    PileSide side =
        new PlainFan(start, 0, 1 + 1 / depth, false, jamb, 24, jamb + 32, jamb + 96, jamb + 64);
    FanPile.Head head =
        new FanPile.Head(
            1, mirror, 0, 64, 128, Long.MAX_VALUE, List.of(new FanPile.Fan(side, side, 0)));
    return new FanPile(list, List.of(head));
  }
}
