package headcourse.layout.curved;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.job.HeadSpec;
import headcourse.layout.ChordOffsets;
import headcourse.layout.FaceEdge;
import headcourse.layout.HeadLayout;
import headcourse.layout.PlacedStone;
import headcourse.layout.Side;
import headcourse.layout.Solution;
import headcourse.testing.JobMaker;
import headcourse.testing.Seeds;
import headcourse.units.Length;
import headcourse.units.Units;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

/** How many stones, how wide, and how far their arrises stand off the curve. */
class DivisionTest {
  static final String[] SHAPES = RandomHeads.SHAPES;

  private static double mean(HeadLayout head) {
    return head.stones().stream()
        .filter(s -> s.side() == Side.RIGHT)
        .mapToDouble(DivisionTest::chord)
        .average()
        .orElseThrow();
  }

  private static double chord(PlacedStone s) {
    return s.edges(FaceEdge.Where.LEFT)
        .get(0)
        .to()
        .distance(s.edges(FaceEdge.Where.RIGHT).get(0).from());
  }

  /** The number chosen is the best of all numbers, each asked for by itself. */
  @ParameterizedTest
  @FieldSource("SHAPES")
  void noNumberIsBetter(String shape) {
    for (int seed = 0; seed < Seeds.of(6); seed++) {
      JobMaker m = RandomHeads.job(shape, seed);
      double target = m.first().target.mm();
      double best = Double.POSITIVE_INFINITY;
      for (int n = 1; n <= 70; n++) {
        m.first().eachSide = n;
        if (CurvedJobs.solve(m) instanceof Solution.Solved s) {
          best = Math.min(best, Math.abs(mean(s.head()) - target));
        }
      }
      m.first().eachSide = null;
      if (CurvedJobs.solve(m) instanceof Solution.Solved s) {
        assertEquals(best, s.head().proof().cost(), 1e-6, shape + ", seed " + seed);
      } else {
        assertEquals(Double.POSITIVE_INFINITY, best, shape + ", seed " + seed);
      }
    }
  }

  /** Equal stones are equal along the curve; the key, left open, is one of them. */
  @ParameterizedTest
  @FieldSource("SHAPES")
  void equalAlongTheCurve(String shape) {
    HeadLayout head = CurvedJobs.head(CurvedJobs.of(shape, 84, 10));
    List<Double> at =
        head.curve().around().stream()
            .filter(a -> a.side() == Side.RIGHT)
            .map(a -> a.distance().mm())
            .toList();
    for (int i = 1; i < at.size(); i++) {
      assertEquals(2 * at.get(0), at.get(i) - at.get(i - 1), 1e-6, shape);
    }
  }

  /** Graded stones shrink by the step from the springing to the crown. */
  @Test
  void graded() {
    JobMaker m = CurvedJobs.of("semicircular", 84, 10);
    m.first().rhythm = HeadSpec.Rhythm.GRADED;
    m.first().step = Length.inches(0.25);
    m.first().key = new HeadSpec.Key(Length.inches(6), null, Length.ZERO, Length.ZERO, Length.ZERO);
    HeadLayout head = CurvedJobs.head(m);
    List<Double> at =
        head.curve().around().stream()
            .filter(a -> a.side() == Side.RIGHT)
            .map(a -> a.distance().mm())
            .toList();
    for (int i = 2; i < at.size(); i++) {
      double wider = at.get(i) - at.get(i - 1) - (at.get(i - 1) - at.get(i - 2));
      assertEquals(6.35, wider, 1e-6);
    }
    assertEquals(Length.inches(6), head.stone("K").bottom());
    assertEquals(1, head.stones().size() % 2);
  }

  /** Without a key the number is even and a plumb joint stands at the crown. */
  @Test
  void keyless() {
    JobMaker m = CurvedJobs.of("pointed", 84, 10);
    m.first().key = null;
    HeadLayout head = CurvedJobs.head(m);
    assertEquals(0, head.stones().size() % 2);
    assertEquals(0, head.joints().get(0).foot().x(), 1e-9);
    assertEquals("", head.joints().get(0).inner());
    assertEquals("L1", head.joints().get(0).outer());
  }

  /** The key stands up, hangs down and stands out by what the job says. */
  @Test
  void key() {
    for (String extrados : new String[] {"concentric", "level", "stepped"}) {
      JobMaker m = CurvedJobs.of("segmental", 48, 8);
      m.first().params.put("extrados", extrados);
      m.first().params.put("course", Length.inches(7));
      m.first().params.put("rise", Length.inches(6));
      m.first().key =
          new HeadSpec.Key(
              Length.inches(5), null, Length.inches(2), Length.inches(1), Length.inches(0.5));
      HeadLayout head = CurvedJobs.head(m);
      PlacedStone key = head.stone("K");
      assertEquals(14 + 2, key.outline().bounds().maxY() / 25.4, 1e-6, extrados);
      assertEquals(5, CurvedJobs.inches(chord(key)), 1e-9, extrados);
      assertEquals(Length.inches(0.5), key.proud());
      assertEquals(
          5, CurvedJobs.inches(key.edges(FaceEdge.Where.SOFFIT).get(0).at(1).y()), 1e-9, extrados);
    }
  }

  /** A key given by its upper width measures that. */
  @Test
  void keyByItsTop() {
    for (String extrados : new String[] {"concentric", "level"}) {
      JobMaker m = CurvedJobs.of("semicircular", 60, 8);
      m.first().params.put("extrados", extrados);
      m.first().key =
          new HeadSpec.Key(
              null, Length.inches(8), Length.inches(1.5), Length.inches(0.5), Length.ZERO);
      PlacedStone key = CurvedJobs.head(m).stone("K");
      assertEquals(Length.inches(8), key.top(), extrados);
      assertEquals(8, CurvedJobs.inches(key.feet().rightTop().mm()) * 2, 1e-9, extrados);
    }
  }

  /** A pointed head's crown stone spans both arcs: two chords, one on each side of the point. */
  @Test
  void crownStoneSpansBothArcs() {
    HeadLayout head = CurvedJobs.head(CurvedJobs.of("pointed", 84, 10));
    List<ChordOffsets> chords = ChordOffsets.of(head.stone("K"));
    assertEquals(2, chords.size());
    assertEquals(chords.get(0).greatest(), chords.get(1).greatest(), 1e-9);
    assertEquals(1, ChordOffsets.of(head.stone("L1")).size());
  }

  /** Deviation R(1 − cos(θ/2)), and quarter offsets √(R² − c²/16) − R cos(θ/2). */
  @Test
  void offsetsFromTheChord() {
    JobMaker m = CurvedJobs.of("segmental", 48, 8);
    m.first().params.put("rise", Length.inches(6));
    m.first().eachSide = 2;
    HeadLayout head = CurvedJobs.head(m);
    double r = head.curve().radius();
    double half = (head.curve().centres().get(0).toAngle() - Math.PI / 2) / 5;
    double c = 2 * r * Math.sin(half);
    for (PlacedStone s : head.stones()) {
      assertEquals(r * (1 - Math.cos(half)), s.chordDeviation(), 1e-9, s.mark());
      ChordOffsets o = ChordOffsets.of(s).get(0);
      double quarter = Math.sqrt(r * r - c * c / 16) - r * Math.cos(half);
      assertEquals(c, o.chord(), 1e-9);
      assertEquals(quarter, o.quarter(), 1e-9);
      assertEquals(s.chordDeviation(), o.half(), 1e-9);
      assertEquals(quarter, o.threeQuarters(), 1e-9);
      assertEquals(s.chordDeviation(), o.greatest(), 1e-9);
    }
    assertTrue(
        head.remarks().stream().anyMatch(x -> x.key().equals("arris")), "arris not remarked on");
  }

  /** The number of stones that a remark names does do, and one less does not. */
  @ParameterizedTest
  @FieldSource("SHAPES")
  void numberThatWouldDo(String shape) {
    JobMaker m = CurvedJobs.of(shape, 84, 10);
    m.first().target = Length.inches(12);
    String text =
        CurvedJobs.head(m).remarks().stream()
            .filter(r -> r.key().equals("arris"))
            .findFirst()
            .orElseThrow()
            .message();
    int each = Integer.parseInt(text.replaceAll(".*\\((\\d+) each side\\).*", "$1"));
    m.first().min = Length.inches(0.5);
    m.first().eachSide = each;
    assertTrue(CurvedJobs.head(m).remarks().stream().noneMatch(r -> r.key().equals("arris")), text);
    m.first().eachSide = each - 1;
    assertTrue(CurvedJobs.head(m).remarks().stream().anyMatch(r -> r.key().equals("arris")), text);
    m.first().params.put("arris", "worked");
    assertTrue(CurvedJobs.head(m).remarks().stream().noneMatch(r -> r.key().equals("arris")));
  }

  /** Where it is the key alone that is too wide for a straight arris, no number would do. */
  @Test
  void noNumberMendsTheKey() {
    JobMaker m = CurvedJobs.of("semicircular", 48, 10);
    m.first().target = Length.inches(3);
    m.first().key = new HeadSpec.Key(Length.inches(8), null, Length.ZERO, Length.ZERO, Length.ZERO);
    String text =
        CurvedJobs.head(m).remarks().stream()
            .filter(r -> r.key().equals("arris"))
            .findFirst()
            .orElseThrow()
            .message();
    assertTrue(text.contains("(K)") && !text.contains("would do"), text);
  }

  /** Steps lie on the wall's own bed joints. */
  @Test
  void stepsLieOnTheCourses() {
    JobMaker m = CurvedJobs.of("semicircular", 84, 10);
    m.first().params.put("extrados", "stepped");
    m.courses = List.of(6.0, 14.0, 19.0, 27.0, 36.0, 44.0).stream().map(Length::inches).toList();
    HeadLayout head = CurvedJobs.head(m);
    for (PlacedStone s : head.stones()) {
      double top = s.outline().bounds().maxY();
      boolean onBed = m.courses.stream().anyMatch(c -> Math.abs(c.mm() - top) < 1e-9);
      boolean plumb = s.edges(FaceEdge.Where.TOP).size() == 1 && s.index() > 0;
      // Above the last bed joint given they go on by the last course, 8 in.
      boolean carriedOn = Math.abs(Math.IEEEremainder(top / 25.4 - 44, 8)) < 1e-9;
      assertTrue(onBed || carriedOn || plumb, s.mark() + " tops out at " + top / 25.4);
    }
  }

  /** An inch job and its metric twin are the same head. */
  @Test
  void metricTwin() {
    for (String shape : SHAPES) {
      JobMaker m = RandomHeads.job(shape, 3);
      JobMaker twin = RandomHeads.job(shape, 3);
      twin.units = Units.MILLIMETRE;
      HeadAssert.same(CurvedJobs.head(m), CurvedJobs.head(twin), 0);
    }
  }

  /** Thousands of heads take seconds. */
  @Test
  void fast() {
    int solved = 0;
    long start = System.nanoTime();
    for (int seed = 0; seed < 500; seed++) {
      for (String shape : SHAPES) {
        solved += CurvedJobs.solve(RandomHeads.job(shape, seed)) instanceof Solution.Solved ? 1 : 0;
      }
    }
    double seconds = (System.nanoTime() - start) / 1e9;
    assertTrue(solved > 2700, "solved " + solved);
    assertTrue(seconds < 30, "took " + seconds + " s");
  }
}
