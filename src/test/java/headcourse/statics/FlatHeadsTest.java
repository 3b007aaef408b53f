package headcourse.statics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.geom.Point;
import headcourse.job.Above;
import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.layout.HeadLayout;
import headcourse.layout.Solution;
import headcourse.layout.shapes.Shapes;
import headcourse.statics.Standing.Verdict;
import headcourse.testing.JobMaker;
import headcourse.units.Angle;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Flat heads against statics by hand. */
class FlatHeadsTest {
  private static final double RIGID = 1e-9;

  /** Upright blocks of equal width between two walls, with a load by place on top. */
  private static DoubleFunction<Blocks> upright(double span, double depth, int n, double friction) {
    return share -> {
      List<Joint> joints = new ArrayList<>();
      List<Load> loads = new ArrayList<>();
      for (int i = 0; i <= n; i++) {
        double x = span * i / n - span / 2;
        joints.add(new Joint(new Point(x, 0), new Point(x, depth * share)));
        if (i > 0) {
          loads.add(new Load(span / n * depth * share, x - span / n / 2));
        }
      }
      return new Blocks(joints, loads, friction);
    };
  }

  /**
   * Check 35: H/W = L/8d over the full depth, 3L/8d inside the middle third (BIA Technical Note
   * 31A, from memory, and statics). A third of the depth is what the middle third leaves, so the
   * second figure is that of blocks a third as deep and of the same weight.
   */
  @ParameterizedTest
  @CsvSource({"48, 12, 0.5, 1.5", "96, 12, 1.0, 3.0", "192, 12, 2.0, 6.0"})
  void thrustOfAFlatHead(double span, double depth, double full, double third) {
    double rough = 40;
    Blocks whole = upright(span, depth, 24, rough).apply(1);
    assertEquals(full, new Equilibrium(whole).leastThrust().orElseThrow().thrust(), RIGID);
    Blocks middle = upright(span, depth / 3, 24, rough).apply(1);
    assertEquals(third, new Equilibrium(middle).leastThrust().orElseThrow().thrust(), RIGID);
    assertEquals(Double.POSITIVE_INFINITY, new Equilibrium(whole).greatestThrust());
  }

  /** Where the least thrust counts, the bound on it is the depth: d = L/8b. */
  @Test
  void theBoundGivesTheLeastDepth() {
    Standing s = StandingFinder.of(upright(192, 12, 24, 0.65), 12, 2.5);
    assertEquals(192 / 8 / 2.5, s.least(), 1e-4);
    assertEquals(Verdict.STANDS, s.verdict());
    assertTrue(s.pushes());
    assertEquals(1.25, s.margin(), 1e-5);
    assertEquals(Math.sqrt(2 * 2.0 * 192 * 12), s.pier(), 1e-6);
    Standing over = StandingFinder.of(upright(192, 12, 24, 0.65), 12, 1.5);
    assertEquals(Verdict.PUSHES, over.verdict());
    assertEquals(16, over.least(), 1e-4);
    assertEquals(0.75, over.margin(), 1e-5);
  }

  /**
   * Short and deep: the end joints carry W/2 by friction alone, so H = W/2µ, whatever the depth. Of
   * 24 × 24 with µ = 0.5 that is 1.0, eight times the 0.125 that the depth would ask for.
   */
  @Test
  void frictionOfPlumbEnds() {
    Equilibrium e = new Equilibrium(upright(24, 24, 6, 0.5).apply(1));
    assertEquals(1.0, e.leastThrust().orElseThrow().thrust(), RIGID);
  }

  /**
   * Two stones of 12 either side of an opening of 192 × 12 lie wholly on the wall, each on its own
   * seat: the thrust is that of the clear width about the feet of the joints over the jambs, 96 ·
   * 12 · 48 / 12 = 4608, of a weight of 240 · 12 = 2880: 1.6. Did only the end stones lie there,
   * the head would span from their inner joints, 216 wide: 108 · 54 / 2880 = 2.025.
   */
  @Test
  void everyStoneOnTheWallHasItsSeat() {
    Blocks plain = upright(240, 12, 20, 0.65).apply(1);
    List<Seat> left = new ArrayList<>();
    for (int k = 0; k < 2; k++) {
      Point outer = plain.joints().get(k).foot();
      left.add(new Seat(plain.joints().get(k + 1).foot(), outer));
    }
    List<Seat> right = left.stream().map(Seat::mirrored).toList();
    Blocks both = new Blocks(plain.joints(), plain.loads(), left, right, 0.65);
    assertEquals(1.6, thrust(both), RIGID);
    Blocks ends =
        new Blocks(plain.joints(), plain.loads(), left.subList(0, 1), right.subList(0, 1), 0.65);
    assertEquals(2.025, thrust(ends), RIGID);
  }

  /**
   * The triangle over a flat head of 96 × 12 (45°, common practice): the wall is 48 − 12 = 36 high
   * over the middle and ends where it meets the head's top, 36 to either side. Half of it weighs
   * 36²/2 = 648 and acts 12 from the middle; half the head weighs 576 and acts 24 from it. About
   * the foot of the wall, with the thrust at the top of the middle: H · 12 = 648 · (48 − 12) + 576
   * · 24 = 37152, H = 3096; the whole weighs 2448, so H/W = 1.26471.
   *
   * <p>A wall 10 higher all over: H · 12 = 48 · (12 + 10) · 24, W = 96 · 22, as the head alone:
   * 1.0.
   */
  @Test
  void theWallAbove() {
    HeadLayout head = flat(96, 12, 0).head();
    Blocks triangle = new HeadBlocks(head, 40, new Above(Above.Kind.TRIANGLE, Length.ZERO)).at(1);
    assertEquals(2448 * 25.4 * 25.4, triangle.weight(), 2448 * 25.4 * 25.4 * 2e-3);
    assertEquals(1.26471, thrust(triangle), 2e-3);
    Blocks level = new HeadBlocks(head, 40, new Above(Above.Kind.LEVEL, Length.inches(10))).at(1);
    assertEquals(96 * 22 * 25.4 * 25.4, level.weight(), 96 * 22 * 25.4 * 25.4 * 2e-3);
    assertEquals(1.0, thrust(level), 2e-3);
  }

  private static double thrust(Blocks blocks) {
    return new Equilibrium(blocks).leastThrust().orElseThrow().thrust();
  }

  private record Made(Job job, HeadLayout head) {}

  /** A head of a plain opening, in inches. */
  private static Made flat(double span, double depth, double skewback) {
    JobMaker m = JobMaker.one();
    JobMaker.OpeningMaker o = m.first();
    o.width = Length.inches(span);
    o.headHeight = Length.inches(depth);
    // Without a key a joint stands in the middle, where the thrust is highest.
    o.key = null;
    o.shape = "jack";
    o.bearing = new HeadSpec.Bearing(Length.ZERO, Length.inches(0.1), Length.ZERO);
    o.min = Length.inches(2);
    o.max = Length.inches(12);
    if (skewback > 0) {
      o.params.put("skewback", Angle.degrees(skewback));
    } else {
      o.params.put("striking", Length.inches(1e4));
    }
    Job job = m.make();
    Solution s = Shapes.named("jack").orElseThrow().setOut(job, job.openings().get(0));
    return new Made(job, ((Solution.Solved) s).head());
  }

  /**
   * A jack arch with a 60° skewback, 48 wide, springing from the jambs, worked by hand. Its end
   * joint leans d/√3 outwards over its depth d; half of it is a trapezium, 24 wide below and 24 +
   * d/√3 above. Its weight, 24 d + d²/(2√3), acts from the middle at
   *
   * <pre>x = (24 d · 12 + d²/(2√3) · (24 + d/(3√3))) / (24 d + d²/(2√3))</pre>
   *
   * <p>The least thrust comes from the highest point at the middle, (0, d), and the lowest at the
   * wall, (24, 0), if friction bears it there: H d = W/2 · (24 − x). With b = H/W allowed,
   *
   * <pre>b d (2 · 24 d + d²/√3) = 24 · 24 d − 24 d · 12 − d²/(2√3) · d/(3√3)
   *   → b (48 + d/√3) d = 288 − d²/18</pre>
   *
   * <p>so for b = 0.5 it is d² (1/(2√3) + 1/18) + 24 d − 288 = 0, and d = 10.4375. At the wall the
   * force leans atan(W/2 / H) = 45° off level, the joint's normal 30°: 15° between them, and tan
   * 15° = 0.268 is within a friction of 0.65.
   */
  @Test
  void jackArchWithSixtyDegrees() {
    double a = 1 / (2 * Math.sqrt(3)) + 1 / 18.0;
    double d = (-24 + Math.sqrt(24 * 24 + 4 * a * 288)) / (2 * a);
    assertEquals(10.4375, d, 1e-3);
    Made made = flat(48, 12, 60);
    Standing s = StandingFinder.of(made.head(), 0.65, Above.NOTHING, 0.5);
    // Feet of joints lie on the grid, so the skewback is not quite 60°.
    assertEquals(d, s.least() / 25.4, 0.03);
    assertEquals(Verdict.STANDS, s.verdict());
    // And as drawn, d = 12: H/W = (288 − 8) / (12 (48 + 6.9282)) = 0.42480.
    assertEquals(0.42480, s.thrust(), 2e-3);
    double most = s.joints().get(0).head().x() - s.joints().get(0).foot().x();
    assertEquals(-6.9282, most / 25.4, 0.04);
  }
}
