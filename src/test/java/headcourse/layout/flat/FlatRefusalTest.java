package headcourse.layout.flat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.diag.Diagnostic;
import headcourse.diag.Severity;
import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Setting;
import headcourse.layout.Change;
import headcourse.layout.Solution;
import headcourse.layout.shapes.Shapes;
import headcourse.testing.ChangeWriter;
import headcourse.testing.JobMaker;
import headcourse.testing.RandomJobs;
import headcourse.testing.Seeds;
import headcourse.units.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is said when a head can't be set out. */
class FlatRefusalTest {
  private static Solution solve(JobMaker maker) {
    Job job = maker.make();
    String shape = job.openings().get(0).head().shape();
    return Shapes.named(shape).orElseThrow().setOut(job, job.openings().get(0));
  }

  private static Solution.Refused refused(JobMaker maker) {
    return assertInstanceOf(Solution.Refused.class, solve(maker));
  }

  private static JobMaker soldiers(double width) {
    JobMaker m = JobMaker.one();
    m.joints = Setting.Joints.MORTAR;
    m.joint = Length.inches(1 / 8.0);
    m.first().min = Length.inches(width);
    m.first().max = Length.inches(width);
    m.first().target = Length.inches(width);
    m.first().clear = Length.inches(1);
    return m;
  }

  private static void says(Solution.Refused refused, String text) {
    List<String> all = refused.problems().stream().map(Diagnostic::message).toList();
    assertTrue(all.stream().anyMatch(m -> m.contains(text)), () -> text + " not in " + all);
  }

  /** Every change that is offered makes the head possible, by itself or with its partner. */
  @Test
  void everyChangeSolves() {
    int refusals = 0;
    int changes = 0;
    int unhelped = 0;
    for (long seed = 0; refusals < Seeds.of(100); seed++) {
      Solution.Refused refused = refusal(seed);
      if (refused == null) {
        continue;
      }
      refusals++;
      assertEquals(Severity.ERROR, refused.problems().get(0).severity());
      assertTrue(!refused.problems().get(0).hints().isEmpty(), "seed " + seed);
      assertTrue(refused.changes().size() <= 3, "seed " + seed);
      for (Change change : refused.changes()) {
        JobMaker maker = RandomJobs.flat(seed);
        ChangeWriter.write(maker, change);
        Solution then = solve(maker);
        assertInstanceOf(Solution.Solved.class, then, "seed " + seed + " " + change);
        changes++;
      }
      assertTrue(refused.changes().isEmpty() || refused.together().isEmpty(), "seed " + seed);
      for (List<Change> both : refused.together()) {
        JobMaker maker = RandomJobs.flat(seed);
        both.forEach(c -> ChangeWriter.write(maker, c));
        Solution then = solve(maker);
        assertInstanceOf(Solution.Solved.class, then, "seed " + seed + " " + both);
      }
      unhelped += refused.changes().isEmpty() && refused.together().isEmpty() ? 1 : 0;
    }
    assertTrue(unhelped <= refusals / 15, unhelped + " without help of " + refusals);
    assertTrue(changes > refusals, changes + " changes for " + refusals + " refusals");
  }

  private static Solution.Refused refusal(long seed) {
    return solve(RandomJobs.flat(seed)) instanceof Solution.Refused r ? r : null;
  }

  /** the joint stands 47.75 to 47.875 from the centre; common practice, no source. */
  @Test
  void namesTheJointInLineWithTheJamb() {
    Solution.Refused refused = refused(soldiers(7));
    says(refused, "the joint outside L6, 47 3/4\" to 47 7/8\" from the centre,");
    says(refused, "stands 1/8\" from the jamb line: 7/8\" less than the clear 1\"");
    assertTrue(
        refused.changes().stream().anyMatch(c -> c.path().equals("openings[0].head.stones.min")),
        () -> refused.changes().toString());
  }

  /** six of 7.5 in bear 2.75 in, seven 10.375 in; common practice, no source. */
  @Test
  void namesTheBearing() {
    JobMaker m = soldiers(7.5);
    says(refused(m), "bear 10 3/8\": 2 3/8\" more than the greatest bearing, 8\"");
    says(refused(m), "bear 2 3/4\": 1 1/4\" less than the least bearing, 4\"");
    m.first().eachSide = 6;
    says(refused(m), "6 stones a side bear 2 3/4\": 1 1/4\" less than the least bearing, 4\"");
  }

  /** twelve a side bear 7.5 in, but a joint stands ½ in from the jamb; arithmetic. */
  @Test
  void namesTheJointNearTheJamb() {
    JobMaker m = soldiers(8);
    m.first().width = Length.inches(192);
    m.first().key =
        new HeadSpec.Key(
            Length.inches(12), Length.inches(12), Length.ZERO, Length.ZERO, Length.ZERO);
    m.first().eachSide = 12;
    says(refused(m), "12 stones a side bear 7 1/2\"");
    says(refused(m), "stands 1/2\" from the jamb line: 1/2\" less than the clear 1\"");
  }

  @Test
  void wallTooShort() {
    JobMaker m = JobMaker.one();
    m.first().wallLeft = Length.inches(3);
    Solution.Refused refused = refused(m);
    says(refused, "the wall on the left gives 3\": 1\" less than the least bearing, 4\"");
    assertEquals("openings[0].head.bearing.min", refused.changes().get(0).path());
  }

  @Test
  void jointOffTheGrid() {
    JobMaker m = JobMaker.one();
    m.joints = Setting.Joints.MORTAR;
    m.joint = Length.inches(3 / 32.0);
    assertEquals(List.of("1/16", "1/8"), refused(m).changes().stream().map(Change::value).toList());
    m.joint = Length.inches(3 / 16.0);
    m.first().key = null;
    assertEquals(List.of("1/8", "1/4"), refused(m).changes().stream().map(Change::value).toList());
  }

  /** A key whose two widths are not those of one fan: 4 in at the bottom makes 4 · 60/48 = 5. */
  @Test
  void keyAgainstTheFan() {
    JobMaker m = JobMaker.one();
    m.first().shape = "jack";
    m.first().key =
        new HeadSpec.Key(Length.inches(4), Length.inches(8), Length.ZERO, Length.ZERO, Length.ZERO);
    Solution.Refused refused = refused(m);
    says(refused, "4\" at the bottom makes 5\" at the top, not 8\"");
    for (Change change : refused.changes()) {
      JobMaker then = JobMaker.one();
      then.first().shape = "jack";
      then.first().key = m.first().key;
      ChangeWriter.write(then, change);
      assertInstanceOf(Solution.Solved.class, solve(then), change.toString());
    }
    assertEquals(2, refused.changes().size());
  }

  @Test
  void fromStockIsForTheYard() {
    JobMaker m = JobMaker.one();
    m.first().rhythm = HeadSpec.Rhythm.FROM_STOCK;
    says(refused(m), "from-stock");
  }
}
