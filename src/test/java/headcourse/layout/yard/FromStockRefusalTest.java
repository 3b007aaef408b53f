package headcourse.layout.yard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.job.HeadSpec;
import headcourse.testing.JobMaker;
import headcourse.testing.Seeds;
import headcourse.units.Length;
import headcourse.work.CureCheck;
import java.util.List;
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

  @Test
  void everyChangeSolves() {
    CureCheck check = new CureCheck();
    for (long seed = 0; check.refused < Seeds.of(4); seed++) {
      check.of(random(seed), "seed " + seed);
    }
    assertEquals(List.of(), check.failed);
    assertTrue(check.helped > check.refused / 2, check.toString());
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
    CureCheck check = new CureCheck();
    for (long seed = 0; check.refused < Seeds.of(4); seed++) {
      check.of(fan(seed), "seed " + seed);
    }
    assertEquals(List.of(), check.failed);
    assertTrue(check.helped > check.refused / 3, check.toString());
  }
}
