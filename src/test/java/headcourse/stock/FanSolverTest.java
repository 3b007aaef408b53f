package headcourse.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.testing.Seeds;
import org.junit.jupiter.api.Test;

/** The choice for fans against every choice there is, and a greedy hand. */
class FanSolverTest {
  private static final int PILES = Seeds.of(600);

  @Test
  void costEqualsTheLeastOfAllThereAre() {
    int solved = 0;
    for (long seed = 0; seed < PILES; seed++) {
      FanPile pile = RandomFan.small(seed);
      FanPile.Answer ours = FanSolver.solve(pile, 2_000_000);
      FanChecker.check(pile, ours, "seed " + seed);
      assertTrue(ours.stones().proved(), "seed " + seed);
      assertEquals(new FanBrute(pile).least(), ours.stones().cost(), "seed " + seed);
      solved += ours.stones().heads().isEmpty() ? 0 : 1;
    }
    assertTrue(solved > PILES / 4, "too few piles come out: " + solved);
  }
}
