package headcourse.stock;

import static headcourse.testing.StockItems.flat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.bench.HeadWork;
import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Stock;
import headcourse.stock.StockPlan.Cut;
import headcourse.stock.StockPlan.CutBlank;
import headcourse.testing.JobMaker;
import headcourse.testing.Seeds;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Soffit strips ripped side by side from flats. */
class StripsTest {
  private static final Length KERF = in(1 / 8.0);

  private static Length in(double v) {
    return Length.inches(v);
  }

  private static JobMaker maker(HeadSpec.Soffit soffit, Stock.Item... items) {
    JobMaker m = JobMaker.one();
    m.first().soffit = soffit;
    m.stock = new Stock(List.of(items), 0.1);
    return m;
  }

  private static HeadWork soldiers(Job job, int n, double width, double back) {
    HeadMaker h = new HeadMaker(job);
    for (int i = 1; i <= n; i++) {
      h.soldier("L" + i, width, 12, back);
    }
    return h.make();
  }

  private static StockPlan plan(Job job, HeadWork head) {
    return StockPlanner.plan(job, List.of(head));
  }

  private static List<Cut> strips(StockPlan plan) {
    return plan.blanks().stream()
        .flatMap(b -> b.cuts().stream())
        .filter(c -> c.part() == StockPlan.Part.SOFFIT)
        .toList();
  }

  /** Behind a 1¼ in face 5¾ in deep: strips of 4½ in; 3 × 4½ + 2 × ⅛ = 13¾ of 14 in. */
  @Test
  void threeButtedStripsFromOneLength() {
    Job job = maker(HeadSpec.Soffit.BUTTED, flat("F1", 24, 14, 9)).make();
    StockPlan plan = plan(job, soldiers(job, 6, 7, 5.75));
    // Six faces and two lengths of strips, three of 7 in to a flat.
    assertEquals(3, plan.blanks().size());
    assertTrue(plan.proved());
    assertEquals(6, strips(plan).size());
    for (int i = 0; i < 6; i++) {
      Cut c = strips(plan).get(i);
      assertEquals(in(4.5), c.high());
      assertEquals(in(4.625).times(i % 3), c.up());
    }
  }

  /** Mitred, a rip at 45° takes √2 kerfs more: 3 × 4½ + 2 × 0.302 = 14.10, so only two go. */
  @Test
  void mitredStripsNeedTwoRipsBetweenThem() {
    Job job = maker(HeadSpec.Soffit.MITRED, flat("F1", 24, 14, 9)).make();
    List<Cut> strips = strips(plan(job, soldiers(job, 6, 7, 4.5)));
    assertEquals(in(4.5).inches() + (1 + Math.sqrt(2)) / 8, strips.get(1).up().inches(), 1e-9);
    assertEquals(3, strips.stream().filter(c -> c.up().isPositive()).count());
  }

  /** Where the high flats run out, strips come one by one from low ones. */
  @Test
  void fewerSideBySideWhereOnlyThatPlacesAll() {
    Job job = maker(HeadSpec.Soffit.BUTTED, flat("F1", 24, 14, 2), flat("F2", 24, 5, 2)).make();
    StockPlan plan = plan(job, soldiers(job, 6, 7, 5.75));
    assertTrue(plan.unfit().isEmpty());
    assertEquals(6, strips(plan).size());
    assertTrue(strips(plan).stream().noneMatch(c -> c.up().isPositive()));
  }

  private static JobMaker random(Random r) {
    JobMaker m =
        maker(
            r.nextBoolean() ? HeadSpec.Soffit.MITRED : HeadSpec.Soffit.BUTTED,
            flat("F1", 18 + r.nextInt(20), 12 + r.nextInt(6), 1 + r.nextInt(6)),
            flat("F2", 18 + r.nextInt(20), 4 + r.nextInt(12), 1 + r.nextInt(6)));
    m.steps = 20_000;
    return m;
  }

  @Test
  void everyStripLiesInItsOwnPlace() {
    int ripped = 0;
    for (long seed = 0; seed < Seeds.of(60); seed++) {
      Random r = new Random(seed);
      Job job = random(r).make();
      HeadMaker h = new HeadMaker(job);
      int stones = 3 + r.nextInt(8);
      double back = 3 + r.nextInt(5);
      for (int i = 1; i <= stones; i++) {
        double width = 5 + r.nextInt(8) / 2.0;
        double lean = r.nextInt(3) - 1;
        h.stone("L" + i, 0, width, width + lean, lean, 11, back);
      }
      StockPlan plan = plan(job, h.make());
      String at = "seed " + seed;
      int cut = 0;
      for (CutBlank b : plan.blanks()) {
        lies(b, at);
        cut += b.cuts().size();
      }
      assertEquals(2 * stones, cut + plan.unfit().size(), at);
      ripped += strips(plan).stream().anyMatch(c -> c.up().isPositive()) ? 1 : 0;
      noBetterOneByOne(job, h.make(), plan, at);
    }
    assertTrue(ripped > Seeds.of(60) / 6, ripped + " ripped");
  }

  private static void lies(CutBlank b, String at) {
    Length clean = KERF;
    List<Cut> before = new ArrayList<>();
    for (Cut c : b.cuts()) {
      assertTrue(c.up().plus(c.high()).compareTo(b.face()) <= 0, at);
      assertTrue(c.at().compareTo(clean) >= 0, at);
      // Nesting rounds to the nanometre.
      Length end = c.at().plus(c.extent()).plus(clean);
      assertTrue(end.minus(b.length()).mm() < 1e-4, at + " " + c);
      for (Cut o : before) {
        boolean strips = c.part() == StockPlan.Part.SOFFIT && o.part() == c.part();
        if (strips && c.at().equals(o.at())) {
          assertTrue(o.up().plus(o.high()).plus(KERF).compareTo(c.up()) <= 0, at);
          assertTrue(c.extent().compareTo(o.extent()) <= 0, at);
        } else if (strips) {
          assertTrue(
              o.at().plus(o.extent()).plus(KERF).minus(c.at()).mm() < 1e-4, at + " " + o + c);
        }
      }
      before.add(c);
    }
  }

  private static void noBetterOneByOne(Job job, HeadWork head, StockPlan plan, String at) {
    List<Crosscut> single = new Strips(job, Part.of(List.of(head))).crosscuts(1);
    Assignment one = new Yard(job, single, List.of()).solve(Set.of());
    assertTrue(plan.unfit().size() <= one.missing().size(), at);
    if (plan.unfit().size() == one.missing().size()) {
      assertTrue(plan.blanks().size() <= one.blanks().size(), at);
    }
  }

  /** Strips of a spoiled flat move; what lies on the others stays. */
  @Test
  void aSpoiledFlatMovesItsStripsTogether() {
    JobMaker m = maker(HeadSpec.Soffit.BUTTED, flat("F1", 24, 14, 6));
    Job job = m.make();
    HeadWork head = soldiers(job, 6, 7, 5.75);
    StockPlan before = plan(job, head);
    CutBlank lost =
        before.blanks().stream()
            .filter(b -> b.cuts().stream().anyMatch(c -> c.up().isPositive()))
            .findFirst()
            .orElseThrow();
    m.spoiled.add(lost.id());
    StockPlan after = plan(m.make(), head);
    assertEquals(lost.cuts().size(), after.changes().size());
    assertTrue(after.blanks().stream().noneMatch(b -> b.id().equals(lost.id())));
    assertEquals(6, strips(after).size());
    for (CutBlank b : before.blanks()) {
      if (!b.id().equals(lost.id())) {
        CutBlank now =
            after.blanks().stream().filter(x -> x.id().equals(b.id())).findFirst().orElseThrow();
        assertEquals(b.cuts(), now.cuts().subList(0, b.cuts().size()));
      }
    }
  }
}
