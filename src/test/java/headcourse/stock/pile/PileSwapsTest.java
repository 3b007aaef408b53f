package headcourse.stock.pile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Pieces that change places, and searches that keep to their limit. */
class PileSwapsTest {
  private static final long FEW = 300_000;

  /** Three heads, too much for so few steps: better than without, and as good as it is said. */
  @Test
  void piecesThatChangePlacesBetterAChoice() {
    int better = 0;
    for (long seed : new long[] {3, 14, 17, 18, 29}) {
      Pile pile = AwkwardPile.large(seed);
      PileTypes types = new PileTypes(pile);
      Effort plain = new Effort(2_000, 10_000, 4, 3, 0);
      LevelSearch without = new LevelSearch(pile, types, null, FEW, plain);
      without.run();
      Pile.Answer a = PileSolver.solve(pile, FEW);
      PileChecker.check(pile, a);
      int less = a.cost().compareTo(without.best().cost());
      assertTrue(less <= 0, "seed " + seed + ": " + a.cost() + ", " + without.best().cost());
      assertTrue(a.steps() <= FEW * 11 / 10, "seed " + seed + ": " + a.steps());
      assertTrue(without.floor().compareTo(a.cost()) <= 0, "seed " + seed);
      better += less < 0 ? 1 : 0;
    }
    assertTrue(better > 2, "only " + better);
  }

  /** The same pile gives the same answer. */
  @Test
  void theAnswerIsTheSameEachTime() {
    Pile pile = AwkwardPile.large(18);
    Pile.Answer a = PileSolver.solve(pile, FEW / 3);
    Pile.Answer b = PileSolver.solve(pile, FEW / 3);
    assertEquals(a.heads(), b.heads());
    assertEquals(a.steps(), b.steps());
  }

  /**
   * Fourteen stones against nine whose neighbours may hardly differ: many widths to choose from.
   */
  @Test
  void unequalRowsAreOrderedWithinTheLimit() {
    Pile pile = AwkwardPile.of(353);
    Pile.Answer few = PileSolver.solve(pile, FEW);
    PileChecker.check(pile, few);
    assertTrue(few.steps() <= FEW * 11 / 10, "steps " + few.steps());
    Pile.Answer a = PileSolver.solve(pile, 2_000_000);
    PileChecker.check(pile, a);
    assertTrue(a.proved() && a.steps() <= 2_000_000);
    assertTrue(few.bound().compareTo(a.cost()) <= 0 && a.cost().compareTo(few.cost()) <= 0);
  }
}
