package headcourse.stock.fan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.stock.pile.Pile;
import headcourse.testing.Seeds;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The choice for fans against every choice there is, and a greedy hand. */
class FanSolverTest {
  private static final int PILES = Seeds.of(250);
  private static final int MODELS = Seeds.of(6);

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

  /** Choco 5.0.0 on the same model, written anew, with a few more pieces than can be tried out. */
  @Test
  void costEqualsThatOfAGeneralSolver() {
    int solved = 0;
    for (long seed = 0; seed < MODELS; seed++) {
      FanPile pile = RandomFan.one(seed);
      FanPile.Answer ours = FanSolver.solve(pile, 2_000_000);
      FanChecker.check(pile, ours, "seed " + seed);
      assertTrue(ours.stones().proved(), "seed " + seed);
      assertEquals(ConstraintFan.least(pile, 60), ours.stones().cost(), "seed " + seed);
      solved += ours.stones().heads().isEmpty() ? 0 : 1;
    }
    assertTrue(solved > MODELS / 4, "too few piles come out: " + solved);
  }

  @Test
  void neverWorseThanAGreedyHand() {
    int compared = 0;
    for (long seed = 0; seed < 1_500; seed++) {
      FanPile pile = RandomFan.small(seed);
      compared += atLeastAsGood(pile, 200_000, "small " + seed);
    }
    for (long seed = 0; seed < 12; seed++) {
      FanPile pile = RandomFan.large(seed, 60, 8, 6, seed % 2 == 0);
      compared += atLeastAsGood(pile, 5_000, "large " + seed);
    }
    assertTrue(compared > 100, "the hand came out only " + compared + " times");
  }

  private static int atLeastAsGood(FanPile pile, long steps, String at) {
    long hand = new GreedyFan(pile).sawn();
    if (hand < 0) {
      return 0;
    }
    Pile.Answer ours = FanSolver.solve(pile, steps).stones();
    assertTrue(!ours.heads().isEmpty() && ours.cost().sawn() <= hand, at);
    return 1;
  }

  /** Measured pieces, a fan over a wide opening: exact, with proof. */
  @ParameterizedTest
  @CsvSource({"24, 6, 4", "30, 6, 8", "40, 6, 4", "60, 6, 8", "60, 12, 4"})
  void middlePilesAreProved(int pieces, int aSide, double depth) {
    for (long seed = 0; seed < 3; seed++) {
      for (boolean mirror : new boolean[] {true, false}) {
        FanPile pile = RandomFan.large(seed, pieces, aSide, depth, mirror);
        FanPile.Answer a = FanSolver.solve(pile, 600_000);
        FanChecker.check(pile, a, "seed " + seed);
        assertTrue(a.stones().proved(), "seed " + seed + " " + mirror);
        assertEquals(0, a.stones().cost().sawn(), "seed " + seed);
      }
    }
  }

  /** The same steps, the same answer; fewer steps, a bound beside it that holds. */
  @Test
  void stepsLimitTheSearchAndTheAnswerIsTheSameAgain() {
    for (long seed = 0; seed < 2; seed++) {
      FanPile pile = RandomFan.large(seed, 30, 6, 4, true);
      FanPile.Answer full = FanSolver.solve(pile, 600_000);
      FanPile.Answer few = FanSolver.solve(pile, 12_000);
      assertEquals(few.toString(), FanSolver.solve(pile, 12_000).toString(), "seed " + seed);
      FanChecker.check(pile, few, "seed " + seed);
      assertTrue(full.stones().proved(), "seed " + seed);
      assertTrue(few.stones().bound().compareTo(full.stones().cost()) <= 0, "seed " + seed);
      assertTrue(few.stones().steps() < 14_000, "seed " + seed);
    }
  }
}
