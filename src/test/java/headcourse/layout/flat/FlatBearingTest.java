package headcourse.layout.flat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.geom.Arc;
import headcourse.geom.Edge;
import headcourse.geom.Point;
import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Measured;
import headcourse.job.Setting;
import headcourse.layout.Bearing;
import headcourse.layout.HeadLayout;
import headcourse.layout.PlacedStone;
import headcourse.layout.Side;
import headcourse.layout.Solution;
import headcourse.layout.shapes.Shapes;
import headcourse.testing.JobMaker;
import headcourse.testing.RandomJobs;
import headcourse.units.Angle;
import headcourse.units.Grid;
import headcourse.units.Length;
import headcourse.units.Units;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** How far flat heads bear, on the soffit line and on the top line, and what is printed of it. */
class FlatBearingTest {
  private static Optional<HeadLayout> solve(JobMaker m) {
    Job job = m.make();
    Solution s = Shapes.named(m.first().shape).orElseThrow().setOut(job, job.openings().get(0));
    return s instanceof Solution.Solved solved ? Optional.of(solved.head()) : Optional.empty();
  }

  private static Measured off(Length centre) {
    return new Measured(null, null, null, List.of(), null, null, centre);
  }

  /** 1200 wide, 300 high, skewback 65° from horizontal, bearing 45 on the soffit line. */
  private static JobMaker jack(double joint) {
    JobMaker m = JobMaker.one();
    m.units = Units.MILLIMETRE;
    m.tick = Length.mm(1);
    m.joints = joint > 0 ? Setting.Joints.MORTAR : Setting.Joints.DRY;
    m.joint = Length.mm(joint);
    JobMaker.OpeningMaker o = m.first();
    o.shape = "jack";
    o.width = Length.mm(1200);
    o.headHeight = Length.mm(300);
    o.key = new HeadSpec.Key(Length.mm(120), null, Length.ZERO, Length.ZERO, Length.ZERO);
    o.min = Length.mm(90);
    o.max = Length.mm(240);
    o.target = Length.mm(150);
    o.clear = Length.mm(20);
    o.bearing = new HeadSpec.Bearing(Length.mm(45), Length.mm(45), Length.mm(45));
    o.params.put("skewback", Angle.degrees(65));
    return m;
  }

  /** The edge of the end stone itself: 45 below, and 300 / tan 65° = 139.9 more on the top line. */
  @Test
  void jackArchesBearOnBothLines() {
    for (double joint : new double[] {0, 10}) {
      HeadLayout head = solve(jack(joint)).orElseThrow();
      for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
        assertEquals(Length.mm(45), head.bearing(side).onWall(), "joint " + joint);
        assertEquals(185, head.bearing(side).onTop().mm(), 1e-9, "joint " + joint);
      }
    }
  }

  @Test
  void printedToTheNearestStepAndNeverUpFromHalfway() {
    Grid grid = new Grid(Length.inches(1 / 16.0));
    assertEquals(Length.inches(4.625), Bearing.printed(Length.inches(4 + 21 / 32.0), grid));
    assertEquals(Length.inches(4.6875), Bearing.printed(Length.inches(4 + 43 / 64.0), grid));
    assertEquals(Length.inches(4.625), Bearing.printed(Length.inches(4 + 41 / 64.0), grid));
    assertEquals(Length.inches(4.625), Bearing.printed(Length.inches(4.625), grid));
    assertEquals(Length.ZERO, Bearing.printed(Length.ZERO, grid));
  }

  @Test
  void mirroredJobsBearMirrored() {
    int distinct = 0;
    for (long seed = 1; seed <= 60; seed++) {
      JobMaker m = RandomJobs.flat(seed, 30, 90);
      if (m.first().rhythm == HeadSpec.Rhythm.MIXED) {
        // Among equals a side's seed decides.
        continue;
      }
      Length off = m.tick.times(seed % 7 - 3);
      m.first().measured = off(off);
      Optional<HeadLayout> one = solve(m);
      m.first().measured = off(off.negated());
      Length wall = m.first().wallLeft;
      m.first().wallLeft = m.first().wallRight;
      m.first().wallRight = wall;
      Optional<HeadLayout> other = solve(m);
      assertEquals(one.isPresent(), other.isPresent(), "seed " + seed);
      if (one.isEmpty()) {
        continue;
      }
      assertEquals(one.get().bearing(Side.LEFT), other.get().bearing(Side.RIGHT), "seed " + seed);
      assertEquals(one.get().bearing(Side.RIGHT), other.get().bearing(Side.LEFT), "seed " + seed);
      distinct += one.get().bearing(Side.LEFT).equals(one.get().bearing(Side.RIGHT)) ? 0 : 1;
    }
    assertTrue(distinct > 5, "only " + distinct + " with two different ends");
  }

  /**
   * A camber of 3/4 in over 72 in has R = (36² + (3/4)²) / (2 · 3/4) = 864.375; it runs from jamb
   * to jamb, so with the centre mark 3/8 right of the middle it is struck 3/8 left of the mark.
   */
  @Test
  void camberRunsFromJambToJambWhereTheCentreIsOff() {
    for (int way : new int[] {-1, 0, 1}) {
      JobMaker m = JobMaker.one();
      JobMaker.OpeningMaker o = m.first();
      o.shape = "jack";
      o.width = Length.inches(72);
      o.key = new HeadSpec.Key(Length.inches(6), null, Length.ZERO, Length.ZERO, Length.ZERO);
      o.min = Length.inches(4);
      o.params.put("camber", Length.inches(0.75));
      double off = way * 0.375;
      o.measured = off(Length.inches(off));
      HeadLayout head = solve(m).orElseThrow();
      assertEquals(Length.inches(36 + off), head.jamb(Side.LEFT));
      HeadLayout.Centre camber = head.curve().centres().get(1);
      assertEquals(864.375, camber.trammel() / 25.4, 1e-9);
      assertEquals(-off, camber.at().x() / 25.4, 1e-9);
      double left = -head.jamb(Side.LEFT).mm();
      double right = head.jamb(Side.RIGHT).mm();
      for (PlacedStone s : head.stones()) {
        for (Edge e : s.outline().edges()) {
          if (e instanceof Arc arc) {
            assertEquals(0, arc.centre().distance(camber.at()), 1e-9, s.mark());
            for (Point p : List.of(e.from(), e.to())) {
              assertTrue(p.x() > left - 1e-6 && p.x() < right + 1e-6, s.mark() + " " + p);
            }
          }
        }
      }
      for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
        double jamb = side == Side.LEFT ? left : right;
        assertTrue(
            head.end(side).outline().edges().stream()
                .anyMatch(e -> e.from().distance(new Point(jamb, 0)) < 1e-6),
            "the camber ends on the jamb line, " + side);
      }
    }
  }
}
