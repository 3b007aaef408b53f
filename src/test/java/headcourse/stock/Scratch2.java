package headcourse.stock;

public class Scratch2 {
  public static void main(String[] a) {
    int none = 0, proved = 0;
    long ours = 0, theirs = 0;
    int from = Integer.parseInt(a[0]), to = Integer.parseInt(a[1]);
    for (long seed = from; seed < to; seed++) {
      Pile p = RandomPile.small(seed);
      long t = System.nanoTime();
      Pile.Answer x = PileSolver.solve(p, 2_000_000);
      ours += System.nanoTime() - t;
      t = System.nanoTime();
      PileChecker.check(p, x);
      Pile.Cost c = new ConstraintPile(p).solve(60);
      theirs += System.nanoTime() - t;
      if (x.cost() == null) none++;
      if (x.proved()) proved++;
      if (!java.util.Objects.equals(c, x.cost()))
        System.out.println(
            "seed " + seed + " ours " + x.cost() + " theirs " + c + " proved " + x.proved());
    }
    System.out.println(
        "none "
            + none
            + " proved "
            + proved
            + " ours ms "
            + ours / 1000000
            + " theirs ms "
            + theirs / 1000000);
    for (int n : new int[] {20, 40, 60, 80})
      for (int s = 0; s < 8; s++)
        for (boolean m : new boolean[] {true, false}) {
          Pile p = RandomPile.large(s, n, Math.min(12, n / 2 - 2), m);
          long t = System.nanoTime();
          Pile.Answer x = PileSolver.solve(p, 2_000_000);
          long ms = (System.nanoTime() - t) / 1000000;
          PileChecker.check(p, x);
          System.out.println(
              n
                  + " "
                  + m
                  + " seed "
                  + s
                  + " "
                  + x.cost()
                  + " bound "
                  + x.bound()
                  + " "
                  + x.proved()
                  + " steps "
                  + x.steps()
                  + " "
                  + ms
                  + " ms");
        }
  }
}
