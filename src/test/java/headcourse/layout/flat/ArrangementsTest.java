package headcourse.layout.flat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.job.HeadSpec.Rhythm;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.Arrangement;
import headcourse.layout.HeadLayout;
import headcourse.layout.HeadShape;
import headcourse.layout.Side;
import headcourse.layout.Solution;
import headcourse.layout.shapes.Shapes;
import headcourse.testing.JobMaker;
import headcourse.testing.RandomJobs;
import headcourse.testing.Seeds;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** All arrangements of flat heads against trying everything. */
class ArrangementsTest {
  @Test
  void equalBruteForce() {
    int compared = 0;
    for (long seed = 1; compared < Seeds.of(50); seed++) {
      JobMaker maker = RandomJobs.flat(40_000 + seed, 12, seed % 10 == 0 ? 480 : 90);
      maker.first().mirror = true;
      maker.first().eachSide = null;
      Job job = maker.make();
      Opening o = job.openings().get(0);
      if (maker.first().rhythm == Rhythm.MIXED && o.width().compareTo(Length.inches(24)) > 0) {
        continue;
      }
      List<Arrangement> found = Shapes.named(o.head().shape()).orElseThrow().arrangements(job, o);
      if (maker.first().rhythm == Rhythm.MIXED) {
        mixed(seed, job, found);
      } else {
        divided(seed, job, found);
      }
      compared++;
    }
  }

  private static void divided(long seed, Job job, List<Arrangement> found) {
    List<double[]> all = new ArrayList<>(new BruteForce(job).all());
    all.sort(
        (a, b) -> {
          int by = BruteForce.compare(Arrays.copyOfRange(a, 3, 8), Arrays.copyOfRange(b, 3, 8));
          return by != 0 ? by : Double.compare(a[1], b[1]);
        });
    List<double[]> kept = new ArrayList<>();
    for (double[] a : all) {
      // As many stones whose mean widths are less than a step apart count once.
      if (kept.stream().noneMatch(k -> k[0] == a[0] && Math.abs(k[2] - a[2]) / a[0] < 1 - 1e-9)) {
        kept.add(a);
      }
    }
    double tick = job.grid().tick().picometres();
    Map<String, Double> expected = new TreeMap<>();
    for (double[] k : kept) {
      expected.put((int) k[0] + " to " + Math.round(k[1]), k[3]);
    }
    Map<String, Double> are = new TreeMap<>();
    for (Arrangement a : found) {
      if (a.left().equals(a.right())) {
        HeadLayout head = a.head().get();
        Length end = head.end(Side.RIGHT).feet().rightSoffit();
        are.put(
            a.right().size() + " to " + Math.round(end.picometres() / tick),
            a.shortfall().picometres() / tick);
      }
    }
    assertEquals(expected.keySet(), are.keySet(), () -> "seed " + seed);
    // What is wanting is told apart no finer than two thousandths of a step.
    expected.forEach((k, v) -> assertEquals(v, are.get(k), 2e-3, () -> "seed " + seed + ", " + k));
  }

  private static void mixed(long seed, Job job, List<Arrangement> found) {
    Opening o = job.openings().get(0);
    Map<Integer, Double> expected = new TreeMap<>();
    int most = (int) (o.width().mm() / o.head().stones().min().mm()) + 3;
    for (int n = 1; n <= most; n++) {
      Job counted = job.withOpenings(List.of(HeadShape.withEachSide(o, n)));
      double[] best = new BruteForce(counted).best();
      if (best != null) {
        expected.put(n, best[0]);
      }
    }
    Map<Integer, Double> are = new TreeMap<>();
    for (Arrangement a : found) {
      are.put(a.right().size(), a.shortfall().mm() / job.grid().tick().mm());
    }
    assertEquals(expected.keySet(), are.keySet(), () -> "seed " + seed);
    expected.forEach((k, v) -> assertEquals(v, are.get(k), 2e-3, () -> "seed " + seed));
  }

  /** Written into the job, the widths make the same head, stone by stone. */
  @Test
  void theWidthsMakeTheSameHead() {
    int compared = 0;
    for (long seed = 1; compared < Seeds.of(30); seed++) {
      JobMaker maker = RandomJobs.flat(80_000 + seed, 24, 120);
      Job job = maker.make();
      Opening o = job.openings().get(0);
      HeadShape shape = Shapes.named(o.head().shape()).orElseThrow();
      List<Arrangement> all = shape.arrangements(job, o);
      if (all.isEmpty()) {
        continue;
      }
      Arrangement a = all.get((int) (seed % all.size()));
      var s = o.head().stones();
      var given =
          new headcourse.job.HeadSpec.Stones(
              s.min(),
              s.max(),
              s.target(),
              s.step(),
              s.jump(),
              s.eachSide(),
              s.rhythm(),
              s.mirror(),
              s.seed(),
              s.prefer(),
              s.give(),
              new headcourse.job.HeadSpec.Widths(a.left(), a.right()));
      Solution solved = shape.setOut(job, o.with(o.head().with(given)));
      long at = seed;
      assertTrue(solved instanceof Solution.Solved, () -> "seed " + at + " " + a);
      HeadLayout one = ((Solution.Solved) solved).head();
      HeadLayout other = a.head().get();
      assertEquals(other.stones(), one.stones(), () -> "seed " + at);
      assertEquals(a.shortfall(), one.proof().shortfall(), () -> "seed " + at);
      compared++;
    }
  }
}
