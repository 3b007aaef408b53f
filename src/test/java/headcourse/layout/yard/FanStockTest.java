package headcourse.layout.yard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.bench.HeadBench;
import headcourse.bench.HeadWork;
import headcourse.bench.Piece;
import headcourse.geom.Point;
import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Setting;
import headcourse.job.Stock;
import headcourse.layout.HeadLayout;
import headcourse.layout.JointLine;
import headcourse.layout.PlacedStone;
import headcourse.layout.Role;
import headcourse.layout.Side;
import headcourse.layout.Solution;
import headcourse.layout.shapes.Shapes;
import headcourse.stock.StockPlan;
import headcourse.stock.StockPlanner;
import headcourse.testing.JobMaker;
import headcourse.testing.Seeds;
import headcourse.units.Angle;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Jack arches set from a pile, from the job to the cutting plan. */
class FanStockTest {
  private static final int JOBS = Seeds.of(6);

  private static Length in(double v) {
    return Length.inches(v);
  }

  private static Stock.Item piece(String mark, double arris, double face) {
    return new Stock.Item(
        "stock.corners[0]",
        mark,
        Stock.Kind.CORNER,
        in(arris),
        in(face),
        in(4.5),
        in(1.25),
        1,
        false,
        0);
  }

  /** A jack arch, and in some jobs a soldier head beside it, over a pile of measured pieces. */
  static JobMaker random(long seed) {
    Random r = new Random(seed);
    JobMaker m = JobMaker.one();
    m.steps = 300_000;
    boolean mortar = r.nextInt(3) == 0;
    m.joints = mortar ? Setting.Joints.MORTAR : Setting.Joints.DRY;
    m.joint = mortar ? in(0.25) : Length.ZERO;
    JobMaker.OpeningMaker o = m.first();
    o.shape = "jack";
    o.rhythm = HeadSpec.Rhythm.FROM_STOCK;
    o.mirror = r.nextInt(3) > 0;
    o.width = in(30 + 2 * r.nextInt(18));
    o.min = in(4);
    o.max = in(8);
    o.target = in(6);
    o.bearing = new HeadSpec.Bearing(in(3), in(6), in(4));
    o.key = new HeadSpec.Key(r.nextInt(3) == 0 ? null : in(7), null, in(1), in(0), in(0));
    o.params.put("divide", List.of("soffit", "top").get(r.nextInt(2)));
    switch (r.nextInt(3)) {
      case 0 -> o.params.put("skewback", Angle.degrees(68 + r.nextInt(8)));
      case 1 -> o.params.put("striking", in(48 + r.nextInt(60)));
      default -> o.params.put("camber", in(0.5));
    }
    if (r.nextInt(3) == 0) {
      o.wallLeft = in(9 + r.nextInt(8));
    }
    if (r.nextInt(4) == 0) {
      JobMaker.OpeningMaker other = new JobMaker.OpeningMaker();
      other.mark = "D2";
      other.width = in(36);
      other.min = in(4);
      other.rhythm = HeadSpec.Rhythm.FROM_STOCK;
      m.openings.add(other);
    }
    List<Stock.Item> items = new ArrayList<>();
    int pieces = 24 + r.nextInt(30);
    for (int i = 1; i <= pieces; i++) {
      items.add(piece("C" + i, 4.5 + r.nextInt(144) / 16.0, 13.5));
    }
    items.add(piece("K1", 11, 14));
    items.add(piece("K2", 12, 14));
    m.stock = new Stock(items, 0.1);
    return m;
  }

  private record Worked(Job job, FromStock chosen, List<HeadWork> heads, StockPlan plan) {}

  private static Worked work(Job job) {
    FromStock chosen = PileChooser.setOut(job, Shapes::named);
    List<HeadLayout> layouts = new ArrayList<>();
    for (Solution s : chosen.solutions()) {
      if (!(s instanceof Solution.Solved solved)) {
        return null;
      }
      layouts.add(solved.head());
    }
    List<HeadWork> heads = HeadBench.workUp(job, layouts);
    return new Worked(job, chosen, heads, StockPlanner.plan(job, heads, chosen, heads));
  }

  /** What must hold of every head set from a pile. */
  @Test
  void piecesHoldTheirStonesAndStonesStandAsTheyMust() {
    int solved = 0;
    for (long seed = 0; seed < JOBS; seed++) {
      Worked w = work(random(seed).make());
      if (w != null) {
        solved++;
        String at = "seed " + seed;
        planned(w, at);
        w.heads.forEach(h -> stands(w.job, h.layout(), at));
      }
    }
    assertTrue(solved > JOBS / 2, "only " + solved + " of " + JOBS);
  }

  private static void planned(Worked w, String at) {
    Length clean = w.job.tools().saw().cleanCut().times(2);
    double tick = w.job.grid().tick().mm();
    Map<String, StockPlan.CutBlank> of = new HashMap<>();
    Set<String> used = new HashSet<>();
    for (StockPlan.CutBlank b : w.plan.blanks()) {
      assertEquals(1, b.cuts().size(), at);
      assertTrue(used.add(b.id()), at);
      of.put(b.cuts().get(0).stone(), b);
    }
    double sawn = 0;
    for (HeadWork h : w.heads) {
      for (Piece p : h.pieces()) {
        StockPlan.CutBlank b = of.get(p.mark());
        assertTrue(b != null, at + " " + p.mark());
        double usable = w.job.grid().floor(b.length().minus(clean)) * tick;
        double extent = extent(p.stone());
        assertTrue(extent <= usable + 1e-6, at + " " + p.mark());
        assertEquals(b.cuts().get(0).extent().mm(), extent, 1e-5, at + " " + p.mark());
        sawn += usable - Math.ceil(extent / tick - 1e-6) * tick;
      }
    }
    // Extents are counted in whole ticks, each rounded up.
    assertEquals(sawn, w.heads.get(0).layout().proof().cost(), 1e-6, at);
    assertTrue(w.plan.unfit().isEmpty(), at);
  }

  /** Length along the blank: along the line between the ends of the soffit. */
  static double extent(PlacedStone s) {
    List<Point> v = s.outline().vertices(0.01);
    List<Point> feet = new ArrayList<>();
    s.edges(headcourse.layout.FaceEdge.Where.SOFFIT)
        .forEach(e -> feet.addAll(List.of(e.from(), e.to())));
    Point a = feet.get(0);
    Point b = feet.get(feet.size() - 1);
    double dx = (b.x() - a.x()) / a.distance(b);
    double dy = (b.y() - a.y()) / a.distance(b);
    double low = v.stream().mapToDouble(p -> p.x() * dx + p.y() * dy).min().orElseThrow();
    double high = v.stream().mapToDouble(p -> p.x() * dx + p.y() * dy).max().orElseThrow();
    return high - low;
  }

  private static void stands(Job job, HeadLayout head, String at) {
    HeadSpec spec = head.opening().head();
    double joint = job.setting().joint().mm();
    double half = head.opening().width().mm() / 2;
    PlacedStone last = null;
    for (PlacedStone s : head.stones()) {
      if (last != null) {
        double gap = s.feet().leftSoffit().minus(last.feet().rightSoffit()).mm();
        assertTrue(gap >= joint - 1e-6 && gap < joint + job.grid().tick().mm() * 2, at);
        double above = s.feet().leftTop().minus(last.feet().rightTop()).mm();
        assertTrue(above >= joint - 1e-6, at);
      }
      last = s;
    }
    for (JointLine j : head.joints()) {
      boolean end = j.outer().isEmpty();
      double past = j.soffitMark().mm() - half;
      double clear = spec.clear().mm();
      assertTrue(
          end ? past >= -1e-6 : past + joint <= 1e-6 - clear || past >= clear - 1e-6,
          at + " " + past);
    }
    for (Length b : List.of(head.bearing(Side.LEFT).onWall(), head.bearing(Side.RIGHT).onWall())) {
      assertTrue(b.compareTo(spec.bearing().min()) >= 0, at);
      assertTrue(b.compareTo(spec.bearing().max()) <= 0, at);
    }
    if (head.curve() != null) {
      double deep = head.curve().striking();
      double rise = spec.height().mm();
      for (JointLine j : head.joints()) {
        double slope = (j.head().x() - j.foot().x()) / (j.head().y() - j.foot().y());
        double lean = (j.foot().x() - slope * j.foot().y()) / deep * rise;
        double made = slope * rise;
        // A tick of rounding on the top line, and one where widths are counted there.
        assertEquals(lean, made, job.grid().tick().mm() * 1.6, at);
      }
    }
  }

  /** A job seen from inside is set out the other way round. */
  @Test
  void aMirroredJobMirrors() {
    int turned = 0;
    for (long seed = 0; seed < JOBS / 2; seed++) {
      JobMaker m = random(seed);
      m.first().mirror = false;
      m.first().wallLeft = in(12);
      m.first().wallRight = null;
      Worked one = work(m.make());
      m.first().wallLeft = null;
      m.first().wallRight = in(12);
      Worked two = work(m.make());
      assertEquals(one == null, two == null, "seed " + seed);
      if (one != null) {
        turned++;
        assertEquals(
            widths(one.heads.get(0).layout(), Side.LEFT),
            widths(two.heads.get(0).layout(), Side.RIGHT),
            "seed " + seed);
        assertEquals(
            widths(one.heads.get(0).layout(), Side.RIGHT),
            widths(two.heads.get(0).layout(), Side.LEFT),
            "seed " + seed);
      }
    }
    assertTrue(turned > JOBS / 8, "only " + turned);
  }

  static List<String> widths(HeadLayout head, Side side) {
    return head.stones().stream()
        .filter(s -> s.side() == side && s.role() != Role.KEY)
        .sorted(java.util.Comparator.comparingInt(PlacedStone::index))
        .map(s -> s.bottom() + " " + s.top())
        .toList();
  }

  /** A jack arch of 60 in with a door beside it, over pieces in plenty. */
  static JobMaker plenty() {
    JobMaker m = random(7);
    JobMaker.OpeningMaker o = m.first();
    o.width = in(48);
    o.key = new HeadSpec.Key(in(7), null, in(1), in(0), in(0));
    o.params.clear();
    o.params.put("striking", in(72));
    o.wallLeft = null;
    List<Stock.Item> items = new ArrayList<>();
    for (int i = 0; i < 60; i++) {
      items.add(piece("C" + (i + 1), 5.5 + i / 2 * 0.3125, 13.5));
    }
    items.add(piece("K1", 11, 14));
    m.stock = new Stock(items, 0.1);
    return m;
  }

  @Test
  void aSpoiledPieceIsReplacedBySameSize() {
    Worked before = work(plenty().make());
    String id = before.plan.blanksOf("D1-L2").get(0).id();
    JobMaker m = plenty();
    m.spoiled.add(id);
    Worked after = work(m.make());
    assertEquals(1, after.plan.changes().size());
    assertEquals("D1-L2", after.plan.changes().get(0).stone());
    assertEquals(id, after.plan.changes().get(0).from());
    assertTrue(after.plan.blanks().stream().noneMatch(b -> b.id().equals(id)));
    assertEquals(before.heads.get(0).layout().joints(), after.heads.get(0).layout().joints());
  }

  /** Pairs of every length: both sides alike, the bearing met, nothing sawn off but the key. */
  @Test
  void pairsOfEveryLengthMakeBothSidesAlike() {
    JobMaker m = plenty();
    m.first().mirror = true;
    Worked w = work(m.make());
    HeadLayout head = w.heads.get(0).layout();
    assertEquals(headcourse.layout.Proof.Status.OPTIMAL, head.proof().status());
    assertEquals(widths(head, Side.LEFT), widths(head, Side.RIGHT));
    assertEquals(head.bearing(Side.LEFT).onWall(), head.bearing(Side.RIGHT).onWall());
    StockPlan.CutBlank key = w.plan.blanksOf("D1-K").get(0);
    Length usable = key.length().minus(w.job.tools().saw().cleanCut().times(2));
    double left = usable.minus(key.cuts().get(0).extent()).mm();
    assertEquals(left, head.proof().cost(), w.job.grid().tick().mm());
  }

  /** With the end joint at a given angle the point follows the end; one end of the two has it. */
  @Test
  void theSkewbackIsAsAsked() {
    JobMaker m = plenty();
    m.first().params.clear();
    m.first().params.put("skewback", Angle.degrees(72));
    Worked w = work(m.make());
    HeadLayout head = w.heads.get(0).layout();
    double nearest = 90;
    for (JointLine j : head.joints()) {
      if (j.outer().isEmpty()) {
        double angle = Math.toDegrees(Math.atan2(head.curve().striking(), Math.abs(j.foot().x())));
        nearest = Math.min(nearest, Math.abs(angle - 72));
      }
    }
    assertEquals(0, nearest, 1e-9);
  }

  @Test
  void aKeyLeftOpenIsAsLongAsItsPiece() {
    JobMaker m = plenty();
    m.first().key = new HeadSpec.Key(null, null, Length.ZERO, Length.ZERO, Length.ZERO);
    Worked w = work(m.make());
    StockPlan.CutBlank key = w.plan.blanksOf("D1-K").get(0);
    Length usable = key.length().minus(w.job.tools().saw().cleanCut().times(2));
    Length over = usable.minus(key.cuts().get(0).extent());
    assertTrue(over.mm() >= -1e-6 && over.mm() < 2 * w.job.grid().tick().mm(), over.toString());
  }
}
