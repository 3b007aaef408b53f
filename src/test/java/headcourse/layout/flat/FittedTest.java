package headcourse.layout.flat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.cure.Advice;
import headcourse.job.Change;
import headcourse.job.Fitted;
import headcourse.job.Job;
import headcourse.layout.HeadLayout;
import headcourse.layout.PlacedStone;
import headcourse.layout.Role;
import headcourse.layout.Side;
import headcourse.layout.Solution;
import headcourse.layout.shapes.Shapes;
import headcourse.testing.JobMaker;
import headcourse.testing.RandomJobs;
import headcourse.testing.Seeds;
import headcourse.units.Length;
import headcourse.work.CureCheck;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Heads solved around stones that are cut already. */
class FittedTest {
  private static final int RUNS = Seeds.of(150);

  private static Solution solve(JobMaker maker) {
    Job job = maker.make();
    String shape = job.openings().get(0).head().shape();
    return Shapes.named(shape).orElseThrow().setOut(job, job.openings().get(0));
  }

  private static HeadLayout head(JobMaker maker) {
    return solve(maker) instanceof Solution.Solved s ? s.head() : null;
  }

  private static Fitted asSolved(PlacedStone s, boolean all) {
    return fitted(s.mark(), s.bottom(), all ? s.top() : null, all ? s.height() : null);
  }

  private static Fitted fitted(String mark, Length bottom, Length top, Length height) {
    return new Fitted("fitted.D1." + mark, "D1", mark, bottom, top, height);
  }

  private static void same(PlacedStone a, PlacedStone b, String at) {
    assertEquals(a.face(), b.face(), at);
    assertEquals(a.feet(), b.feet(), at);
    assertEquals(a.bottom(), b.bottom(), at);
    assertEquals(a.top(), b.top(), at);
    assertEquals(a.height(), b.height(), at);
    assertEquals(a.role(), b.role(), at);
  }

  /** Every stone declared fitted just as it was solved changes nothing but its word. */
  @Test
  void asSolvedChangesNothing() {
    int heads = 0;
    for (long seed = 0; seed < RUNS; seed++) {
      HeadLayout before = head(RandomJobs.flat(seed));
      if (before == null) {
        continue;
      }
      heads++;
      Random random = new Random(seed);
      for (int part = 0; part < 3; part++) {
        JobMaker maker = RandomJobs.flat(seed);
        for (PlacedStone s : before.stones()) {
          if (part == 0 || random.nextInt(3) != 0) {
            maker.fitted.add(asSolved(s, part == 0 || random.nextBoolean()));
          }
        }
        HeadLayout now = head(maker);
        String at = "seed " + seed + " part " + part;
        assertEquals(before.stones().size(), now.stones().size(), at);
        for (int i = 0; i < before.stones().size(); i++) {
          same(before.stones().get(i), now.stones().get(i), at);
          String mark = now.stones().get(i).mark();
          boolean is = maker.fitted.stream().anyMatch(f -> f.stone().equals(mark));
          assertEquals(is, now.stones().get(i).fitted(), at + " " + mark);
        }
        assertEquals(before.joints(), now.joints(), at);
        assertEquals(before.bearing(Side.LEFT).onWall(), now.bearing(Side.LEFT).onWall(), at);
        assertEquals(before.bearing(Side.RIGHT).onTop(), now.bearing(Side.RIGHT).onTop(), at);
        assertEquals(List.of(), now.asBuilt().changes(), at);
      }
    }
    assertTrue(heads > RUNS / 3, heads + " heads");
  }

  /**
   * One stone a tick off: what lies nearer the key, and the other side, stay; it is as measured.
   */
  @Test
  void oneTickOffMovesOnlyWhatItMust() {
    int moved = 0;
    for (long seed = 0; seed < RUNS; seed++) {
      HeadLayout before = head(RandomJobs.flat(seed));
      if (before == null) {
        continue;
      }
      Random random = new Random(seed);
      List<PlacedStone> stones =
          before.stones().stream().filter(s -> s.role() != Role.KEY).toList();
      PlacedStone off = stones.get(random.nextInt(stones.size()));
      JobMaker maker = RandomJobs.flat(seed);
      Length tick = maker.tick.times(random.nextBoolean() ? 1 : -1);
      maker.fitted.add(fitted(off.mark(), off.bottom().plus(tick), off.top().plus(tick), null));
      HeadLayout now = head(maker);
      if (now == null) {
        continue;
      }
      moved++;
      String at = "seed " + seed + " " + off.mark();
      for (PlacedStone s : before.stones()) {
        if (s.side() != off.side() || s.index() < off.index()) {
          same(s, now.stone(s.mark()), at + " " + s.mark());
        }
      }
      PlacedStone it = now.stone(off.mark());
      assertTrue(it.fitted(), at);
      assertEquals(off.bottom().plus(tick), it.bottom(), at);
      double slack = before.opening().head().params().values().isEmpty() ? 1e-6 : 1e-3;
      assertEquals(it.bottom().mm(), width(it, true), slack, at);
    }
    assertTrue(moved > RUNS / 4, moved + " moved");
  }

  /** Between the lower corners of the outline, or the upper ones. */
  private static double width(PlacedStone s, boolean lower) {
    var soffit = s.edges(headcourse.layout.FaceEdge.Where.SOFFIT);
    return soffit.get(0).from().distance(soffit.get(soffit.size() - 1).to());
  }

  /** Any mixture solves within all constraints, or is refused with changes that work. */
  @Test
  void anyMixture() {
    int solved = 0;
    int refused = 0;
    CureCheck cures = new CureCheck();
    for (long seed = 0; seed < RUNS; seed++) {
      JobMaker maker = mixture(seed);
      String at = "seed " + seed;
      Solution s = solve(maker);
      if (s instanceof Solution.Solved ok) {
        solved++;
        FittedCheck.holds(maker.make(), ok.head(), at);
      } else if (s instanceof Solution.Refused) {
        refused++;
        cures.of(maker, at);
      }
    }
    assertEquals(List.of(), cures.failed);
    assertTrue(cures.helped >= cures.refused - cures.refused / 10, cures.toString());
    assertTrue(
        solved > RUNS / 5 && refused > RUNS / 20, solved + " solved, " + refused + " refused");
  }

  /** A random head with some stones cut, well or badly, and an opening that is not as drawn. */
  private static JobMaker mixture(long seed) {
    JobMaker maker = RandomJobs.flat(seed, 12, 130);
    JobMaker.OpeningMaker o = maker.first();
    Random random = new Random(seed);
    HeadLayout drawn = head(RandomJobs.flat(seed, 12, 130));
    if (random.nextBoolean()) {
      o.measured = FittedCheck.measured(o.width, random);
    }
    if (drawn == null || random.nextInt(8) == 0) {
      return maker;
    }
    List<Fitted> all = new ArrayList<>();
    for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
      int n = (int) drawn.stones().stream().filter(s -> s.side() == side).count();
      int cut = random.nextInt(n + 2);
      for (int i = 1; i <= Math.min(n, cut); i++) {
        PlacedStone s = drawn.stone((side == Side.LEFT ? "L" : "R") + i);
        if (random.nextInt(6) != 0) {
          all.add(off(s, maker.tick, random));
        }
      }
    }
    if (o.key != null && random.nextBoolean()) {
      all.add(off(drawn.stone("K"), maker.tick, random));
    }
    maker.fitted = all;
    return maker;
  }

  private static Fitted off(PlacedStone s, Length tick, Random random) {
    // Now and then not even on the grid, and now and then far out.
    long most = random.nextInt(12) == 0 ? 2400 : 300;
    Length step = new Length(tick.picometres() / (random.nextInt(4) == 0 ? 200 : 100) * 100);
    long ticks = random.nextInt(3) == 0 ? 0 : Math.round(random.nextGaussian() * most / 100);
    Length bottom = s.bottom().plus(step.times(ticks)).max(tick);
    Length top = random.nextBoolean() ? null : s.top().plus(tick.times(ticks)).max(tick);
    Length height = random.nextInt(5) == 0 ? s.height().plus(tick.times(ticks)).max(tick) : null;
    return fitted(s.mark(), bottom, top, height);
  }

  private static void says(Solution s, String text) {
    Solution.Refused refused = (Solution.Refused) s;
    List<String> all = refused.problems().stream().map(p -> p.message()).toList();
    assertTrue(all.stream().anyMatch(m -> m.contains(text)), () -> text + " not in " + all);
  }

  private static void says(Advice advice, String text) {
    List<String> all = advice.problems().stream().map(p -> p.message()).toList();
    assertTrue(all.stream().anyMatch(m -> m.contains(text)), () -> text + " not in " + all);
  }

  private static JobMaker door(String mark, double width) {
    JobMaker m = JobMaker.one();
    m.fitted.add(fitted(mark, Length.inches(width), null, null));
    return m;
  }

  /** Six of 8 in bear 5 in; one of them 1/4 in wider moves the rest out by as much; arithmetic. */
  @Test
  void restMovesOut() {
    HeadLayout h = head(door("L3", 8.25));
    assertEquals(Length.inches(5.25), h.bearing(Side.LEFT).onWall());
    assertEquals(Length.inches(5), h.bearing(Side.RIGHT).onWall());
    assertEquals(
        List.of("L6", "L5", "L4"), h.asBuilt().changes().stream().map(c -> c.mark()).toList());
    assertEquals(Length.inches(8), h.stone("L4").bottom());
    assertEquals(Length.inches(0.25), h.asBuilt().changes().get(1).shift());
  }

  /** An odd key puts the sides half a step off the grid; the first stones take that up. */
  @Test
  void firstStoneTakesUpWhatIsOffTheGrid() {
    HeadLayout h = head(door("K", 10.0625));
    assertEquals(5.03125, h.stone("R1").feet().leftSoffit().mm() / 25.4, 1e-9);
    assertEquals(
        0, h.stone("R1").feet().rightSoffit().picometres() % Length.inches(1 / 16.0).picometres());
    assertEquals(Length.inches(8), h.stone("R2").bottom());
    assertEquals(h.stone("L1").bottom(), h.stone("R1").bottom());
  }

  /** Stones of 5 to 9 in: 4 in more than drawn leaves the jamb in line with a joint. */
  @Test
  void namesWhatToRecut() {
    JobMaker m = door("L6", 7);
    // Five of 8 in end 45 in out; 7 in more bear 4 in, and 6 1/2 in only 3 1/2 in.
    assertEquals(Length.inches(4), head(m).bearing(Side.LEFT).onWall());
    JobMaker shorter = door("L6", 6.5);
    shorter.first().eachSide = 6;
    Advice s = CureCheck.advice(shorter);
    says(s, "L6 as it was cut, 6 1/2\" wide at the bottom");
    says(s, "1/2\" wider it would");
    Change first = s.cures().get(0).changes().get(0);
    assertEquals("fitted.D1.L6", first.path());
    assertEquals("7", first.value());
  }

  @Test
  void stonesNobodyKnowsOf() {
    says(solve(door("L9", 8)), "L9 is fitted, but L7 was not measured");
    JobMaker m = door("K", 8);
    m.first().key = null;
    says(solve(m), "a key is fitted, but this head has none");
  }
}
