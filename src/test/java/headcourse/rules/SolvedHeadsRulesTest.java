package headcourse.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.bench.HeadWork;
import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Setting;
import headcourse.stock.StockPlan;
import headcourse.testing.JobMaker;
import headcourse.testing.Seeds;
import headcourse.units.Angle;
import headcourse.units.Length;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What the solvers set out never breaks a rule that they promise to keep. */
class SolvedHeadsRulesTest {
  private static final StockPlan NO_STOCK = new StockPlan(List.of(), List.of(), List.of(), 0, true);
  private static final Set<String> PROMISED =
      Set.of("bearing-asked", "joint-at-jamb", "wall-beside");

  private static Length sixteenths(int n) {
    return Length.inches(n / 16.0);
  }

  @Test
  void bearsStaysClearAndStaysOnTheWall() {
    int solved = 0;
    for (long seed = 1; seed <= Seeds.of(400); seed++) {
      Job job = random(new Random(seed)).make();
      Optional<List<HeadWork>> heads = SolvedHeads.of(job);
      if (heads.isEmpty()) {
        continue;
      }
      solved++;
      List<Finding> broken =
          RuleBook.check(job, heads.get(), NO_STOCK).stream()
              .filter(f -> PROMISED.contains(f.rule()))
              .toList();
      assertEquals(List.of(), broken, "seed " + seed);
    }
    assertTrue(solved > Seeds.of(130), "only " + solved + " could be set out");
  }

  private static JobMaker random(Random r) {
    JobMaker m = JobMaker.one();
    JobMaker.OpeningMaker o = m.first();
    o.width = sixteenths(16 * (24 + r.nextInt(180)) + r.nextInt(16));
    o.shape = r.nextInt(3) == 0 ? "jack" : "soldier";
    if (o.shape.equals("jack")) {
      o.params.put("skewback", Angle.degrees(62 + r.nextInt(20)));
      o.key = r.nextBoolean() ? new HeadSpec.Key(null, sixteenths(160), z(), z(), z()) : null;
    }
    o.clear = sixteenths(8 + r.nextInt(24));
    o.min = sixteenths(72 + r.nextInt(16));
    o.max = o.min.plus(sixteenths(24 + r.nextInt(60)));
    o.target = o.min.plus(sixteenths(r.nextInt(24)));
    o.rhythm = r.nextInt(4) == 0 ? HeadSpec.Rhythm.GRADED : HeadSpec.Rhythm.EVEN;
    o.step = sixteenths(1 + r.nextInt(4));
    Length least = sixteenths(32 + r.nextInt(48));
    o.bearing = new HeadSpec.Bearing(least, least.plus(sixteenths(90)), least.plus(sixteenths(30)));
    o.wallLeft = r.nextBoolean() ? sixteenths(80 + r.nextInt(160)) : null;
    o.wallRight = r.nextBoolean() ? sixteenths(80 + r.nextInt(160)) : null;
    if (r.nextBoolean()) {
      m.joints = Setting.Joints.MORTAR;
      m.joint = sixteenths(2 + 2 * r.nextInt(4));
    }
    if (o.shape.equals("jack") && r.nextBoolean()) {
      o.params.put("camber", sixteenths(1 + r.nextInt(20)));
    }
    return m;
  }

  private static Length z() {
    return Length.ZERO;
  }
}
