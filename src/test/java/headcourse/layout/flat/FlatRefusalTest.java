package headcourse.layout.flat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.cure.Advice;
import headcourse.diag.Diagnostic;
import headcourse.job.Change;
import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Setting;
import headcourse.layout.Solution;
import headcourse.layout.shapes.Shapes;
import headcourse.testing.JobMaker;
import headcourse.units.Angle;
import headcourse.units.Length;
import headcourse.work.CureCheck;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is said when a head can't be set out. */
class FlatRefusalTest {
  private static Solution solve(JobMaker maker) {
    Job job = maker.make();
    String shape = job.openings().get(0).head().shape();
    return Shapes.named(shape).orElseThrow().setOut(job, job.openings().get(0));
  }

  private static Advice refused(JobMaker maker) {
    return CureCheck.advice(maker);
  }

  private static List<Change> changes(Advice advice) {
    return advice.cures().stream().flatMap(c -> c.changes().stream()).toList();
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

  private static void says(Advice refused, String text) {
    List<String> all = refused.problems().stream().map(Diagnostic::message).toList();
    assertTrue(all.stream().anyMatch(m -> m.contains(text)), () -> text + " not in " + all);
  }

  /** the joint stands 47.75 to 47.875 from the centre; common practice, no source. */
  @Test
  void namesTheJointInLineWithTheJamb() {
    Advice refused = refused(soldiers(7));
    says(refused, "the joint outside L6, 47 3/4\" to 47 7/8\" from the centre,");
    says(refused, "stands 1/8\" from the jamb line: 7/8\" less than the clear 1\"");
    assertTrue(
        changes(refused).stream().anyMatch(c -> c.path().equals("openings[0].head.stones.min")),
        () -> changes(refused).toString());
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
    Advice refused = refused(m);
    says(refused, "the wall on the left gives 3\": 1\" less than the least bearing, 4\"");
    assertEquals("openings[0].head.bearing.min", changes(refused).get(0).path());
  }

  /**
   * Joints of 8° a foot strike 6 / tan 8° = 42.69 in below the soffit line. The key is 4 in wide 12
   * in above it, so a tick is left 41.84 in below, and half of what it measures on the line, which
   * is less than 2 in, 21.35 in below. Similar triangles.
   */
  @Test
  void keyThatHangsToAnEdge() {
    JobMaker m = JobMaker.one();
    m.first().shape = "jack";
    m.first().params.put("rake", Angle.degrees(8));
    m.first().key = hanging(41.75);
    assertInstanceOf(Solution.Solved.class, solve(m));
    m.first().key = hanging(42);
    Advice refused = refused(m);
    says(refused, "nothing of it is left 42\" below the soffit line");
    Change drop = changes(refused).get(0);
    assertEquals("openings[0].head.key.drop 21 5/16", drop.path() + " " + drop.value());
  }

  @Test
  void camberThatNobodyCuts() {
    JobMaker m = JobMaker.one();
    m.first().shape = "jack";
    m.first().params.put("rake", Angle.degrees(8));
    m.first().key = hanging(1);
    m.first().params.put("camber", Length.inches(1 / 32.0));
    assertInstanceOf(Solution.Solved.class, solve(m));
    m.first().params.put("camber", Angle.ofRate(0.000125, 12));
    says(refused(m), "less than half a step of the grid can't be cut; leave it out, or give 1/16");
  }

  private static HeadSpec.Key hanging(double drop) {
    return new HeadSpec.Key(null, Length.inches(4), Length.ZERO, Length.inches(drop), Length.ZERO);
  }

  /** The reader takes the nearest on the grid; a program may ask for what lies off it. */
  @Test
  void jointOffTheGrid() {
    JobMaker m = JobMaker.one();
    m.joints = Setting.Joints.MORTAR;
    m.joint = Length.inches(3 / 32.0);
    assertEquals(List.of("1/16", "1/8"), proposed(m));
    m.joint = Length.inches(3 / 16.0);
    m.first().key = null;
    assertEquals(List.of("1/8", "1/4"), proposed(m));
    assertEquals(
        List.of("1/8", "1/4"), changes(refused(m)).stream().map(Change::value).limit(2).toList());
  }

  private static List<String> proposed(JobMaker m) {
    return assertInstanceOf(Solution.Refused.class, solve(m)).proposals().stream()
        .map(p -> p.get(0).value())
        .toList();
  }

  /** A key whose two widths are not those of one fan: 4 in at the bottom makes 4 · 60/48 = 5. */
  @Test
  void keyAgainstTheFan() {
    JobMaker m = JobMaker.one();
    m.first().shape = "jack";
    m.first().key =
        new HeadSpec.Key(Length.inches(4), Length.inches(8), Length.ZERO, Length.ZERO, Length.ZERO);
    Advice refused = refused(m);
    says(refused, "4\" at the bottom makes 5\" at the top, not 8\"");
    assertEquals(3, refused.cures().size());
    assertTrue(changes(refused).stream().anyMatch(Change::leavesOut));
    assertEquals(List.of(), new CureCheck().of(m, "the fan").failed);
  }

  @Test
  void fromStockIsForTheYard() {
    JobMaker m = JobMaker.one();
    m.first().rhythm = HeadSpec.Rhythm.FROM_STOCK;
    says(
        new Advice(assertInstanceOf(Solution.Refused.class, solve(m)).problems(), List.of(), 0),
        "from-stock");
  }
}
