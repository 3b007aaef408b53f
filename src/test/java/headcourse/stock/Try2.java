package headcourse.stock;

import java.util.*;

public final class Try2 {
  public static void main(String[] a) {
    int n = 0, all = 0;
    for (int seed = Integer.parseInt(a[1]); seed < Integer.parseInt(a[2]); seed++) {
      Pile p =
          switch (a[0]) {
            case "coarse" -> RandomPile.coarse(seed);
            case "40" -> RandomPile.large(seed, 40, 12, true);
            case "90" -> RandomPile.large(seed, 90, 12, true);
            case "60f" -> RandomPile.large(seed, 60, 12, false);
            default -> RandomPile.large(seed, 60, 12, true);
          };
      long t = System.nanoTime();
      Pile.Answer x = PileSolver.solve(p, 2_000_000);
      PileChecker.check(p, x);
      all++;
      if (x.proved()) n++;
      System.out.printf(
          "%s %d: %s %s bound %s steps %d %.0f ms%n",
          a[0],
          seed,
          x.proved() ? "ok" : "OPEN",
          x.cost(),
          x.bound(),
          x.steps(),
          (System.nanoTime() - t) / 1e6);
    }
    System.out.println(n + " of " + all);
  }
}
