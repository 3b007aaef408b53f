package headcourse.stock.pile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.testing.Seeds;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Piles that are awkward to set from: nearly all are proved best, or proved to come to nothing, and
 * every bound holds.
 */
class AwkwardPileTest {
  /** What a job allows where it does not say. */
  private static final long STEPS = 2_000_000;

  /** Up to sixty pieces, heads of up to twenty-four stones; no worse than a quick hand. */
  @Test
  void awkwardPilesAreProved() {
    int piles = Seeds.of(40);
    List<Long> open = new ArrayList<>();
    int solved = 0;
    for (long seed = 0; seed < piles; seed++) {
      Pile pile = AwkwardPile.of(seed);
      Pile.Answer a = PileSolver.solve(pile, STEPS);
      PileChecker.check(pile, a);
      long hand = new GreedyHand(pile).sawn();
      assertTrue(hand < 0 || !a.heads().isEmpty() && a.cost().sawn() <= hand, "seed " + seed);
      solved += a.heads().isEmpty() ? 0 : 1;
      if (!a.proved()) {
        open.add(seed);
      }
    }
    assertTrue(open.size() <= piles / 60, "not proved: seeds " + open);
    assertTrue(solved > piles / 3, "too few piles come out: " + solved);
  }

  /** Two heads whose neighbours may hardly differ; no piece left over that would make it easy. */
  @Test
  void tightRowsOfTwoHeadsAreProved() {
    for (long seed : new long[] {41, 60, 215}) {
      Pile pile = AwkwardPile.of(seed);
      Pile.Answer a = PileSolver.solve(pile, STEPS);
      PileChecker.check(pile, a);
      assertTrue(a.proved() && !a.heads().isEmpty(), "seed " + seed);
    }
  }

  /** Choco 5.0.0 on the same model, written anew: the same cost, or the same refusal. */
  @Test
  void smallOnesCostWhatAGeneralSolverSays() {
    int piles = Seeds.of(15);
    int solved = 0;
    for (long seed = 0; seed < piles; seed++) {
      Pile pile = AwkwardPile.small(seed);
      Pile.Answer a = PileSolver.solve(pile, STEPS);
      PileChecker.check(pile, a);
      assertTrue(a.proved(), "seed " + seed);
      Pile.Cost theirs = new ConstraintPile(pile).solve(60);
      assertEquals(theirs, a.cost(), "seed " + seed);
      LevelSearch priced = PricedPileTest.search(pile, PricedPileTest.ALWAYS);
      assertTrue(priced.proved(), "seed " + seed);
      assertEquals(theirs, PricedPileTest.cost(priced), "seed " + seed);
      solved += a.heads().isEmpty() ? 0 : 1;
    }
    assertTrue(solved > piles / 4, "too few piles come out: " + solved);
  }
}
