package headcourse.layout.yard;

import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.layout.Change;
import headcourse.layout.Solution;
import headcourse.layout.shapes.Shapes;
import headcourse.testing.ChangeWriter;
import headcourse.testing.JobMaker;
import headcourse.testing.Seeds;
import headcourse.units.Length;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What is offered where no choice of the yard's pieces makes a head. */
class FromStockRefusalTest {
  /** Few pieces, a close bound on neighbours, and bearings with little play. */
  private static JobMaker random(long seed) {
    Random r = new Random(seed);
    JobMaker m = FromStockTest.maker(seed, 5 + r.nextInt(8), 8.5);
    m.steps = 50_000;
    JobMaker.OpeningMaker o = m.first();
    o.width = Length.inches(20 + r.nextInt(24));
    o.jump = r.nextBoolean() ? Length.inches((1 + r.nextInt(8)) / 8.0) : null;
    double bearing = 3 + r.nextInt(4);
    double play = r.nextInt(3) / 8.0;
    o.bearing =
        new HeadSpec.Bearing(
            Length.inches(bearing), Length.inches(bearing + play), Length.inches(bearing));
    o.eachSide = r.nextInt(4) == 0 ? 3 + r.nextInt(4) : null;
    o.mirror = r.nextBoolean();
    return m;
  }

  private static Solution solve(JobMaker m) {
    Job job = m.make();
    Solution s = PileChooser.setOut(job, Shapes::named).solutions().get(0);
    // Another rhythm than from-stock is no matter of the pile.
    return s != null ? s : Shapes.named("soldier").orElseThrow().setOut(job, job.openings().get(0));
  }

  @Test
  void everyChangeSolves() {
    int refused = 0;
    int helped = 0;
    for (long seed = 0; refused < Seeds.of(4); seed++) {
      if (!(solve(random(seed)) instanceof Solution.Refused no)) {
        continue;
      }
      refused++;
      helped += no.changes().isEmpty() ? 0 : 1;
      assertTrue(no.changes().size() <= 3, "seed " + seed);
      for (Change c : no.changes()) {
        JobMaker m = random(seed);
        ChangeWriter.write(m, c);
        assertInstanceOf(Solution.Solved.class, solve(m), "seed " + seed + " " + c);
      }
    }
    assertTrue(helped > refused / 2, helped + " helped of " + refused);
  }

  /** A jack arch with its key left open, over too few pieces or with bearings of little play. */
  private static JobMaker fan(long seed) {
    Random r = new Random(seed);
    JobMaker m = FromStockTest.maker(seed, 6 + r.nextInt(5), 11);
    JobMaker.OpeningMaker o = m.first();
    o.shape = "jack";
    o.key = new HeadSpec.Key(null, null, Length.ZERO, Length.ZERO, Length.ZERO);
    o.params.put("skewback", headcourse.units.Angle.degrees(72));
    o.width = Length.inches(24 + r.nextInt(30));
    o.jump = Length.inches((1 + r.nextInt(4)) / 8.0);
    double play = r.nextInt(3) / 8.0;
    o.bearing = new HeadSpec.Bearing(Length.inches(4), Length.inches(4 + play), Length.inches(4));
    return m;
  }

  @Test
  void everyChangeSolvesForAJackArch() {
    int refused = 0;
    int helped = 0;
    for (long seed = 0; refused < Seeds.of(4); seed++) {
      if (!(solve(fan(seed)) instanceof Solution.Refused no)) {
        continue;
      }
      refused++;
      helped += no.changes().isEmpty() ? 0 : 1;
      for (Change c : no.changes()) {
        JobMaker m = fan(seed);
        ChangeWriter.write(m, c);
        Job job = m.make();
        Solution s = PileChooser.setOut(job, Shapes::named).solutions().get(0);
        s = s != null ? s : Shapes.named("jack").orElseThrow().setOut(job, job.openings().get(0));
        assertInstanceOf(Solution.Solved.class, s, "seed " + seed + " " + c);
      }
    }
    assertTrue(helped > refused / 3, helped + " helped of " + refused);
  }
}
