package headcourse.stock.pile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.testing.Seeds;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The choice from a pile against a general constraint solver, a greedy hand, and known answers. */
class PileSolverTest {
  private static final int PILES = Seeds.of(300);

  /** Choco 5.0.0 on the same model, written anew: the same cost, or the same refusal. */
  @Test
  void costEqualsThatOfAGeneralSolver() {
    int solved = 0;
    for (long seed = 0; seed < PILES; seed++) {
      Pile pile = RandomPile.small(seed);
      Pile.Answer ours = PileSolver.solve(pile, 2_000_000);
      PileChecker.check(pile, ours);
      assertTrue(ours.proved(), "seed " + seed);
      assertEquals(new ConstraintPile(pile).solve(60), ours.cost(), "seed " + seed);
      solved += ours.heads().isEmpty() ? 0 : 1;
    }
    assertTrue(solved > PILES / 3, "too few piles come out: " + solved);
  }

  @Test
  void neverWorseThanAGreedyHand() {
    int compared = 0;
    for (long seed = 0; seed < 2_000; seed++) {
      Pile pile = RandomPile.small(seed);
      long hand = new GreedyHand(pile).sawn();
      Pile.Answer ours = PileSolver.solve(pile, 500_000);
      if (hand >= 0) {
        compared++;
        assertTrue(!ours.heads().isEmpty() && ours.cost().sawn() <= hand, "seed " + seed);
      }
    }
    for (long seed = 0; seed < 30; seed++) {
      Pile pile = RandomPile.large(seed, 60, 12, true);
      long hand = new GreedyHand(pile).sawn();
      Pile.Answer ours = PileSolver.solve(pile, 500_000);
      assertTrue(hand < 0 || ours.cost().sawn() <= hand, "seed " + seed);
    }
    assertTrue(compared > 100, "the hand came out only " + compared + " times");
  }

  /** Sixty measured pieces, a head of twenty-four stones: exact, with proof. */
  @ParameterizedTest
  @CsvSource({"40, 12, true", "60, 12, true", "60, 12, false", "90, 12, true"})
  void largePilesAreProved(int pieces, int aSide, boolean mirror) {
    for (long seed = 0; seed < 12; seed++) {
      Pile pile = RandomPile.large(seed, pieces, aSide, mirror);
      Pile.Answer a = PileSolver.solve(pile, 2_000_000);
      PileChecker.check(pile, a);
      assertTrue(a.proved(), "seed " + seed);
      assertEquals(0, a.cost().sawn(), "seed " + seed);
    }
  }

  /** Where each side must be sawn, the least is known and met. */
  @Test
  void pilesThatMustBeSawnAreProved() {
    for (long seed = 0; seed < 30; seed++) {
      Pile pile = RandomPile.coarse(seed);
      Pile.Answer a = PileSolver.solve(pile, 2_000_000);
      PileChecker.check(pile, a);
      assertTrue(a.proved(), "seed " + seed);
      assertTrue(a.cost().sawn() >= 6 && a.cost().sawn() <= 16, "seed " + seed);
    }
  }

  /** Pieces of 6, 7 and 8 in pairs: alike on both sides, and the bearing met. */
  @Test
  void pairsGoToBothSides() {
    PlainSide side = new PlainSide(5, 0, 20, 1, 4, 8, 6);
    List<Boolean> yes = List.of(true);
    Pile pile =
        new Pile(
            List.of(
                new Pile.Piece("A#1", 6, yes),
                new Pile.Piece("B#1", 7, yes),
                new Pile.Piece("C#1", 8, yes),
                new Pile.Piece("A#2", 6, yes),
                new Pile.Piece("B#2", 7, yes),
                new Pile.Piece("C#2", 8, yes),
                new Pile.Piece("D#1", 9, yes)),
            List.of(new Pile.Head(1, true, 0, 5, 9, Long.MAX_VALUE, side, side)));
    Pile.Answer a = PileSolver.solve(pile, 100_000);
    assertEquals(new Pile.Cost(0, 0, 0), a.cost());
    assertEquals(3, a.heads().get(0).left().size());
  }

  /** The same steps, the same answer; fewer steps, a bound beside it. */
  @Test
  void stepsLimitTheSearchAndTheAnswerIsTheSameAgain() {
    // Fourteen pieces, of which the head needs all but one, each a little too long.
    PlainSide side = new PlainSide(4, 0, 44, 1, 4, 7, 5);
    List<Pile.Piece> pieces = new java.util.ArrayList<>();
    for (int i = 0; i < 13; i++) {
      pieces.add(new Pile.Piece("P#" + i, 8 + i % 5, List.of(true)));
    }
    Pile pile = new Pile(pieces, List.of(new Pile.Head(1, true, 6, 5, 9, 2, side, side)));
    Pile.Answer full = PileSolver.solve(pile, 40_000);
    Pile.Answer again = PileSolver.solve(pile, 40_000);
    assertEquals(full.toString(), again.toString());
    PileChecker.check(pile, full);
    Pile.Answer few = PileSolver.solve(pile, 2_000);
    if (!few.heads().isEmpty()) {
      assertTrue(full.cost().compareTo(few.cost()) <= 0);
      assertTrue(few.bound().compareTo(full.cost()) <= 0);
    }
    assertTrue(few.steps() <= 2_010);
  }

  /** Where every piece is too long, the least too long are taken and cut to fit. */
  @Test
  void piecesThatAreTooLongAreCutDown() {
    PlainSide side = new PlainSide(4, 0, 44, 1, 4, 7, 5);
    List<Pile.Piece> pieces = new java.util.ArrayList<>();
    for (int i = 0; i < 30; i++) {
      pieces.add(new Pile.Piece("P#" + i, 20 + i, List.of(true)));
    }
    Pile pile =
        new Pile(pieces, List.of(new Pile.Head(1, true, 0, 5, 9, Long.MAX_VALUE, side, side)));
    Pile.Answer a = PileSolver.solve(pile, 200_000);
    PileChecker.check(pile, a);
    long hand = new GreedyHand(pile).sawn();
    assertTrue(hand < 0 || a.cost().sawn() <= hand);
    // Five of at most nine reach from 4 to 49 at most; the ten shortest make 245, less twice 45.
    assertEquals(155, a.cost().sawn());
    assertEquals(155, a.bound().sawn());
  }

  /** Where there is a choice, the pieces are never said to be too few or too short for one. */
  @Test
  void piecesThatMakeTheHeadsSuffice() {
    int solved = 0;
    int lacking = 0;
    for (long seed = 0; seed < 400; seed++) {
      Pile pile = RandomPile.small(seed);
      boolean suffices = PileSupply.suffices(pile, new PileTypes(pile));
      boolean any = !PileSolver.solve(pile, 1_000_000).heads().isEmpty();
      assertTrue(suffices || !any, "seed " + seed);
      assertTrue(any || PileSolver.any(pile).heads().isEmpty(), "seed " + seed);
      solved += any ? 1 : 0;
      lacking += suffices ? 0 : 1;
    }
    assertTrue(solved > 50 && lacking > 20, solved + " solved, too few for " + lacking);
  }
}
