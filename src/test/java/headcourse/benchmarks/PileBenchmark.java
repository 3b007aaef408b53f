package headcourse.benchmarks;

import headcourse.stock.pile.ConstraintPile;
import headcourse.stock.pile.Pile;
import headcourse.stock.pile.PileSolver;
import headcourse.stock.pile.RandomPile;
import java.util.Arrays;
import java.util.Locale;

/**
 * Times the choice from a pile beside a general constraint solver (Choco 5.0.0) on the same model:
 * piles of 20, 40 and 60 measured pieces. Arguments: seeds (default 3), seconds that the other may
 * take for each (default 60).
 */
public final class PileBenchmark {
  private PileBenchmark() {}

  /** Runs it; one line a pile. */
  public static void main(String[] args) {
    int seeds = args.length > 0 ? Integer.parseInt(args[0]) : 3;
    int seconds = args.length > 1 ? Integer.parseInt(args[1]) : 60;
    for (int pieces : new int[] {20, 40, 60}) {
      int aSide = pieces == 20 ? 4 : pieces == 40 ? 8 : 12;
      for (int seed = 0; seed < seeds; seed++) {
        Pile pile = RandomPile.large(seed, pieces, aSide, true);
        double[] ours = new double[9];
        Pile.Answer answer = null;
        for (int i = 0; i < ours.length; i++) {
          long start = System.nanoTime();
          answer = PileSolver.solve(pile, 2_000_000);
          ours[i] = (System.nanoTime() - start) / 1e6;
        }
        Arrays.sort(ours);
        long start = System.nanoTime();
        String theirs;
        try {
          theirs = new ConstraintPile(pile).solve(seconds).toString();
        } catch (IllegalStateException gaveUp) {
          theirs = gaveUp.getMessage();
        }
        double other = (System.nanoTime() - start) / 1e6;
        System.out.printf(
            Locale.ROOT,
            "%d pieces, %d a side, seed %d: ours %.2f ms, %s, proved %b; other %.0f ms, %s; %.0f"
                + " times%n",
            pieces,
            aSide,
            seed,
            ours[ours.length / 2],
            answer.cost(),
            answer.proved(),
            other,
            theirs,
            other / ours[ours.length / 2]);
      }
    }
    Runtime r = Runtime.getRuntime();
    System.out.printf(
        Locale.ROOT,
        "heap in use %.0f MB of at most %.0f MB%n",
        (r.totalMemory() - r.freeMemory()) / 1e6,
        r.maxMemory() / 1e6);
  }
}
