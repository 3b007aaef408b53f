package headcourse.stock;

import java.util.*;

public class Scratch {
  public static void main(String[] a) {
    int bad = 0;
    for (String kind : new String[] {"sold1", "sold3", "fan1", "fan2", "fant", "big1", "big3"}) {
      int proved = 0, within = 0, n = 0;
      long worst = 0;
      long total = 0;
      long maxsteps = 0;
      String wr = "";
      for (int seed = 0; seed < Integer.parseInt(a[0]); seed++) {
        Random r = new Random(seed * 31L + kind.hashCode());
        CuttingProblem p =
            switch (kind) {
              case "sold1" -> RandomCutting.soldiers(r, 5 + r.nextInt(36), 1);
              case "sold3" -> RandomCutting.soldiers(r, 5 + r.nextInt(36), 3);
              case "fan1" -> RandomCutting.fan(r, 2 + r.nextInt(19), 1, false);
              case "fan2" -> RandomCutting.fan(r, 2 + r.nextInt(19), 2, false);
              case "fant" -> RandomCutting.fan(r, 2 + r.nextInt(12), 1, true);
              case "big1" -> RandomCutting.soldiers(r, 41 + r.nextInt(360), 1);
              default -> RandomCutting.soldiers(r, 41 + r.nextInt(360), 3);
            };
        long t = System.nanoTime();
        CuttingSolver.Result res = new CuttingSolver(Long.parseLong(a[1])).solve(p);
        long ms = (System.nanoTime() - t) / 1000000;
        Checker.check(p, res);
        n++;
        total += ms;
        if (ms > worst) {
          worst = ms;
          wr = "seed " + seed + " parts " + p.parts();
        }
        maxsteps = Math.max(maxsteps, res.steps());
        if (res.proved()) proved++;
        else
          System.out.println(
              "  "
                  + kind
                  + " seed "
                  + seed
                  + " parts "
                  + p.parts()
                  + " types "
                  + p.demand().length
                  + " cost "
                  + res.packing().cost()
                  + " bound "
                  + res.bound()
                  + " ms "
                  + ms);
        if (res.packing().cost().missing() == 0
            && (p.bins().get(0).cost().lead() > 1
                || res.packing().cost().lead() - res.bound().lead() <= 1)) within++;
      }
      System.out.println(
          kind
              + " n "
              + n
              + " proved "
              + proved
              + " within1 "
              + within
              + " avg "
              + total / n
              + " ms worst "
              + worst
              + " "
              + wr
              + " steps "
              + maxsteps);
    }
  }
}
