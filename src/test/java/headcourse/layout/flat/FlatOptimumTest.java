package headcourse.layout.flat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.job.HeadSpec;
import headcourse.job.HeadSpec.Rhythm;
import headcourse.job.Job;
import headcourse.job.Measured;
import headcourse.job.Opening;
import headcourse.job.Stock;
import headcourse.layout.HeadLayout;
import headcourse.layout.Jambs;
import headcourse.layout.Role;
import headcourse.layout.Shortfall;
import headcourse.layout.Side;
import headcourse.layout.Solution;
import headcourse.layout.shapes.Shapes;
import headcourse.testing.JobMaker;
import headcourse.testing.RandomJobs;
import headcourse.testing.Seeds;
import headcourse.units.Length;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The best head is the best: against trying everything, for spans to 6 ft. */
class FlatOptimumTest {
  private static final int RUNS = Seeds.of(150);

  @Test
  void equalsBruteForce() {
    Map<Rhythm, Integer> compared = new EnumMap<>(Rhythm.class);
    int refused = 0;
    int lacking = 0;
    int wanting = 0;
    for (long seed = 0; seed < RUNS; seed++) {
      JobMaker maker = RandomJobs.flat(seed, 12, 72);
      maker.first().mirror = true;
      maker.first().wallRight = maker.first().wallLeft;
      if (maker.first().rhythm == Rhythm.MIXED) {
        narrow(maker);
      }
      if (seed % 3 == 0) {
        yard(maker, new Random(seed));
      }
      if (seed % 4 == 1) {
        // A shop so rough that some heads can't land whatever happens.
        maker.cutTolerance = maker.tick.times(1 + seed % 5);
      }
      Job job = maker.make();
      BruteForce brute = new BruteForce(job);
      double[] best = brute.best();
      String at = "seed " + seed;
      if (solve(job) instanceof Solution.Solved s) {
        assertNotNull(best, at);
        HeadLayout h = s.head();
        double[] cost = brute.cost(h);
        assertEquals(0, BruteForce.compare(cost, best), at + Arrays.toString(cost) + brute);
        double wants = h.proof().shortfall().picometres() / (double) job.grid().tick().picometres();
        assertEquals(best[0], wants, 2e-3, at);
        Length most =
            Shortfall.of(job, h, Side.LEFT).most().max(Shortfall.of(job, h, Side.RIGHT).most());
        assertEquals(wants, most.picometres() / (double) job.grid().tick().picometres(), 2e-3, at);
        lacking += best[1] > 0 ? 1 : 0;
        wanting += best[0] > 0 ? 1 : 0;
        assertTrue(h.stones().stream().anyMatch(x -> x.role() == Role.END), at);
        compared.merge(maker.first().rhythm, 1, Integer::sum);
      } else {
        assertNull(best, at + " " + brute);
        refused++;
      }
    }
    assertTrue(compared.values().stream().allMatch(n -> n > RUNS / 15), compared.toString());
    assertTrue(refused > RUNS / 45, refused + " refused");
    assertTrue(lacking > RUNS / 45, lacking + " with stones that fit no blank");
    assertTrue(wanting > RUNS / 45, wanting + " that may not land");
  }

  /** A yard that is short of something: its longest blank is too low, or few lie there. */
  private static void yard(JobMaker maker, Random random) {
    JobMaker.OpeningMaker o = maker.first();
    Length clean = Length.inches(0.25);
    Length around = o.target.plus(maker.tick.times(random.nextInt(24) - 8)).plus(clean);
    int few = 1 + random.nextInt(30);
    Length tall = Length.inches(20);
    Length deep = Length.inches(8);
    Length row = around.times(1 + random.nextInt(2));
    maker.stock =
        new Stock(
            List.of(
                corner("A", o.max.times(2), Length.inches(2), deep, maker, 9),
                corner("B", row, tall, deep, maker, few),
                new Stock.Item(
                    "f",
                    "F",
                    Stock.Kind.FLAT,
                    around,
                    tall,
                    Length.ZERO,
                    maker.thickness,
                    9,
                    random.nextInt(4) == 0,
                    0)),
            0.1);
  }

  private static Stock.Item corner(
      String mark, Length arris, Length face, Length back, JobMaker maker, int count) {
    return new Stock.Item(
        mark, mark, Stock.Kind.CORNER, arris, face, back, maker.thickness, count, false, 0);
  }

  /**
   * Where the jambs stand at different distances, both sides alike or each by itself: the solver
   * wants no more spare than the better of the two.
   */
  @Test
  void landsAsWellBetweenLopsidedJambs() {
    int compared = 0;
    int apart = 0;
    for (long seed = 0; seed < RUNS / 3; seed++) {
      JobMaker maker = RandomJobs.flat(seed + 5000, 12, 60);
      Random random = new Random(seed);
      maker.first().mirror = true;
      if (maker.first().rhythm == Rhythm.MIXED) {
        narrow(maker);
      }
      boolean follows = maker.first().params.containsKey("skewback");
      Length off = maker.tick.times(1 + random.nextInt(9));
      maker.first().measured =
          new Measured(maker.first().width, null, null, List.of(), null, null, off);
      Job job = maker.make();
      Jambs jambs = Jambs.of(job.openings().get(0));
      Opening o = job.openings().get(0);
      double[] alike = new BruteForce(job, jambs.left(), jambs.right(), null).best();
      double[] left = new BruteForce(job, jambs.left(), jambs.left(), ample(o.wallLeft())).best();
      double[] right =
          new BruteForce(job, jambs.right(), jambs.right(), ample(o.wallRight())).best();
      double both = left == null || right == null ? 1e12 : Math.max(left[0], right[0]);
      double best = Math.min(alike == null ? 1e12 : alike[0], both);
      if (solve(job) instanceof Solution.Solved s) {
        double wants =
            s.head().proof().shortfall().picometres() / (double) job.grid().tick().picometres();
        String at = "seed " + seed + ": " + wants + ", " + best;
        assertTrue(follows || best < 1e12, at);
        assertTrue(
            follows ? alike == null || wants <= alike[0] + 2e-3 : Math.abs(wants - best) < 2e-3,
            at);
        compared++;
        apart += alike == null || best < alike[0] - 1e-3 ? 1 : 0;
      } else {
        assertTrue(follows ? alike == null : best == 1e12, "seed " + seed + ": " + best);
      }
    }
    assertTrue(compared > RUNS / 6, compared + " compared");
    assertTrue(apart > 0, "none better apart");
  }

  private static Length ample(Length wall) {
    return wall == null ? Length.inches(1000) : wall;
  }

  /** Trying every sequence takes a while, so mixed widths are kept to a narrow choice. */
  private static void narrow(JobMaker maker) {
    JobMaker.OpeningMaker o = maker.first();
    Length least = o.max.minus(maker.tick.times(18));
    o.min = o.min.max(least);
    o.step = o.step.min(maker.tick.times(10));
    o.bearing =
        new HeadSpec.Bearing(
            o.bearing.min(),
            o.bearing.max().min(o.bearing.min().plus(maker.tick.times(30))),
            o.bearing.min().plus(maker.tick.times(17)));
  }

  private static Solution solve(Job job) {
    String shape = job.openings().get(0).head().shape();
    return Shapes.named(shape).orElseThrow().setOut(job, job.openings().get(0));
  }
}
