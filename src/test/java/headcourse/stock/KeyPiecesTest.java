package headcourse.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.stock.PieceMatch.Demand;
import headcourse.testing.Seeds;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Pieces for keys, held against handing out all pieces at once. */
class KeyPiecesTest {
  private static final int RUNS = Seeds.of(400);

  private static List<ChangeProblem.Piece> pieces(Random r, int heads) {
    List<ChangeProblem.Piece> out = new ArrayList<>();
    for (int n = 4 + r.nextInt(6); n > 0; n--) {
      boolean[] fits = new boolean[heads];
      boolean[] key = new boolean[heads];
      for (int h = 0; h < heads; h++) {
        fits[h] = r.nextInt(4) > 0;
        key[h] = fits[h] && r.nextBoolean();
      }
      out.add(new ChangeProblem.Piece("C" + n, 4 + r.nextInt(8), fits, key));
    }
    return out;
  }

  private static long sawn(List<ChangeProblem.Piece> pieces, List<Demand> demands, boolean[] held) {
    int[] of = new PieceMatch(pieces).match(demands, held);
    if (of == null) {
      return Long.MAX_VALUE / 2;
    }
    long sum = 0;
    for (int d = 0; d < of.length; d++) {
      sum += pieces.get(of[d]).usable() - demands.get(d).extent();
    }
    return sum;
  }

  @Test
  void oneOfTheChoicesIsBest() {
    int served = 0;
    int several = 0;
    for (long seed = 0; seed < RUNS; seed++) {
      Random r = new Random(seed);
      int heads = 1 + r.nextInt(3);
      List<ChangeProblem.Piece> pieces = pieces(r, heads);
      long[] widths = new long[heads];
      int[] copies = new int[heads];
      List<Demand> keys = new ArrayList<>();
      List<Demand> stones = new ArrayList<>();
      for (int h = 0; h < heads; h++) {
        copies[h] = 1 + r.nextInt(2);
        widths[h] = r.nextInt(5) == 0 ? -1 : 4 + r.nextInt(5);
        for (int c = 0; widths[h] >= 0 && c < copies[h]; c++) {
          keys.add(new Demand(widths[h], h, true));
        }
        for (int n = r.nextInt(3); n > 0; n--) {
          stones.add(new Demand(3 + r.nextInt(7), h, false));
        }
      }
      List<Demand> all = new ArrayList<>(keys);
      all.addAll(stones);
      long best = sawn(pieces, all, new boolean[pieces.size()]);
      KeyPieces.Choices choices = KeyPieces.of(pieces, widths, copies, 1000);
      long least = Long.MAX_VALUE / 2;
      long before = 0;
      for (KeyPieces.Choice c : choices.all()) {
        boolean[] held = new boolean[pieces.size()];
        for (int h = 0; h < heads; h++) {
          assertEquals(widths[h] >= 0, c.keys().get(h) != null, "seed " + seed);
          Arrays.stream(c.keys().get(h) == null ? new int[0] : c.keys().get(h))
              .forEach(p -> held[p] = true);
        }
        assertTrue(before <= c.sawn(), "seed " + seed);
        before = c.sawn();
        least = Math.min(least, c.sawn() + sawn(pieces, stones, held));
      }
      assertTrue(choices.complete());
      assertEquals(best, Math.min(least, Long.MAX_VALUE / 2), "seed " + seed);
      served += best < Long.MAX_VALUE / 2 ? 1 : 0;
      several += choices.all().size() > 1 ? 1 : 0;
    }
    assertTrue(served > RUNS / 5 && several > RUNS / 8, served + " served, " + several);
  }

  @Test
  void saysWhereNotAllWereLookedAt() {
    boolean[] yes = {true};
    List<ChangeProblem.Piece> two =
        List.of(
            new ChangeProblem.Piece("C1", 9, yes, yes),
            new ChangeProblem.Piece("C2", 8, new boolean[] {false}, yes));
    assertEquals(2, KeyPieces.of(two, new long[] {8}, new int[] {1}, 10).all().size());
    KeyPieces.Choices one = KeyPieces.of(two, new long[] {8}, new int[] {1}, 1);
    assertEquals(1, one.all().size());
    assertEquals(false, one.complete());
  }
}
