package headcourse.stock;

import java.util.*;

public final class Try4 {
  public static void main(String[] a) {
    long t = System.nanoTime();
    long steps = 0;
    for (long seed = 0; seed < 2000; seed++)
      steps += PileSolver.solve(RandomPile.small(seed), 500_000).steps();
    System.out.printf("small %.0f ms steps %d%n", (System.nanoTime() - t) / 1e6, steps);
    t = System.nanoTime();
    steps = 0;
    for (long seed = 0; seed < 30; seed++) {
      long q = System.nanoTime();
      Pile.Answer x = PileSolver.solve(RandomPile.large(seed, 60, 12, true), 500_000);
      steps += x.steps();
    }
    System.out.printf("large %.0f ms steps %d%n", (System.nanoTime() - t) / 1e6, steps);
  }
}
