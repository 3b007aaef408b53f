package headcourse.stock.pile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.testing.Seeds;
import org.junit.jupiter.api.Test;

/**
 * The bounds by prices of the pieces and by halves of the ends, where nothing goes without them.
 */
class PricedPileTest {
  private static final long STEPS = 2_000_000;
  static final Effort ALWAYS = new Effort(-1, -1, Long.MAX_VALUE, 1_000, 0);

  /** A search without any of it, to the end, on piles for small heads. */
  @Test
  void aPlainSearchFindsTheSame() {
    int solved = 0;
    int piles = Seeds.of(400);
    for (long seed = 0; seed < piles; seed++) {
      solved += same(AwkwardPile.small(seed), seed);
      solved += same(RandomPile.small(seed), seed);
    }
    assertTrue(solved > piles / 2, "too few piles come out: " + solved);
  }

  /** The same for up to sixty pieces and one or two heads. */
  @Test
  void aPlainSearchFindsTheSameInLargePiles() {
    int solved = 0;
    int piles = Seeds.of(10);
    for (long seed = 300; seed < 300 + piles; seed++) {
      solved += same(AwkwardPile.of(seed), seed);
    }
    assertTrue(solved > piles / 4, "too few piles come out: " + solved);
  }

  /** Whether both are proved; then they cost the same. No bound is above what was found. */
  private static int same(Pile pile, long seed) {
    LevelSearch priced = search(pile, ALWAYS);
    LevelSearch plain = search(pile, new Effort(STEPS, 0, 1, 0, 0));
    if (priced.proved() && plain.proved()) {
      assertEquals(cost(plain), cost(priced), "seed " + seed);
      return priced.best() == null ? 0 : 1;
    }
    if (priced.best() != null) {
      assertTrue(plain.floor().compareTo(cost(priced)) <= 0, "seed " + seed);
    }
    if (plain.best() != null) {
      assertTrue(priced.floor().compareTo(cost(plain)) <= 0, "seed " + seed);
    }
    return 0;
  }

  static LevelSearch search(Pile pile, Effort effort) {
    LevelSearch levels = new LevelSearch(pile, new PileTypes(pile), null, STEPS / 4, effort);
    levels.run();
    return levels;
  }

  static Pile.Cost cost(LevelSearch levels) {
    return levels.best() == null ? null : levels.best().cost();
  }
}
