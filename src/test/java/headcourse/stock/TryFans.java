package headcourse.stock;

import org.junit.jupiter.api.Test;

class TryFans {
  @Test
  void go() {
    int[][] sizes = {{20, 4}, {24, 6}, {30, 6}, {40, 6}, {40, 10}, {60, 6}, {60, 12}, {80, 12}};
    for (double depth : new double[] {4, 8}) {
      for (boolean mirror : new boolean[] {true, false}) {
        for (int[] s : sizes) {
          int proved = 0;
          int found = 0;
          long ms = 0;
          StringBuilder costs = new StringBuilder();
          for (long seed = 0; seed < 6; seed++) {
            FanPile pile = RandomFan.large(seed, s[0], s[1], depth, mirror);
            long t = System.nanoTime();
            FanPile.Answer a = FanSolver.solve(pile, 300_000);
            ms += (System.nanoTime() - t) / 1_000_000;
            FanChecker.check(pile, a, "seed " + seed);
            proved += a.stones().proved() ? 1 : 0;
            found += a.stones().heads().isEmpty() ? 0 : 1;
            Pile.Cost c = a.stones().cost();
            Pile.Cost b = a.stones().bound();
            costs.append(c == null ? " -" : " " + c.sawn() + "/" + c.imbalance() + "/" + c.bearing() + (a.stones().proved() ? "" : ">" + b.sawn() + "/" + b.imbalance()+"/"+b.bearing()));
          }
          System.out.printf("depth %.0f mirror %b pieces %d aside %d: proved %d found %d ms %d:%s%n", depth, mirror, s[0], s[1], proved, found, ms / 6, costs);
        }
      }
    }
  }
}
