package headcourse.stock;

import java.util.*;

public final class TryPiles {
  public static void main(String[] a) {
    int from = Integer.parseInt(a[0]);
    int to = Integer.parseInt(a[1]);
    boolean verbose = a.length > 2;
    int proved = 0;
    List<Double> ms = new ArrayList<>();
    for (int seed = from; seed < to; seed++) {
      Pile p = AwkwardPile.of(seed);
      long t = System.nanoTime();
      Pile.Answer x = PileSolver.solve(p, 2_000_000);
      double m = (System.nanoTime() - t) / 1e6;
      ms.add(m);
      PileChecker.check(p, x);
      if (x.proved()) proved++;
      if (verbose || !x.proved() || m > 1000) {
        StringBuilder s = new StringBuilder();
        for (Pile.Head h : p.heads()) {
          PlainSide l = (PlainSide) h.left();
          s.append(
              String.format(
                  "[c%d %s each%d %d..%d jump %s same %b start %d jamb %d j%d cl%d br %d-%d] ",
                  h.copies(),
                  h.mirror() ? "mirror" : "free",
                  h.eachSide(),
                  h.min(),
                  h.max(),
                  h.jump() == Long.MAX_VALUE ? "-" : "" + h.jump(),
                  h.left().equals(h.right()),
                  l.start(),
                  l.jamb(),
                  l.joint(),
                  l.clear(),
                  l.bearingMin(),
                  l.bearingMax()));
        }
        System.out.printf(
            "%d: %s %d pieces, %s bound %s cost %s steps %d %.0f ms%n",
            seed,
            x.proved() ? "ok" : "OPEN",
            p.pieces().size(),
            s,
            x.bound(),
            x.cost(),
            x.steps(),
            m);
      }
    }
    Collections.sort(ms);
    System.out.printf(
        "proved %d of %d; median %.0f ms, 90%% %.0f, worst %.0f%n",
        proved,
        to - from,
        ms.get(ms.size() / 2),
        ms.get(ms.size() * 9 / 10),
        ms.get(ms.size() - 1));
  }
}
