package headcourse.layout.flat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.job.HeadSpec.Rhythm;
import headcourse.job.Job;
import headcourse.layout.HeadLayout;
import headcourse.layout.Role;
import headcourse.layout.Side;
import headcourse.layout.Solution;
import headcourse.layout.shapes.Shapes;
import headcourse.testing.JobMaker;
import headcourse.testing.RandomJobs;
import headcourse.units.Length;
import java.util.EnumMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The best head is the best: against trying everything, for spans to 6 ft. */
class FlatOptimumTest {
  @Test
  void equalsBruteForce() {
    Map<Rhythm, Integer> compared = new EnumMap<>(Rhythm.class);
    int refused = 0;
    for (long seed = 0; seed < 3000; seed++) {
      JobMaker maker = RandomJobs.flat(seed, 12, 72);
      maker.first().mirror = true;
      maker.first().wallRight = maker.first().wallLeft;
      if (maker.first().rhythm == Rhythm.MIXED && !small(maker)) {
        continue;
      }
      Job job = maker.make();
      BruteForce brute = new BruteForce(job);
      double[] best = brute.best();
      String at = "seed " + seed;
      // Unlike sides are for other tests: here they could not be made of unlike walls.
      if (solve(job) instanceof Solution.Solved s) {
        assertNotNull(best, at);
        HeadLayout h = s.head();
        int n = (int) h.stones().stream().filter(x -> x.side() == Side.RIGHT).count();
        double bearing = (double) h.bearingRight().picometres() / job.grid().tick().picometres();
        assertEquals(0, BruteForce.compare(brute.cost(bearing, n), best), at + " " + brute);
        assertTrue(h.stones().stream().anyMatch(x -> x.role() == Role.END), at);
        compared.merge(maker.first().rhythm, 1, Integer::sum);
      } else {
        assertNull(best, at + " " + brute);
        refused++;
      }
    }
    assertTrue(compared.values().stream().allMatch(n -> n > 100), compared.toString());
    assertTrue(refused > 20, refused + " refused");
  }

  /** Trying everything takes a while where widths may vary a lot; those jobs are left to others. */
  private static boolean small(JobMaker maker) {
    long kinds = maker.first().max.minus(maker.first().min).picometres() / maker.tick.picometres();
    return maker.tick.compareTo(Length.mm(0.9)) > 0 && kinds < 60;
  }

  private static Solution solve(Job job) {
    String shape = job.openings().get(0).head().shape();
    return Shapes.named(shape).orElseThrow().setOut(job, job.openings().get(0));
  }
}
