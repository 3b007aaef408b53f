package headcourse.bench;

import static headcourse.bench.StoneMaker.INCH;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.geom.Arc;
import headcourse.geom.Point;
import headcourse.geom.Straight;
import headcourse.geom.Vec;
import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Setting;
import headcourse.layout.Drift;
import headcourse.layout.FaceEdge;
import headcourse.layout.FaceEdge.Where;
import headcourse.layout.PlacedStone;
import headcourse.layout.Shortfall;
import headcourse.layout.Side;
import headcourse.layout.Solution;
import headcourse.layout.shapes.Shapes;
import headcourse.testing.JobMaker;
import headcourse.units.Grid;
import headcourse.units.Length;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class HeadBenchTest {
  private static Length in(double inches) {
    return Length.inches(inches);
  }

  static HeadWork work(Job job) {
    Solution s =
        Shapes.named(job.openings().get(0).head().shape())
            .orElseThrow()
            .setOut(job, job.openings().get(0));
    return HeadBench.workUp(job, ((Solution.Solved) s).head());
  }

  /** Opening 96, key 10, soldiers 8, joints ⅛: six a side, the end 53.75 out (by arithmetic). */
  private static JobMaker sixASide() {
    JobMaker m = JobMaker.one();
    m.joints = Setting.Joints.MORTAR;
    m.joint = in(1 / 8.0);
    m.opens = Length.ZERO;
    return m;
  }

  @Test
  void reliefLeavesTheSeat() {
    HeadWork w = work(sixASide().make());
    Piece end = w.piece("R6");
    assertEquals(in(4), end.leg().depth());
    // Outer end 53.75, jamb 48, seat 1: 4.75 of the return go.
    assertEquals(in(4.75), end.leg().relief());
    assertEquals(49, end.leg().seatFrom() / INCH, 1e-9);
    Piece left = w.piece("L6");
    assertEquals(in(4.75), left.leg().relief());
    assertEquals(-49, left.leg().seatFrom() / INCH, 1e-9);
    assertEquals(Length.ZERO, w.piece("R5").leg().relief());
    // By hand: 8·12·1¼ + 3¼·1¼·2¾ = 131.171875 in³.
    assertEquals(131.171875, end.mass().volumeM3() / Math.pow(0.0254, 3), 1e-6);
    assertEquals(147.5, w.piece("R5").mass().volumeM3() / Math.pow(0.0254, 3), 1e-6);
  }

  @Test
  void stoneWhollyPastTheSeatHasNoReturn() {
    JobMaker m = sixASide();
    m.first().bearing = new HeadSpec.Bearing(in(8), in(16), in(14));
    HeadWork w = work(m.make());
    Piece end = w.pieces().get(w.pieces().size() - 1);
    assertEquals(Length.ZERO, end.leg().depth());
    assertEquals(end.mass().areaM2() * end.thickness().mm() / 1000, end.mass().volumeM3(), 1e-12);
    // The bench cuts it through the thickness alone.
    assertTrue(end.saw().stream().allMatch(s -> s.depth().equals(end.thickness())));
  }

  @Test
  void settingOrderAndReach() {
    HeadWork w = work(sixASide().make());
    assertEquals(
        List.of("K", "R1", "L1", "R2", "L2", "R3", "L3", "R4", "L4", "R5", "L5", "R6", "L6"),
        w.inSettingOrder().stream().map(p -> p.stone().mark()).toList());
    JobMaker dry = sixASide();
    dry.joints = Setting.Joints.DRY;
    dry.joint = Length.ZERO;
    HeadWork d = work(dry.make());
    for (Piece p : d.pieces()) {
      List<EdgeName> edges = p.notches().stream().map(Notch::edge).toList();
      assertEquals(
          p.stone().side() == Side.CENTRE
              ? List.of(EdgeName.LEFT, EdgeName.RIGHT)
              : List.of(EdgeName.OUTER),
          edges);
      assertTrue(p.notches().stream().allMatch(Notch::reachable));
    }
    assertEquals("R2", d.piece("R1").notches().get(0).hiddenBy());
    assertEquals("L1", d.piece("K").notches().get(0).hiddenBy());
    Piece end = d.pieces().get(0);
    assertEquals("wall", end.notches().get(0).hiddenBy());
  }

  @Test
  void mortarOpensBothEdgesWhereAShankPasses() {
    JobMaker m = sixASide();
    m.joint = in(1 / 4.0);
    HeadWork w = work(m.make());
    Piece r1 = w.piece("R1");
    assertEquals(
        List.of(EdgeName.INNER, EdgeName.OUTER), r1.notches().stream().map(Notch::edge).toList());
    assertTrue(r1.notches().stream().allMatch(n -> n.hiddenBy().equals("joint") && n.reachable()));
    // The shank is 3/16: a joint of 1/8 lets none through.
    HeadWork thin = work(sixASide().make());
    assertEquals(
        List.of(EdgeName.OUTER), thin.piece("R1").notches().stream().map(Notch::edge).toList());
  }

  /** Clear of both ends by twice the thickness, above the centre of mass, by hand: 5.0 and 9.5. */
  @Test
  void notchHeight() {
    Notch n = work(sixASide().make()).piece("R3").notches().get(0);
    assertEquals(in(7.25), n.height());
    assertEquals(7.25 * INCH, n.at().y(), 1e-9);
  }

  @Test
  void tallEdgeTakesTwoScrews() {
    JobMaker m = sixASide();
    m.first().headHeight = in(18);
    Piece p = work(m.make()).piece("R2");
    assertEquals(List.of(in(4.5), in(13.5)), p.notches().stream().map(Notch::height).toList());
    m.first().headHeight = in(16);
    assertEquals(1, work(m.make()).piece("R2").notches().size());
  }

  @Test
  void wideStoneTakesTwoScrews() {
    JobMaker m = sixASide();
    m.first().max = in(18);
    m.first().target = in(17);
    m.first().bearing = new HeadSpec.Bearing(in(4), in(16), in(8));
    Piece p = work(m.make()).piece("R2");
    assertTrue(p.stone().bottom().compareTo(in(16)) > 0);
    assertEquals(List.of(in(3), in(9)), p.notches().stream().map(Notch::height).toList());
  }

  /** Key ½ proud, rising 2, dropping 1, its sides 1 in 12: lengths along them by Pythagoras. */
  @Test
  void keyShowsItsSides() {
    JobMaker m = sixASide();
    m.joints = Setting.Joints.DRY;
    m.joint = Length.ZERO;
    m.first().key = new HeadSpec.Key(in(8), in(10.5), in(2), in(1), in(0.5));
    HeadWork w = work(m.make());
    Piece key = w.piece("K");
    double slope = Math.hypot(12, key.left().offset().mm() / INCH / 15 * 12) / 12;
    List<String> said =
        key.exposed().stream()
            .map(
                e ->
                    String.format(
                        java.util.Locale.ROOT,
                        "%s %s %.3f %.3f",
                        e.edge(),
                        e.why(),
                        e.length().inches() / (e.edge() == EdgeName.TOP ? 1 : slope),
                        e.depth().inches()))
            .collect(Collectors.toList());
    List<headcourse.geom.Edge> upper = key.stone().edges(Where.TOP);
    String top =
        String.format(java.util.Locale.ROOT, "TOP PROUD %.3f 0.500", upper.get(0).length() / INCH);
    assertEquals(
        List.of(
            "LEFT DROP 1.000 4.500",
            "LEFT PROUD 12.000 0.500",
            "LEFT RISE 2.000 1.250",
            "RIGHT DROP 1.000 4.500",
            "RIGHT PROUD 12.000 0.500",
            "RIGHT RISE 2.000 1.250",
            top),
        said);
    assertTrue(w.piece("R1").exposed().isEmpty());
    // It is hidden only where the neighbour stands: between 1 and 13 from the key's lower end.
    for (Notch n : key.notches()) {
      assertTrue(n.at().y() > 0 && n.at().y() < 12 * INCH);
      assertFalse(n.hiddenBy().isEmpty());
    }
  }

  @Test
  void onePassOrTwo() {
    JobMaker m = sixASide();
    m.joints = Setting.Joints.DRY;
    m.joint = Length.ZERO;
    m.first().key = new HeadSpec.Key(in(8), in(11), Length.ZERO, Length.ZERO, Length.ZERO);
    Piece one = work(m.make()).piece("K");
    assertEquals(3, one.saw().size());
    SawPass side = one.saw().get(0);
    assertEquals(SawPass.Part.BOTH_LEGS, side.part());
    assertEquals(one.left().offSquare().radians(), side.mitre().radians(), 1e-12);
    assertEquals(0, side.tilt().radians());
    assertEquals(in(4), side.depth());
    assertTrue(side.possible());

    m.depthOfCut = in(3);
    Piece two = work(m.make()).piece("K");
    assertEquals(5, two.saw().size());
    SawPass face = two.saw().get(0);
    SawPass under = two.saw().get(1);
    assertEquals(SawPass.Part.FACE_LEG, face.part());
    assertEquals(in(1.25), face.depth());
    assertEquals(SawPass.Lay.RETURN_DOWN, under.lay());
    assertEquals(0, under.mitre().radians());
    assertEquals(two.left().offSquare().radians(), under.tilt().radians(), 1e-12);
    // Leaning 1½ in 12: cos = 12/√(12² + 1.5²), so 1.25 becomes 1.259728.
    assertEquals(1.259728, under.depth().inches(), 1e-6);
    assertTrue(under.possible());

    m.depthOfCut = in(1.25);
    Piece none = work(m.make()).piece("K");
    assertTrue(none.saw().get(0).possible());
    assertFalse(none.saw().get(1).possible());
    assertFalse(work(m.make()).piece("R1").saw().isEmpty());
  }

  @Test
  void mitredHeadIsCutFromFlats() {
    JobMaker m = sixASide();
    m.first().soffit = HeadSpec.Soffit.MITRED;
    HeadWork w = work(m.make());
    List<String> passes =
        w.piece("R1").saw().stream()
            .map(
                s ->
                    String.format(
                        java.util.Locale.ROOT,
                        "%s %s %.3f %.3f",
                        s.part(),
                        s.edge(),
                        s.mitre().degrees(),
                        s.tilt().degrees()))
            .toList();
    assertEquals(
        List.of(
            "FACE_LEG SOFFIT 0.000 45.000",
            "FACE_LEG INNER 0.000 0.000",
            "FACE_LEG OUTER 0.000 0.000",
            "FACE_LEG TOP 0.000 0.000",
            "SOFFIT_PIECE SOFFIT 0.000 45.000",
            "SOFFIT_PIECE INNER 0.000 0.000",
            "SOFFIT_PIECE OUTER 0.000 0.000"),
        passes);
    assertTrue(w.piece("R1").saw().stream().allMatch(SawPass::possible));
    m.first().soffit = HeadSpec.Soffit.NONE;
    Piece bare = work(m.make()).piece("R1");
    assertEquals(4, bare.saw().size());
    assertEquals(Length.ZERO, bare.leg().depth());
    assertEquals(ExposedEdge.Why.SOFFIT, bare.exposed().get(0).why());
  }

  /**
   * Seven cuts with the key's half at ± 1/32: 7/32 inwards. Six dry joints open by 1/64 and never
   * close: 7/32 + 6/64 = 20/64 outwards, likely √7/32 about 6/128.
   */
  @Test
  void stackUp() {
    JobMaker m = sixASide();
    m.joints = Setting.Joints.DRY;
    m.joint = Length.ZERO;
    m.opens = in(1 / 64.0);
    m.first().clear = in(1.5);
    HeadWork w = work(m.make());
    StackUp s = w.stackUps().get(1);
    int n = (int) w.pieces().stream().filter(p -> p.stone().side() == Side.RIGHT).count() + 1;
    assertEquals(n, s.stones());
    assertEquals(in(n / 32.0), s.drift().inward());
    assertEquals(in(n / 32.0 + (n - 1) / 64.0), s.drift().outward());
    assertEquals(Math.sqrt(n) / 32, s.drift().likely().inches(), 1e-9);
    assertEquals((n - 1) / 128.0, s.drift().mean().inches(), 1e-9);
    assertEquals(
        w.layout().bearing(Side.RIGHT).onWall().minus(s.drift().inward()), s.bearingLeast());
    assertEquals(
        w.layout().bearing(Side.RIGHT).onWall().plus(s.drift().outward()), s.bearingGreatest());
    JobMaker mortar = sixASide();
    mortar.first().bearing = new HeadSpec.Bearing(in(5.75), in(5.75), in(5.75));
    StackUp t = work(mortar.make()).stackUps().get(0);
    assertEquals(in(7 / 32.0), t.drift().inward());
    assertEquals(in(7 / 32.0), t.drift().outward());
    // The last joint ends at 45¾: 2¼ from the jamb. Six stones up to it leave 1½ at ± ⅛ each.
    assertTrue(t.jambStillClear());
    mortar.cutTolerance = in(1 / 8.0);
    assertTrue(work(mortar.make()).stackUps().get(0).jambStillClear());
    mortar.cutTolerance = in(9 / 64.0);
    assertFalse(work(mortar.make()).stackUps().get(0).jambStillClear());
  }

  /** Without a key nothing is cut before the first stone, and joint 0 stands on the centre line. */
  @Test
  void driftWithoutAKey() {
    JobMaker m = sixASide();
    m.first().key = null;
    Job job = m.make();
    HeadWork w = work(job);
    int n = (int) w.pieces().stream().filter(p -> p.stone().side() == Side.LEFT).count();
    assertEquals(Length.ZERO, Drift.at(job, w.layout(), Side.LEFT, 0).outward());
    assertEquals(in(2 / 32.0), Drift.at(job, w.layout(), Side.LEFT, 2).inward());
    assertEquals(n, w.stackUps().get(0).stones());
    assertEquals(in(n / 32.0), w.stackUps().get(0).drift().inward());
  }

  /**
   * Adding up, and the ends rounded towards safety: 4 7/64 − 3/64 and + 5/64 on sixteenths is 4 1/8
   * − 1/16 and + 1/16.
   */
  @Test
  void printedStackUpAddsUp() {
    Drift drift = new Drift(in(3 / 64.0), in(5 / 64.0), Length.ZERO, Length.ZERO);
    StackUp s = new StackUp(Side.LEFT, 3, drift, in(4 + 7 / 64.0), Shortfall.SURE);
    StackUp.Printed p = s.on(new Grid(in(1 / 16.0)));
    assertEquals(in(4 + 1 / 8.0), p.bearing());
    assertEquals(in(1 / 16.0), p.inward());
    assertEquals(in(1 / 16.0), p.outward());
    assertEquals(in(4 + 1 / 16.0), p.least());
    assertEquals(in(4 + 3 / 16.0), p.greatest());
  }

  @Test
  void handsAreToldApart() {
    JobMaker m = sixASide();
    m.joints = Setting.Joints.DRY;
    m.joint = Length.ZERO;
    HeadWork w = work(m.make());
    assertEquals(w.piece("R2").alike(), w.piece("R3").alike());
    assertEquals(w.piece("L2").alike(), w.piece("L3").alike());
    // Rectangles alike but for the edge that takes the slot.
    assertNotEquals(w.piece("L2").alike(), w.piece("R2").alike());
  }

  /** A ring stone, R 51, depth 8, 4.3188° a stone (a segmental arch): areas of ring sectors. */
  @Test
  void ringStone() {
    Job job = JobMaker.one().make();
    double r = 51 * INCH;
    double top = 59 * INCH;
    double theta = Math.toRadians(4.3188);
    Point c = new Point(0, -r);
    PlacedStone key = ring("K", c, r, top, Math.PI / 2, theta);
    PlacedStone right = ring("R1", c, r, top, Math.PI / 2 - theta, theta);
    PlacedStone left = ring("L1", c, r, top, Math.PI / 2 + theta, theta);
    HeadWork w = HeadBench.workUp(job, StoneMaker.head(job, left, key, right));
    Piece p = w.piece("R1");
    assertEquals((top * top - r * r) * theta / 2 / 1e6, p.mass().areaM2(), 1e-12);
    // Each edge is half the angle off square to its own chord, the top the long point.
    assertEquals(theta / 2, p.left().offSquare().radians(), 1e-12);
    assertEquals(theta / 2, p.right().offSquare().radians(), 1e-12);
    assertEquals(Rake.LongPoint.TOP, p.right().longPoint());
    assertEquals(2 * top * Math.sin(theta / 2), p.measures().extent().mm(), 1e-6);
    assertEquals(8, p.measures().leftEdge().inches(), 1e-9);
    assertEquals(p.measures().rising(), p.measures().falling());
    assertTrue(p.exposed().isEmpty());
    // The centroid of a ring sector: (2/3)(R³ − r³)/(R² − r²)·sin(θ/2)/(θ/2) from the centre; the
    // return draws it towards the soffit.
    double middle =
        2
            / 3.0
            * (top * top * top - r * r * r)
            / (top * top - r * r)
            * Math.sin(theta / 2)
            / (theta / 2);
    assertTrue(p.mass().centre().distance(c) < middle);
    assertTrue(p.mass().centre().distance(c) > r + 3 * INCH);
    assertEquals(w.piece("L1").mass().kg(), p.mass().kg(), 1e-9);
    assertEquals(p.mass().kg(), w.piece("K").mass().kg(), 1e-9);
    // Two straight passes; the curved top is sawn clear of its line and worked to the template.
    assertEquals(3, p.saw().size());
    assertEquals(
        List.of(EdgeName.TOP),
        p.saw().stream().filter(SawPass::template).map(SawPass::edge).toList());
  }

  private static PlacedStone ring(
      String mark, Point c, double r, double top, double middle, double theta) {
    double from = middle - theta / 2;
    Point a = c.plus(Vec.direction(from + theta).times(r));
    Point b = c.plus(Vec.direction(from).times(r));
    Point d = c.plus(Vec.direction(from).times(top));
    Point e = c.plus(Vec.direction(from + theta).times(top));
    return StoneMaker.faced(
        mark,
        List.of(
            new FaceEdge(new Arc(c, r, from + theta, -theta), Where.SOFFIT),
            new FaceEdge(new Straight(b, d), Where.RIGHT),
            new FaceEdge(new Arc(c, top, from, theta), Where.TOP),
            new FaceEdge(new Straight(e, a), Where.LEFT)));
  }
}
