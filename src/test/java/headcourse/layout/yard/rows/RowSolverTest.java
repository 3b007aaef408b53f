package headcourse.layout.yard.rows;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.testing.Seeds;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.LongFunction;
import org.junit.jupiter.api.Test;

/** The search for rows against all choices, a general constraint solver, and known answers. */
class RowSolverTest {
  private static final long STEPS = 2_000_000;

  private static int agree(LongFunction<Pile> piles, int runs) {
    int found = 0;
    for (long seed = 0; seed < runs; seed++) {
      found += Agreement.withBrute(piles.apply(seed), "seed " + seed) ? 1 : 0;
    }
    return found;
  }

  @Test
  void uprightHeadsCostWhatTheLeastOfAllChoicesDoes() {
    int runs = Seeds.of(24);
    int found = agree(RandomPile::small, runs);
    assertTrue(found > runs / 3, "too few piles come out: " + found);
  }

  @Test
  void fansCostWhatTheLeastOfAllChoicesDoes() {
    int runs = Seeds.of(40);
    int found = agree(RandomFan::small, runs);
    assertTrue(found > runs / 4, "too few piles come out: " + found);
  }

  /** Pieces lost, first stones cut otherwise, some that must stay. */
  @Test
  void fewestStonesChangeOfAllChoices() {
    int runs = Seeds.of(30);
    int compared = 0;
    int several = 0;
    for (long seed = 0; seed < runs; seed++) {
      Pile pile = seed % 2 == 0 ? RandomPile.small(seed) : RandomFan.small(seed);
      Answer plan = RowSolver.solve(pile, STEPS);
      if (plan.found()) {
        Pile after = TicketedPile.of(pile, plan, new Random(seed));
        compared += Agreement.withBrute(after, "seed " + seed) ? 1 : 0;
        Answer a = RowSolver.solve(after, STEPS);
        several += a.found() && a.cost().changes() > 1 ? 1 : 0;
        assertTrue(!a.found() || a.changes() == a.cost().changes(), "seed " + seed);
      }
    }
    assertTrue(compared > runs / 5 && several > 0, compared + ", of several " + several);
  }

  /** Choco 5.0.0 on the same model, written anew: the same cost, or the same refusal. */
  @Test
  void costEqualsThatOfAGeneralSolver() {
    int solved = 0;
    int runs = Seeds.of(24);
    for (long seed = 1_000; seed < 1_000 + runs; seed++) {
      Pile pile = seed % 8 == 0 ? AwkwardPile.small(seed) : RandomPile.small(seed);
      Answer ours = RowSolver.solve(pile, STEPS);
      RowChecker.check(pile, ours, "seed " + seed);
      assertTrue(ours.proved(), "seed " + seed);
      assertEquals(ConstraintPile.solve(pile, 60), ours.cost(), "seed " + seed);
      solved += ours.found() ? 1 : 0;
    }
    assertTrue(solved > runs / 3, "too few piles come out: " + solved);
  }

  @Test
  void neverWorseThanAGreedyHand() {
    int compared = 0;
    int runs = Seeds.of(80);
    for (long seed = 0; seed < runs; seed++) {
      Pile pile = seed % 20 == 0 ? RandomPile.large(seed, 60, 12, true) : RandomPile.small(seed);
      long hand = new GreedyHand(pile).sawn();
      Answer ours = RowSolver.solve(pile, STEPS / 4);
      if (hand >= 0) {
        compared++;
        assertTrue(ours.found() && ours.cost().sawn() <= hand + pile.give(), "seed " + seed);
      }
    }
    assertTrue(compared > runs / 20, "the hand came out only " + compared + " times");
  }

  /** A pile cut from known heads, shuffled, pieces added that are of no use: it is found again. */
  @Test
  void aPlantedHeadIsFound() {
    for (long seed = 0; seed < Seeds.of(12); seed++) {
      Pile pile = PlantedPile.of(seed);
      Answer a = RowSolver.solve(pile, STEPS / 4);
      RowChecker.check(pile, a, "seed " + seed);
      assertTrue(a.found(), "seed " + seed);
    }
  }

  /** With few steps a planted head may be missed, but never is it said that there is none. */
  @Test
  void aPlantedHeadIsNeverRuledOut() {
    int missed = 0;
    int runs = Seeds.of(60);
    for (long seed = 1_000; seed < 1_000 + runs; seed++) {
      Answer a = RowSolver.solve(PlantedPile.of(seed), STEPS / 20);
      assertTrue(a.found() || !a.proved(), "seed " + seed);
      missed += a.found() ? 0 : 1;
    }
    assertTrue(missed <= runs / 50, missed + " missed");
  }

  /** Pieces of 6, 7 and 8 in pairs: alike on both sides, and the bearing met. */
  @Test
  void pairsGoToBothSides() {
    PlainSide side = new PlainSide(5, 0, 20, 1, 4, 8, 6);
    List<Pile.Piece> pieces = new ArrayList<>();
    for (long usable : new long[] {6, 7, 8, 6, 7, 8, 9}) {
      pieces.add(RandomPile.piece(usable, List.of(true)));
    }
    Pile.Head head = RandomPile.head(1, true, 0, new long[] {5, 9}, Long.MAX_VALUE, side, side);
    Answer a = RowSolver.solve(new Pile(pieces, List.of(head), 0, false), 100_000);
    assertEquals(Cost.NONE, a.cost());
    assertEquals(3, a.heads().get(0).left().size());
  }

  /**
   * Nothing sawn off leaves the sides 16 apart; a tick sawn off each of two pieces makes them
   * alike, and that is within what is given.
   */
  @Test
  void aLittleSawnOffMakesTheSidesAlike() {
    PlainSide side = new PlainSide(0, 0, 20, 1, 4, 4, 4);
    List<Pile.Piece> pieces = new ArrayList<>();
    for (long usable : new long[] {8, 16, 12, 12, 13, 13}) {
      pieces.add(RandomPile.piece(usable, List.of(true)));
    }
    Pile.Head head = RandomPile.head(1, true, 2, new long[] {8, 16}, Long.MAX_VALUE, side, side);
    Pile none = new Pile(pieces, List.of(head), 0, false);
    assertEquals(new Cost(0, 0, 0, 0, 8, 0), RowSolver.solve(none, 100_000).cost());
    Pile some = new Pile(pieces, List.of(head), 2, false);
    Answer a = RowSolver.solve(some, 100_000);
    assertEquals(new Cost(0, 0, 0, 2, 0, 0), a.cost());
    assertEquals(0, a.least());
  }

  /** The same steps, the same answer; fewer steps, a bound beside it. */
  @Test
  void stepsLimitTheSearchAndTheAnswerIsTheSameAgain() {
    for (long seed : new long[] {0, 3, 9}) {
      Pile pile = AwkwardPile.of(seed);
      Answer full = RowSolver.solve(pile, 400_000);
      assertEquals(full.toString(), RowSolver.solve(pile, 400_000).toString());
      RowChecker.check(pile, full, "seed " + seed);
      Answer few = RowSolver.solve(pile, 40_000);
      RowChecker.check(pile, few, "seed " + seed);
      assertTrue(few.steps() <= 55_000 && full.steps() <= 550_000, few.steps() + "");
    }
  }

  /** Where every piece is too long, the least too long are taken and cut to fit. */
  @Test
  void piecesThatAreTooLongAreCutDown() {
    PlainSide side = new PlainSide(4, 0, 44, 1, 4, 7, 5);
    List<Pile.Piece> pieces = new ArrayList<>();
    for (int i = 0; i < 30; i++) {
      pieces.add(RandomPile.piece(20 + i, List.of(true)));
    }
    Pile.Head head = RandomPile.head(1, true, 0, new long[] {5, 9}, Long.MAX_VALUE, side, side);
    Answer a = RowSolver.solve(new Pile(pieces, List.of(head), 0, false), STEPS);
    // Five of at most nine reach from 4 to 49 at most; the ten shortest make 245, less twice 45.
    assertEquals(155, a.cost().sawn());
    assertEquals(155, a.least());
  }
}
