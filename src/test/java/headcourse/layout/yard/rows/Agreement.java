package headcourse.layout.yard.rows;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Holds what the search finds against all choices there are. */
public final class Agreement {
  private Agreement() {}

  /**
   * The same cost as the least of all, or none where there is none; with fewer steps nothing is
   * said to be proved that isn't, and bounds hold.
   *
   * @return whether there is a choice
   */
  public static boolean withBrute(Pile pile, String at) {
    Cost least = new RowBrute(pile).least();
    Answer a = RowSolver.solve(pile, 4_000_000);
    RowChecker.check(pile, a, at);
    assertEquals(least, a.cost(), at);
    assertTrue(a.proved(), at);
    for (long steps = 20; steps <= 20_000; steps *= 10) {
      Answer few = RowSolver.solve(pile, steps);
      RowChecker.check(pile, few, at);
      if (few.found()) {
        assertTrue(few.least() <= a.least() && few.changes() <= a.cost().changes(), at);
        assertTrue(!few.proved() || few.cost().equals(least), at);
      } else {
        assertTrue(!few.proved() || least == null, at);
      }
    }
    return least != null;
  }
}
