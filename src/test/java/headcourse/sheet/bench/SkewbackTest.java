package headcourse.sheet.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.drawing.Mark;
import headcourse.geom.Edge;
import headcourse.geom.Point;
import headcourse.job.Bundle;
import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Setting;
import headcourse.layout.FaceEdge.Where;
import headcourse.layout.HeadLayout;
import headcourse.layout.Side;
import headcourse.sheet.book.SheetBook;
import headcourse.sheet.frame.Frame;
import headcourse.testing.JobMaker;
import headcourse.testing.RandomJobs;
import headcourse.units.Angle;
import headcourse.units.Length;
import headcourse.units.Units;
import headcourse.work.ShopWork;
import headcourse.work.WorkUp;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What the wall stones are cut to, against values worked out by hand. */
class SkewbackTest {
  private static JobMaker jack(double joint) {
    JobMaker m = JobMaker.one();
    m.paper = "a3";
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

  private static JobMaker arch(String shape, double width, double depth, double joint) {
    JobMaker m = JobMaker.one();
    m.joints = Setting.Joints.MORTAR;
    m.joint = Length.inches(joint);
    JobMaker.OpeningMaker o = m.first();
    o.shape = shape;
    o.width = Length.inches(width);
    o.headHeight = Length.inches(depth);
    o.min = Length.inches(2);
    o.max = Length.inches(24);
    o.target = Length.inches(6);
    o.key = new HeadSpec.Key(null, null, Length.ZERO, Length.ZERO, Length.ZERO);
    return m;
  }

  private static ShopWork work(JobMaker m) {
    return WorkUp.of(m.make()).value().orElseThrow();
  }

  private static Skewback cut(JobMaker m, Side side) {
    Job job = m.make();
    return Skewback.of(job, work(m).heads().get(0).layout(), side);
  }

  private static void at(double past, double up, Skewback cut, Point p) {
    assertEquals(past, (p.x() - cut.jamb()) / 25.4, 1e-4);
    assertEquals(up, p.y() / 25.4, 1e-4);
  }

  /**
   * Joint 10 mm, skewback 65° from horizontal, end stone bearing 45 mm (geometry): a whole joint is
   * 10 / sin 65° = 11.03 mm along the soffit line, so the cut begins 56.0 mm past the jamb; it
   * rises the whole 300 mm of the head and runs out 140 mm, 331 mm along itself.
   */
  @Test
  void wholeJointBesideTheEndStoneOfAJackArch() {
    for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
      Skewback cut = cut(jack(10), side);
      assertEquals(56.0, cut.from().x() - cut.jamb(), 0.05);
      assertEquals(0, cut.from().y(), 1e-9);
      assertEquals(300, cut.up().mm(), 1e-6);
      assertEquals(140, cut.out().mm(), 0.5);
      assertEquals(331, cut.along().mm(), 0.5);
      assertEquals(65, cut.fromHorizontal().degrees(), 0.1);
      Skewback dry = cut(jack(0), side);
      assertEquals(45, dry.from().x() - dry.jamb(), 1e-6);
      assertEquals(300, dry.up().mm(), 1e-6);
    }
  }

  @Test
  void theSheetSaysSo() {
    List<String> texts = texts(work(jack(10)));
    assertTrue(texts.contains("65.0°"), texts.toString());
    String all = String.join(" ", texts);
    assertTrue(all.contains("56 mm past the jamb line, on the soffit line"), all);
    assertTrue(all.contains("140 mm out over 300 mm up; 331 mm along the cut"), all);
    assertTrue(all.contains("196 mm past the jamb line, 300 mm above the soffit line"), all);
    assertTrue(
        all.contains(
            "On the wall on the soffit line: left 45 mm, right 45 mm; on the top line: left 185 mm,"
                + " right 185 mm."),
        all);
  }

  private static List<String> texts(ShopWork work) {
    List<String> texts = new ArrayList<>();
    SheetBook.compose(work, Bundle.BENCH, Frame.plain())
        .pages()
        .forEach(p -> collect(p.marks(), texts));
    return texts;
  }

  private static void collect(List<Mark> marks, List<String> texts) {
    for (Mark m : marks) {
      if (m instanceof Mark.Group g) {
        collect(g.marks(), texts);
      } else if (m instanceof Mark.Label l) {
        texts.add(l.text());
      }
    }
  }

  /**
   * 48 × 6, depth 8, joint 3/8: the line through the springing leans sin φ = 24/51; the cut is 3/16
   * outside it, so it meets the jamb (3/16) / sin φ = 0.3984 below the springing, and the back,
   * √(59² − (3/16)²) from the centre, 3.9300 past the jamb and 6.9703 up.
   */
  @Test
  void segmentalArch() {
    JobMaker m = arch("segmental", 48, 8, 0.375);
    m.first().params.put("rise", Length.inches(6));
    for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
      Skewback cut = cut(m, side);
      at(0, -0.3984, cut, cut.from());
      at(3.9300, 6.9703, cut, cut.to());
    }
  }

  /** Half a joint below a level springing; the stone's bed lies half a joint above it. */
  @Test
  void semicircularArch() {
    for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
      Skewback cut = cut(arch("semicircular", 60, 9, 0.25), side);
      at(0, -0.125, cut, cut.from());
      at(8.9998, -0.125, cut, cut.to());
      assertTrue(cut.level());
    }
  }

  @Test
  void aWholeJointLiesBetweenStoneAndCutInRandomJackArches() {
    int seen = 0;
    for (long seed = 1; seed <= 60; seed++) {
      JobMaker m = RandomJobs.flat(seed, 30, 90);
      Optional<ShopWork> work = WorkUp.of(m.make()).value();
      if (!m.first().shape.equals("jack") || work.isEmpty()) {
        continue;
      }
      HeadLayout head = work.get().heads().get(0).layout();
      for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
        seen++;
        Skewback cut = Skewback.of(work.get().job(), head, side);
        List<Edge> edges = head.end(side).edges(side == Side.LEFT ? Where.LEFT : Where.RIGHT);
        for (Point p : List.of(edges.get(0).from(), edges.get(edges.size() - 1).to())) {
          Point on = side == Side.LEFT ? p.mirrored() : p;
          double off = cut.to().minus(cut.from()).unit().cross(on.minus(cut.from()));
          assertEquals(m.joint.mm(), off, 1e-9, "seed " + seed + ", " + side);
        }
        assertEquals(m.first().headHeight.mm(), cut.up().mm(), 1e-6, "seed " + seed);
      }
    }
    assertTrue(seen > 10, "only " + seen);
  }
}
