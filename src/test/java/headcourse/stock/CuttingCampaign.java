package headcourse.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/** Prints how well random cutting problems of every family are solved, and in what time. */
public final class CuttingCampaign {
  private CuttingCampaign() {}

  public static void main(String[] args) {
    java.lang.management.ThreadMXBean clock =
        java.lang.management.ManagementFactory.getThreadMXBean();
    int seeds = Integer.getInteger("seeds", 20);
    int least = Integer.getInteger("least", 12);
    int most = Integer.getInteger("most", 40);
    long limit = Long.getLong("limit", 2_000_000);
    int from = Integer.getInteger("from", 0);
    String only = System.getProperty("only", "");
    boolean verbose = Boolean.getBoolean("verbose");
    for (CuttingFamily f : CuttingFamily.values()) {
      if (!only.isEmpty() && !f.name().equals(only)) {
        continue;
      }
      int proved = 0;
      int within = 0;
      int n = 0;
      List<Long> times = new ArrayList<>();
      StringBuilder open = new StringBuilder();
      for (long seed = from; seed < from + seeds; seed++) {
        Random r = new Random(1000 * f.ordinal() + seed);
        CuttingProblem p = f.make(r, least + r.nextInt(most - least + 1));
        long t0 = clock.getCurrentThreadCpuTime();
        CuttingSolver.Result x = new CuttingSolver(limit).solve(p);
        long ms = (clock.getCurrentThreadCpuTime() - t0) / 1_000_000;
        Checker.check(p, x);
        times.add(ms);
        n++;
        proved += x.proved() ? 1 : 0;
        long blank = p.bins().stream().mapToLong(b -> b.cost().lead()).max().orElse(0);
        boolean near =
            x.packing().cost().missing() == x.bound().missing()
                && x.packing().cost().lead() - x.bound().lead() <= blank;
        within += near ? 1 : 0;
        if (!x.proved() || ms > 3000 || verbose) {
          open.append(
              String.format(
                  Locale.ROOT,
                  "   seed %d parts %d types %d kinds %d %s bound %s %s%s %d ms %d steps%n",
                  seed,
                  p.parts(),
                  p.demand().length,
                  p.bins().size(),
                  x.packing().cost(),
                  x.bound(),
                  x.proved() ? "proved" : "OPEN",
                  near ? "" : " FAR",
                  ms,
                  x.steps()));
        }
      }
      times.sort(null);
      System.out.printf(
          Locale.ROOT,
          "%s: %d proved, %d within a blank of %d; median %d ms, worst %d ms%n%s",
          f,
          proved,
          within,
          n,
          times.get(times.size() / 2),
          times.get(times.size() - 1),
          open);
    }
  }
}
