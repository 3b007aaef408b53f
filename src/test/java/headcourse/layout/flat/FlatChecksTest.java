package headcourse.layout.flat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Setting;
import headcourse.layout.HeadLayout;
import headcourse.layout.JointLine;
import headcourse.layout.PlacedStone;
import headcourse.layout.Side;
import headcourse.layout.Solution;
import headcourse.layout.shapes.Shapes;
import headcourse.testing.JobMaker;
import headcourse.units.Angle;
import headcourse.units.Length;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Flat heads against values from outside the project. */
class FlatChecksTest {
  private static Solution solve(JobMaker maker) {
    Job job = maker.make();
    String shape = job.openings().get(0).head().shape();
    return Shapes.named(shape).orElseThrow().setOut(job, job.openings().get(0));
  }

  private static HeadLayout solved(JobMaker maker) {
    Solution s = solve(maker);
    return assertInstanceOf(Solution.Solved.class, s, () -> String.valueOf(s)).head();
  }

  private static Length in(double inches) {
    return Length.inches(inches);
  }

  private static JobMaker jack(double span, double depth) {
    JobMaker m = JobMaker.one();
    m.first().shape = "jack";
    m.first().width = in(span);
    m.first().headHeight = in(depth);
    m.first().key = new HeadSpec.Key(in(4), null, Length.ZERO, Length.ZERO, Length.ZERO);
    m.first().bearing = new HeadSpec.Bearing(Length.ZERO, Length.ZERO, Length.ZERO);
    m.first().min = in(2);
    m.first().max = in(6);
    m.first().target = in(4);
    m.first().clear = in(1);
    return m;
  }

  private static JobMaker soldiers(double width) {
    JobMaker m = JobMaker.one();
    m.joints = Setting.Joints.MORTAR;
    m.joint = in(1 / 8.0);
    m.first().min = in(width);
    m.first().max = in(width);
    m.first().target = in(width);
    m.first().clear = in(1);
    return m;
  }

  /** BIA Technical Note 31A (1967), ½ in per foot of span for each 4 in of depth. */
  @ParameterizedTest
  @CsvSource({"24, 8", "36, 12", "48, 8", "48, 12", "60, 16"})
  void strikesFortyEightInchesBelow(double span, double depth) {
    HeadLayout head = solved(jack(span, depth));
    assertEquals(48.000, head.curve().striking() / 25.4, 0.001);
    for (JointLine j : head.joints()) {
      // The feet are snapped to 1/16 in, so a joint is within a tick of the line to that point.
      double x = j.foot().x() * (48 + depth) / 48;
      assertEquals(x, j.head().x(), 25.4 / 16 * 0.501);
    }
  }

  /** BIA Technical Note 31A. */
  @ParameterizedTest
  @CsvSource({"48, 12, 6.000, 26.565, 60.000", "36, 8, 3.000, 20.556, 42.000"})
  void skewbackByTheRule(double span, double depth, double run, double degrees, double top) {
    HeadLayout head = solved(jack(span, depth));
    JointLine end = end(head);
    double out = (end.head().x() - end.foot().x()) / 25.4;
    assertEquals(run, out, 0.001);
    assertEquals(degrees, Math.toDegrees(Math.atan2(out, depth)), 0.001);
    assertEquals(top, 2 * end.head().x() / 25.4, 0.001);
    assertEquals(0, head.bearing(Side.RIGHT).onWall().picometres());
  }

  /** camber ½ in at ⅛ in per foot of span; UK bricklaying manual, 1927. */
  @Test
  void camber() {
    JobMaker m = jack(48, 12);
    m.first().params.put("camber", Angle.ofRate(1 / 8.0, 12));
    HeadLayout head = solved(m);
    assertEquals(576.25, head.curve().radius() / 25.4, 1e-6);
    assertEquals(0.5 * 25.4, head.curve().intrados().edges().get(0).at(0.5).y(), 1e-6);
    assertEquals(12 * 25.4, head.curve().extrados().bounds().maxY(), 1e-9);
  }

  /** 60° rule, span 48, depth 12; UK bricklaying manual, 1927. */
  @Test
  void sixtyDegrees() {
    JobMaker m = jack(48, 12);
    m.first().params.put("skewback", Angle.degrees(60));
    HeadLayout head = solved(m);
    assertEquals(41.569, head.curve().striking() / 25.4, 0.001);
    // 6.928 is 12 / tan 60°; the stone itself is cut to the nearest 1/16 in.
    double exact = 24 * (head.curve().striking() / 25.4 + 12) / (head.curve().striking() / 25.4);
    assertEquals(6.928, exact - 24, 0.001);
    assertEquals(61.856, 2 * exact, 0.001);
    assertEquals(exact, end(head).head().x() / 25.4, 1 / 32.0);
  }

  /** arithmetic. */
  @Test
  void sixSoldiersOfEight() {
    HeadLayout head = solved(soldiers(8));
    List<PlacedStone> right = head.stones().stream().filter(s -> s.side() == Side.RIGHT).toList();
    assertEquals(6, right.size());
    assertEquals(in(53.75), right.get(5).feet().rightSoffit());
    assertEquals(in(5.75), head.bearing(Side.RIGHT).onWall());
    assertEquals(in(45.625), right.get(4).feet().rightSoffit());
    assertEquals(in(45.75), right.get(5).feet().leftSoffit());
  }

  /** a joint in line with the jamb is refused; common practice, no source. */
  @Test
  void jointInLineWithTheJamb() {
    JobMaker m = soldiers(7);
    Solution.Refused refused = assertInstanceOf(Solution.Refused.class, solve(m));
    assertTrue(!refused.problems().isEmpty());
  }

  /** exactly six a side bear 2.75, less than 4; seven bear 10.375; common practice. */
  @Test
  void tooShortOrTooLong() {
    JobMaker m = soldiers(7.5);
    m.first().eachSide = 6;
    assertInstanceOf(Solution.Refused.class, solve(m));
    m.first().bearing = new HeadSpec.Bearing(in(2.75), in(8), in(4));
    assertEquals(in(2.75), solved(m).bearing(Side.RIGHT).onWall());
    m.first().eachSide = 7;
    assertInstanceOf(Solution.Refused.class, solve(m));
    m.first().bearing = new HeadSpec.Bearing(in(4), in(10.375), in(6));
    assertEquals(in(10.375), solved(m).bearing(Side.RIGHT).onWall());
  }

  /** bears 7.5, but a joint stands ½ in from the jamb; arithmetic. */
  @Test
  void jointHalfAnInchFromTheJamb() {
    JobMaker m = soldiers(8);
    m.first().width = in(192);
    m.first().key = new HeadSpec.Key(in(12), in(12), Length.ZERO, Length.ZERO, Length.ZERO);
    m.first().eachSide = 12;
    assertInstanceOf(Solution.Refused.class, solve(m));
    m.first().clear = in(0.5);
    assertEquals(in(7.5), solved(m).bearing(Side.LEFT).onWall());
  }

  private static JointLine end(HeadLayout head) {
    return head.joints().get(head.joints().size() - 1);
  }
}
