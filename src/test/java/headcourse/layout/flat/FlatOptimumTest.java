package headcourse.layout.flat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.job.HeadSpec;
import headcourse.job.HeadSpec.Rhythm;
import headcourse.job.Job;
import headcourse.layout.HeadLayout;
import headcourse.layout.Role;
import headcourse.layout.Side;
import headcourse.layout.Solution;
import headcourse.layout.shapes.Shapes;
import headcourse.testing.JobMaker;
import headcourse.testing.RandomJobs;
import headcourse.testing.Seeds;
import headcourse.units.Length;
import java.util.EnumMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The best head is the best: against trying everything, for spans to 6 ft. */
class FlatOptimumTest {
  private static final int RUNS = Seeds.of(225);

  @Test
  void equalsBruteForce() {
    Map<Rhythm, Integer> compared = new EnumMap<>(Rhythm.class);
    int refused = 0;
    for (long seed = 0; seed < RUNS; seed++) {
      JobMaker maker = RandomJobs.flat(seed, 12, 72);
      maker.first().mirror = true;
      maker.first().wallRight = maker.first().wallLeft;
      if (maker.first().rhythm == Rhythm.MIXED) {
        narrow(maker);
      }
      Job job = maker.make();
      BruteForce brute = new BruteForce(job);
      double[] best = brute.best();
      String at = "seed " + seed;
      if (solve(job) instanceof Solution.Solved s) {
        assertNotNull(best, at);
        HeadLayout h = s.head();
        int n = (int) h.stones().stream().filter(x -> x.side() == Side.RIGHT).count();
        double bearing =
            (double) h.bearing(Side.RIGHT).onWall().picometres() / job.grid().tick().picometres();
        assertEquals(0, BruteForce.compare(brute.cost(bearing, n), best), at + " " + brute);
        assertTrue(h.stones().stream().anyMatch(x -> x.role() == Role.END), at);
        compared.merge(maker.first().rhythm, 1, Integer::sum);
      } else {
        assertNull(best, at + " " + brute);
        refused++;
      }
    }
    assertTrue(compared.values().stream().allMatch(n -> n > RUNS / 12), compared.toString());
    assertTrue(refused > RUNS / 45, refused + " refused");
  }

  /** Trying every sequence takes a while, so mixed widths are kept to a narrow choice. */
  private static void narrow(JobMaker maker) {
    JobMaker.OpeningMaker o = maker.first();
    Length least = o.max.minus(maker.tick.times(24));
    o.min = o.min.max(least);
    o.step = o.step.min(maker.tick.times(10));
    o.bearing =
        new HeadSpec.Bearing(
            o.bearing.min(),
            o.bearing.max().min(o.bearing.min().plus(maker.tick.times(40))),
            o.bearing.min().plus(maker.tick.times(17)));
  }

  private static Solution solve(Job job) {
    String shape = job.openings().get(0).head().shape();
    return Shapes.named(shape).orElseThrow().setOut(job, job.openings().get(0));
  }
}
