package headcourse.stock;

import static headcourse.testing.StockItems.corner;
import static headcourse.testing.StockItems.flat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.bench.HeadWork;
import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Stock;
import headcourse.testing.JobMaker;
import headcourse.units.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

class StockPlannerTest {
  private static Length in(double v) {
    return Length.inches(v);
  }

  private static Stock.Item toOrder(String mark, double arris, double face, double price) {
    return new Stock.Item(
        "stock.order[0]",
        mark,
        Stock.Kind.CORNER,
        in(arris),
        in(face),
        in(5),
        in(1.25),
        0,
        true,
        price);
  }

  private static Job job(Stock.Item... items) {
    JobMaker m = JobMaker.one();
    m.stock = new Stock(List.of(items), 0.1);
    return m.make();
  }

  private static StockPlan plan(Job job, HeadWork... heads) {
    return StockPlanner.plan(job, List.of(heads));
  }

  @Test
  void soldiersAreCutThreeFromABlankWithKerfsAndCleanCuts() {
    Job job = job(corner("C1", 24, 14, 5, 12));
    HeadMaker h = new HeadMaker(job);
    for (int i = 1; i <= 9; i++) {
      h.soldier("L" + i, 7.75, 12, 4);
    }
    StockPlan plan = plan(job, h.make());
    // 3 × 7¾ + 2 × ⅛ + 2 × ⅛ = 23¾
    assertEquals(3, plan.blanks().size());
    assertEquals(3, plan.lowerBound());
    assertTrue(plan.proved());
    assertEquals("C1#1", plan.blanks().get(0).id());
    assertEquals(in(1 / 8.0), plan.blanks().get(0).cuts().get(0).at());
    assertEquals(in(8), plan.blanks().get(0).cuts().get(1).at());
    assertEquals(in(15.875), plan.blanks().get(0).cuts().get(2).at());
    assertTrue(plan.order().isEmpty() && plan.unfit().isEmpty());
  }

  @Test
  void threeThatFillTheUsableLengthExactlyFit() {
    Job job = job(corner("C1", 24, 12, 4, 1));
    HeadMaker h = new HeadMaker(job);
    // 24 − 2 × ⅛ − 2 × ⅛ = 23½
    h.soldier("L1", 7.875, 12, 4).soldier("L2", 7.875, 12, 4).soldier("L3", 7.75, 12, 4);
    assertEquals(1, plan(job, h.make()).blanks().size());
    h.soldier("L4", 1 / 16.0, 12, 4);
    assertEquals(1, plan(job, h.make()).unfit().size());
  }

  @Test
  void neighboursOfAFanShareAKerfAndNest() {
    Job job = job(corner("C1", 24, 14, 5, 12));
    // Three stones of a fan that lean left more and more, 12 high: each edge is its neighbour's.
    HeadMaker h =
        new HeadMaker(job)
            .stone("L1", -6, 0, -1, -8, 12, 4)
            .stone("L2", -12, -6, -8, -15, 12, 4)
            .stone("L3", -18, -12, -15, -22, 12, 4);
    StockPlan plan = plan(job, h.make());
    assertEquals(1, plan.blanks().size());
    List<String> order = plan.blanks().get(0).cuts().stream().map(StockPlan.Cut::stone).toList();
    assertEquals(List.of("D1-L3", "D1-L2", "D1-L1"), order);
    // L2 stands from L3 by the shared foot (−12 against −22 and −15) and one kerf on the slant.
    double slant = Math.hypot(3, 12) / 12 / 8;
    double between =
        plan.blanks().get(0).cuts().get(1).at().inches()
            - plan.blanks().get(0).cuts().get(0).at().inches();
    assertEquals(7 + slant, between, 1e-6);
  }

  @Test
  void onlyWhatHasNoReturnIsTurned() {
    // Wedges 4 wide below and 8 above: turned about they take 6 each, else 8.
    Job corners = job(corner("C1", 19, 14, 5, 9));
    HeadMaker c = new HeadMaker(corners);
    Job flats = job(flat("F1", 21, 14, 9));
    HeadMaker f = new HeadMaker(flats);
    for (int i = 1; i <= 3; i++) {
      c.stone("L" + i, 2, 6, 8, 0, 12, 4);
      f.stone("L" + i, 2, 6, 8, 0, 12, 0);
    }
    StockPlan turned = plan(flats, f.make());
    assertEquals(1, turned.blanks().size());
    assertTrue(turned.blanks().get(0).cuts().stream().anyMatch(StockPlan.Cut::turned));
    StockPlan straight = plan(corners, c.make());
    assertEquals(2, straight.blanks().size());
    assertTrue(
        straight.blanks().stream()
            .flatMap(b -> b.cuts().stream())
            .noneMatch(StockPlan.Cut::turned));
  }

  @Test
  void whatFitsNoBlankIsNamedAndOrdered() {
    Job job = job(corner("C1", 24, 13, 5, 12));
    HeadMaker h = new HeadMaker(job).soldier("K", 8, 15, 4).soldier("L1", 7, 12, 4);
    StockPlan plan = plan(job, h.make());
    assertEquals(1, plan.unfit().size());
    StockPlan.Unfit u = plan.unfit().get(0);
    assertEquals("D1-K", u.stone());
    assertEquals(StockPlan.Why.SHORT, u.reason().why());
    assertEquals(Stock.Kind.CORNER, u.reason().kind());
    assertEquals(
        List.of(new StockPlan.Shortage(StockPlan.Measure.FACE, in(15), in(13))),
        u.reason().shortages());
    assertEquals(in(8.25), u.length());
    assertEquals(in(15), u.face());
    StockPlan.OrderLine line = plan.order().get(0);
    assertEquals(2, line.count());
    assertEquals(1, line.spares());
    assertEquals(in(9), line.length());
    assertEquals(in(18), line.running());
    assertEquals(1, plan.blanks().size());
  }

  @Test
  void withoutAYardEverythingIsOrderedWithSpares() {
    JobMaker m = JobMaker.one();
    Job job = m.make();
    HeadMaker h = new HeadMaker(job).soldier("K", 8, 15, 4);
    for (int i = 1; i <= 24; i++) {
      h.soldier("L" + i, 7, 12, 4);
    }
    StockPlan plan = plan(job, h.make());
    assertTrue(plan.blanks().isEmpty() && plan.unfit().isEmpty() && plan.proved());
    assertEquals(List.of(2, 27), plan.order().stream().map(o -> o.count()).toList());
    assertEquals(List.of(1, 3), plan.order().stream().map(o -> o.spares()).toList());
  }

  @Test
  void cheapestMixOfYardAndOrder() {
    Job job = job(corner("C1", 8, 14, 5, 2), toOrder("X1", 24, 16, 48), toOrder("X2", 8, 14, 15));
    HeadMaker h = new HeadMaker(job);
    for (int i = 1; i <= 6; i++) {
      h.soldier("L" + i, 7.5, 12, 4);
    }
    StockPlan plan = plan(job, h.make());
    // Two lie there; four more: 48 + 15 against 4 × 15 = 60.
    assertEquals(60, plan.price());
    assertTrue(plan.proved());
    assertEquals(
        List.of("C1#1", "C1#2", "X2#1", "X2#2", "X2#3", "X2#4"),
        plan.blanks().stream().map(StockPlan.CutBlank::id).toList());
    StockPlan.OrderLine line = plan.order().get(0);
    assertEquals("X2", line.stock());
    assertEquals(5, line.count());
    assertEquals(75, line.price());
  }

  @Test
  void mitredStonesAreTwoFlats() {
    JobMaker m = JobMaker.one();
    m.first().soffit = HeadSpec.Soffit.MITRED;
    m.stock = new Stock(List.of(flat("F1", 24, 14, 4), flat("F2", 24, 5, 4)), 0.1);
    Job job = m.make();
    StockPlan plan =
        plan(job, new HeadMaker(job).soldier("L1", 7, 12, 4).soldier("L2", 7, 12, 4).make());
    // 7 + 7 for the faces, and both strips from another 7 in: 2 × 4 + 0.30 of 14.
    assertEquals(1, plan.blanks().size());
    List<StockPlan.Cut> cuts = plan.blanks().stream().flatMap(b -> b.cuts().stream()).toList();
    assertEquals(2, cuts.stream().filter(c -> c.part() == StockPlan.Part.FACE).count());
    assertEquals(2, cuts.stream().filter(c -> c.part() == StockPlan.Part.SOFFIT).count());
    assertTrue(plan.unfit().isEmpty());
  }

  @Test
  void aSpoiledBlankMovesItsOwnStonesAlone() {
    JobMaker m = JobMaker.one();
    m.stock = new Stock(List.of(corner("C1", 24, 14, 5, 5)), 0.1);
    Job job = m.make();
    HeadMaker h = new HeadMaker(job);
    for (int i = 1; i <= 11; i++) {
      h.soldier("L" + i, 7.75, 12, 4);
    }
    HeadWork head = h.make();
    StockPlan before = plan(job, head);
    assertEquals(4, before.blanks().size());
    m.spoiled.add("C1#2");
    StockPlan after = plan(m.make(), head);
    List<String> moved = after.changes().stream().map(StockPlan.Moved::stone).toList();
    assertEquals(before.blanks().get(1).cuts().stream().map(StockPlan.Cut::stone).toList(), moved);
    assertTrue(after.unfit().isEmpty());
    for (StockPlan.CutBlank b : before.blanks()) {
      if (!b.id().equals("C1#2")) {
        List<StockPlan.Cut> now =
            after.blanks().stream().filter(x -> x.id().equals(b.id())).findFirst().get().cuts();
        assertEquals(b.cuts(), now.subList(0, b.cuts().size()));
      }
    }
  }

  @Test
  void spoiledWithNothingLeftIsOrdered() {
    JobMaker m = JobMaker.one();
    m.stock = new Stock(List.of(corner("C1", 24, 14, 5, 1)), 0.1);
    m.spoiled.add("C1#1");
    Job job = m.make();
    StockPlan plan = plan(job, new HeadMaker(job).soldier("L1", 7, 12, 4).make());
    assertEquals("", plan.changes().get(0).to());
    assertEquals("D1-L1", plan.unfit().get(0).stone());
    assertEquals(2, plan.order().get(0).count());
  }
}
