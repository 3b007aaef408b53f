package headcourse.layout.yard;

import static headcourse.testing.StockItems.corner;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.bench.HeadBench;
import headcourse.bench.HeadWork;
import headcourse.bench.Piece;
import headcourse.job.Fitted;
import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Setting;
import headcourse.job.Stock;
import headcourse.layout.HeadLayout;
import headcourse.layout.Proof;
import headcourse.layout.Role;
import headcourse.layout.Side;
import headcourse.layout.Solution;
import headcourse.layout.shapes.Shapes;
import headcourse.stock.StockPlan;
import headcourse.stock.StockPlanner;
import headcourse.testing.JobMaker;
import headcourse.units.Length;
import headcourse.work.CureCheck;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Heads set from a pile, from the job to the cutting plan. */
class FromStockTest {
  static Length in(double v) {
    return Length.inches(v);
  }

  static JobMaker maker(long seed, int pieces, double widest) {
    JobMaker m = JobMaker.one();
    m.first().rhythm = HeadSpec.Rhythm.FROM_STOCK;
    Random r = new Random(seed);
    List<Stock.Item> items = new ArrayList<>();
    for (int i = 1; i <= pieces; i++) {
      items.add(piece("C" + i, 5.25 + r.nextInt((int) ((widest - 5) * 16)) / 16.0, 13));
    }
    items.add(piece("K1", 10.25, 14));
    m.stock = new Stock(items, 0.1);
    return m;
  }

  static Stock.Item piece(String mark, double arris, double face) {
    return corner(mark, arris, face, 4.5, 1);
  }

  record Worked(Job job, FromStock chosen, List<HeadWork> heads, StockPlan plan) {}

  static Worked work(JobMaker m) {
    Job job = m.make();
    FromStock chosen = PileChooser.setOut(job, Shapes::named);
    List<HeadLayout> layouts =
        chosen.solutions().stream().map(s -> ((Solution.Solved) s).head()).toList();
    List<HeadWork> heads = HeadBench.workUp(job, layouts);
    return new Worked(job, chosen, heads, StockPlanner.plan(job, heads, chosen, heads));
  }

  private static void consistent(Worked w) {
    Set<String> stones = new HashSet<>();
    for (StockPlan.CutBlank b : w.plan.blanks()) {
      assertEquals(1, b.cuts().size());
      StockPlan.Cut c = b.cuts().get(0);
      stones.add(c.stone());
      assertTrue(
          c.extent().plus(w.job.tools().saw().cleanCut().times(2)).compareTo(b.length()) <= 0);
    }
    for (HeadWork h : w.heads) {
      for (Piece p : h.pieces()) {
        assertTrue(stones.contains(p.mark()), p.mark());
      }
      assertTrue(h.layout().bearing(Side.LEFT).onWall().compareTo(in(4)) >= 0);
      assertTrue(h.layout().bearing(Side.RIGHT).onWall().compareTo(in(8)) <= 0);
    }
    assertTrue(w.plan.unfit().isEmpty());
  }

  @Test
  void aHeadIsSetFromThePileWithNothingSawnOff() {
    Worked w = work(maker(1, 40, 8.5));
    consistent(w);
    HeadLayout head = w.heads.get(0).layout();
    assertEquals(Proof.Status.OPTIMAL, head.proof().status());
    assertEquals(0, head.proof().cost());
    // Each stone is its piece less the two clean cuts.
    for (StockPlan.CutBlank b : w.plan.blanks()) {
      assertEquals(b.length().minus(in(0.25)), b.cuts().get(0).extent());
    }
    assertEquals("K1#1", w.plan.blanksOf("D1-K").get(0).id());
  }

  /** The shortest piece that holds the key has a return that the deeper window has no other of. */
  @Test
  void aKeyLeavesThePieceThatAnotherHeadNeeds() {
    Worked w = work(deepWindow());
    assertEquals("A5#1", w.plan.blanksOf("D1-K").get(0).id());
    assertTrue(w.plan.unfit().isEmpty());
  }

  private static JobMaker deepWindow() {
    JobMaker m = JobMaker.one();
    List<Stock.Item> items = new ArrayList<>();
    for (int i = 1; i <= 4; i++) {
      items.add(corner("A" + i, 7.25, 13, 4.5, 1));
      items.add(corner("B" + i, i == 4 ? 10.25 : 8.25, 14, 6, 1));
    }
    items.add(corner("A5", 10.75, 14, 4.5, 1));
    m.stock = new Stock(items, 0.1);
    JobMaker.OpeningMaker door = m.first();
    door.width = in(32);
    door.key = new HeadSpec.Key(in(10), in(10), in(2), Length.ZERO, Length.ZERO);
    JobMaker.OpeningMaker window = new JobMaker.OpeningMaker();
    window.mark = "W1";
    window.width = in(24);
    window.reveal = in(5.5);
    window.key = null;
    m.openings.add(window);
    for (JobMaker.OpeningMaker o : m.openings) {
      o.rhythm = HeadSpec.Rhythm.FROM_STOCK;
      o.bearing = new HeadSpec.Bearing(in(3), in(8), in(5));
    }
    return m;
  }

  @Test
  void severalOpeningsShareThePile() {
    JobMaker m = maker(2, 60, 8.5);
    JobMaker.OpeningMaker other = new JobMaker.OpeningMaker();
    other.mark = "D2";
    other.width = in(60);
    other.rhythm = HeadSpec.Rhythm.FROM_STOCK;
    other.mirror = false;
    m.openings.add(other);
    List<Stock.Item> items = new ArrayList<>(m.stock.items());
    items.add(piece("K2", 10.25, 14));
    m.stock = new Stock(items, 0.1);
    Worked w = work(m);
    consistent(w);
    Set<String> pieces = new HashSet<>();
    w.chosen.taken().forEach(t -> assertTrue(pieces.add(t.piece())));
  }

  @Test
  void identicalOpeningsTakeTheirStonesTwice() {
    JobMaker m = maker(3, 0, 8.5);
    List<Stock.Item> items = new ArrayList<>();
    for (int i = 0; i < 24; i++) {
      items.add(piece("A" + i, 6 + i / 4 * 0.25, 13));
    }
    items.add(piece("K1", 10.25, 14));
    items.add(piece("K2", 10.5, 14));
    m.stock = new Stock(items, 0.1);
    m.first().count = 2;
    m.first().width = in(30);
    Worked w = work(m);
    consistent(w);
    assertEquals(2 * w.heads.get(0).pieces().size(), w.chosen.taken().size());
    // Fours of a kind: a quarter inch of one key is sawn off in any case. What more is sawn off is
    // within half an inch of each head, and makes it land, the sides alike, and the bearing as
    // asked.
    Proof proof = w.heads.get(0).layout().proof();
    assertTrue(proof.bound() >= in(0.25).mm() - 1e-9, proof + "");
    assertTrue(proof.cost() <= proof.bound() + in(1).mm() + 1e-9, proof + "");
  }

  @Test
  void aKeyWhoseWidthIsLeftOpenComesFromThePile() {
    JobMaker m = maker(4, 40, 8.5);
    m.first().key = new HeadSpec.Key(null, null, Length.ZERO, Length.ZERO, Length.ZERO);
    Worked w = work(m);
    consistent(w);
    PlacedKey key = new PlacedKey(w.heads.get(0).layout());
    assertEquals(w.plan.blanksOf("D1-K").get(0).cuts().get(0).extent(), key.width());
    assertEquals(0, w.heads.get(0).layout().proof().cost());
  }

  private record PlacedKey(HeadLayout head) {
    Length width() {
      return head.stones().stream()
          .filter(s -> s.role() == Role.KEY)
          .findFirst()
          .orElseThrow()
          .bottom();
    }
  }

  @Test
  void noChoiceIsRefusedWithAChange() {
    JobMaker m = maker(5, 3, 8.5);
    Job job = m.make();
    Solution s = PileChooser.setOut(job, Shapes::named).solutions().get(0);
    Solution.Refused refused = (Solution.Refused) s;
    assertTrue(refused.problems().get(0).message().contains("no choice of the yard's pieces"));
    assertFalse(CureCheck.advice(m).cures().isEmpty());
  }

  private static JobMaker segmental() {
    JobMaker m = maker(5, 0, 8.5);
    List<Stock.Item> items = new ArrayList<>();
    for (int i = 0; i < 40; i++) {
      items.add(corner("A" + i, 6 + i / 8 * 0.75, 18, 5, 1));
    }
    m.stock = new Stock(items, 0.1);
    m.first().shape = "segmental";
    m.first().params.put("rise", in(12));
    m.first().key = new HeadSpec.Key(null, null, Length.ZERO, Length.ZERO, Length.ZERO);
    m.first().max = in(9);
    return m;
  }

  /** A curved head is divided evenly; each of its stones takes the shortest piece that holds it. */
  @Test
  void aCurvedHeadTakesItsStonesFromThePile() {
    Worked w = work(segmental());
    HeadLayout head = w.heads.get(0).layout();
    assertEquals(head.stones().size(), w.chosen.taken().size());
    assertTrue(w.plan.unfit().isEmpty());
    Set<String> pieces = new HashSet<>();
    w.chosen.taken().forEach(t -> assertTrue(pieces.add(t.piece())));
    for (StockPlan.CutBlank b : w.plan.blanks()) {
      StockPlan.Cut c = b.cuts().get(0);
      assertTrue(
          c.extent().plus(w.job.tools().saw().cleanCut().times(2)).compareTo(b.length()) <= 0);
    }
    String lost = w.plan.blanksOf("D1-L2").get(0).id();
    JobMaker m = segmental();
    m.spoiled.add(lost);
    Worked after = work(m);
    assertEquals(
        List.of("D1-L2"), after.plan.changes().stream().map(StockPlan.Moved::stone).toList());
    assertTrue(after.plan.blanks().stream().noneMatch(b -> b.id().equals(lost)));
    assertEquals(head.joints(), after.heads.get(0).layout().joints());
  }

  /** A key whose width is left open takes a piece; one that was cut already needs none. */
  @Test
  void anOpenKeyThatWasCut() {
    JobMaker m = maker(1, 40, 8.5);
    m.first().key = new HeadSpec.Key(null, null, Length.ZERO, Length.ZERO, Length.ZERO);
    Worked planned = work(m);
    assertTrue(planned.chosen.taken().stream().anyMatch(t -> t.stone().equals("D1-K")));
    Length width = planned.heads.get(0).layout().stone("K").bottom().plus(in(1 / 8.0));
    m.fitted.add(new Fitted("fitted.D1.K", "D1", "K", width, null, null, Fitted.NO_PIECE));
    Worked cut = work(m);
    assertEquals(width, cut.heads.get(0).layout().stone("K").bottom());
    assertTrue(cut.chosen.taken().stream().noneMatch(t -> t.stone().equals("D1-K")));
  }

  /** What one head took for a stone that broke is not there for the next. */
  @Test
  void twoCurvedHeadsNeverTakeOnePiece() {
    JobMaker m = segmental();
    JobMaker.OpeningMaker second = new JobMaker.OpeningMaker();
    JobMaker.OpeningMaker first = m.first();
    second.mark = "D2";
    second.shape = first.shape;
    second.rhythm = first.rhythm;
    second.params = first.params;
    second.key = first.key;
    second.max = first.max;
    first.width = in(48);
    second.width = in(48);
    m.openings.add(second);
    StockPlan plan = work(m).plan;
    m.spoiled.add(plan.blanksOf("D1-L1").get(0).id());
    m.spoiled.add(plan.blanksOf("D2-L1").get(0).id());
    Worked after = work(m);
    assertEquals(
        List.of("D1-L1", "D2-L1"),
        after.chosen.changes().stream().map(FromStock.Moved::stone).toList());
    Set<String> pieces = new HashSet<>();
    for (FromStock.Taken t : after.chosen.taken()) {
      assertTrue(pieces.add(t.piece()), t.stone() + " has " + t.piece() + " as well");
    }
    assertTrue(m.spoiled.stream().noneMatch(pieces::contains));
  }

  /**
   * Of all numbers of stones the one is taken that saws off least: widths held to half an inch
   * leave one number or none, and of these heads none saws off less. What is sawn off is what the
   * blanks have more than their stones and two clean cuts.
   */
  @Test
  void aCurvedHeadHasTheNumberThatSawsOffLeast() {
    Set<Double> each = new TreeSet<>();
    for (double min = 4; min < 9; min += 0.5) {
      JobMaker m = segmental();
      m.first().min = in(min);
      m.first().max = in(min + 0.4375);
      m.first().target = in(min + 0.25);
      Job job = m.make();
      if (PileChooser.setOut(job, Shapes::named).solutions().get(0) instanceof Solution.Solved) {
        each.add(sawnOff(work(m)));
      }
    }
    JobMaker all = segmental();
    all.first().min = in(4);
    double least = sawnOff(work(all));
    assertTrue(each.size() > 1, each.toString());
    assertEquals(Collections.min(each), least, 1e-6);
  }

  private static double sawnOff(Worked w) {
    double cuts = w.job.tools().saw().cleanCut().times(2).mm();
    double tick = w.job.grid().tick().mm();
    double off = 0;
    for (StockPlan.CutBlank b : w.plan.blanks()) {
      double stone = b.cuts().get(0).extent().mm();
      off += Math.floor((b.length().mm() - cuts) / tick + 1e-6) - Math.ceil(stone / tick - 1e-6);
    }
    assertEquals(w.heads.get(0).layout().proof().cost(), off * tick, 1e-6);
    return off * tick;
  }

  @Test
  void aSpoiledPieceMovesItsStoneAlone() {
    Worked before = work(maker(6, 40, 8.5));
    String id = before.plan.blanksOf("D1-L2").get(0).id();
    JobMaker m = maker(6, 40, 8.5);
    m.spoiled.add(id);
    Worked after = work(m);
    consistent(after);
    assertEquals(1, after.plan.changes().size());
    assertEquals("D1-L2", after.plan.changes().get(0).stone());
    assertEquals(id, after.plan.changes().get(0).from());
    assertTrue(after.plan.blanks().stream().noneMatch(b -> b.id().equals(id)));
    assertEquals(before.heads.get(0).layout().joints(), after.heads.get(0).layout().joints());
  }

  /** Tapers, mortar, an easing of several stones: each piece still holds its stone. */
  @ParameterizedTest
  @CsvSource({"8, 11, 0, 1", "8, 11, 0.25, 1", "8, 11, 0, 3", "8, 11, 0.25, 2"})
  void everyPieceHoldsItsStone(double bottom, double top, double joint, int ease) {
    JobMaker m = maker(7, 45, 8.5);
    List<Stock.Item> items = new ArrayList<>(m.stock.items());
    items.add(piece("K2", 12, 14));
    m.stock = new Stock(items, 0.1);
    m.joints = joint > 0 ? Setting.Joints.MORTAR : Setting.Joints.DRY;
    m.joint = in(joint);
    m.first().params.put("ease", ease);
    m.first().key = new HeadSpec.Key(in(bottom), in(top), in(1), Length.ZERO, Length.ZERO);
    Worked w = work(m);
    consistent(w);
    assertEquals(Proof.Status.OPTIMAL, w.heads.get(0).layout().proof().status());
  }
}
