package headcourse.layout.yard;

import static headcourse.layout.yard.FittedChecker.choose;
import static headcourse.layout.yard.FittedChecker.fitted;
import static headcourse.layout.yard.FittedChecker.heads;
import static headcourse.layout.yard.FittedChecker.same;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.bench.HeadWork;
import headcourse.job.Fitted;
import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Setting;
import headcourse.job.Stock;
import headcourse.layout.HeadLayout;
import headcourse.layout.PlacedStone;
import headcourse.layout.Role;
import headcourse.layout.Side;
import headcourse.layout.Solution;
import headcourse.stock.StockPlan;
import headcourse.stock.StockPlanner;
import headcourse.testing.JobMaker;
import headcourse.testing.Seeds;
import headcourse.units.Length;
import headcourse.work.CureCheck;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Heads set from a pile around stones that are cut already. */
class FromStockFittedTest {
  private static final int RUNS = Seeds.of(8);

  /** One or two heads of any kind that a pile serves. */
  private static JobMaker random(long seed) {
    Random r = new Random(seed);
    JobMaker m = FromStockTest.maker(seed, 20 + r.nextInt(12), 8.5);
    m.steps = 100_000;
    JobMaker.OpeningMaker o = m.first();
    o.width = Length.inches(40 + r.nextInt(30));
    o.mirror = r.nextInt(3) > 0;
    o.jump = r.nextInt(3) == 0 ? Length.inches(1.5 + r.nextInt(3)) : null;
    if (r.nextInt(3) == 0) {
      m.joints = Setting.Joints.MORTAR;
      m.joint = Length.inches(0.25);
    }
    if (r.nextInt(4) == 0) {
      o.key = r.nextBoolean() ? null : new HeadSpec.Key(null, null, zero(), zero(), zero());
    } else if (r.nextBoolean()) {
      o.key = new HeadSpec.Key(Length.inches(8), Length.inches(9.5), zero(), zero(), zero());
      o.params.put("ease", 1 + r.nextInt(3));
    }
    if (r.nextInt(3) == 0) {
      JobMaker.OpeningMaker other = new JobMaker.OpeningMaker();
      other.mark = "D2";
      other.width = Length.inches(30);
      other.rhythm = HeadSpec.Rhythm.FROM_STOCK;
      other.mirror = r.nextBoolean();
      m.openings.add(other);
    }
    return m;
  }

  private static Length zero() {
    return Length.ZERO;
  }

  private static Map<String, String> pieces(FromStock chosen) {
    Map<String, String> out = new HashMap<>();
    chosen.taken().forEach(t -> out.put(t.stone() + " " + t.copy(), t.piece()));
    return out;
  }

  /** Whatever is declared fitted just as it was solved, spoiled pieces or not, changes nothing. */
  @Test
  void asSolvedChangesNothing() {
    int heads = 0;
    for (long seed = 0; seed < RUNS; seed++) {
      Random r = new Random(seed);
      JobMaker bare = random(seed);
      FromStock planned = choose(bare);
      if (heads(planned).isEmpty()) {
        continue;
      }
      List<String> spoiled = new ArrayList<>();
      for (int n = r.nextInt(3); n > 0; n--) {
        FromStock.Taken t = planned.taken().get(r.nextInt(planned.taken().size()));
        if (!spoiled.contains(t.piece())) {
          spoiled.add(t.piece());
        }
      }
      bare.spoiled.addAll(spoiled);
      FromStock before = choose(bare);
      if (heads(before).isEmpty()) {
        continue;
      }
      heads++;
      for (int part = 0; part < 2; part++) {
        JobMaker m = random(seed);
        m.spoiled.addAll(spoiled);
        for (HeadLayout h : heads(before)) {
          for (PlacedStone s : h.stones()) {
            if (part == 0 || r.nextInt(3) > 0) {
              m.fitted.add(fitted(h, s, 0, m.tick));
            }
          }
        }
        FromStock now = choose(m);
        String at = "seed " + seed + " part " + part + " " + spoiled;
        assertEquals(heads(before).size(), heads(now).size(), at);
        for (int k = 0; k < heads(before).size(); k++) {
          HeadLayout a = heads(before).get(k);
          HeadLayout b = heads(now).get(k);
          assertEquals(a.stones().size(), b.stones().size(), at);
          for (int i = 0; i < a.stones().size(); i++) {
            same(a.stones().get(i), b.stones().get(i), at);
          }
          assertEquals(a.joints(), b.joints(), at);
          assertEquals(a.bearing(Side.LEFT).onWall(), b.bearing(Side.LEFT).onWall(), at);
          assertEquals(a.proof().status(), b.proof().status(), at);
          assertEquals(a.proof().cost(), b.proof().cost(), at);
          assertEquals(a.proof().bound(), b.proof().bound(), at);
          assertEquals(
              a.asBuilt().changes().stream()
                  .filter(c -> m.fitted.stream().noneMatch(f -> is(f, b, c.mark())))
                  .toList(),
              b.asBuilt().changes(),
              at);
        }
        assertEquals(pieces(before), pieces(now), at);
        assertEquals(before.changes(), now.changes(), at);
      }
    }
    assertTrue(heads > RUNS / 2, heads + " heads");
  }

  private static boolean is(Fitted f, HeadLayout h, String stone) {
    return f.opening().equals(h.opening().mark()) && f.stone().equals(stone);
  }

  /** One stone a tick off: what is nearer the key, the other side and the other head stay. */
  @Test
  void oneTickOffMovesOnlyWhatItMust() {
    int moved = 0;
    for (long seed = 0; seed < RUNS; seed++) {
      FromStock before = choose(random(seed));
      if (heads(before).isEmpty()) {
        continue;
      }
      Random r = new Random(seed);
      HeadLayout h = heads(before).get(0);
      List<PlacedStone> stones = h.stones().stream().filter(s -> s.role() != Role.KEY).toList();
      PlacedStone off = stones.get(r.nextInt(stones.size()));
      JobMaker m = random(seed);
      m.fitted.add(fitted(h, off, r.nextBoolean() ? 1 : -1, m.tick));
      FromStock now = choose(m);
      String at = "seed " + seed + " " + off.mark();
      if (heads(now).isEmpty()) {
        continue;
      }
      moved++;
      for (int k = 0; k < heads(before).size(); k++) {
        for (PlacedStone s : heads(before).get(k).stones()) {
          if (k > 0 || s.side() != off.side() || s.index() < off.index()) {
            same(s, heads(now).get(k).stone(s.mark()), at + " " + s.mark());
          }
        }
      }
      // Beyond it every stone may be cut as before; only where it stands is new.
      PlacedStone it = heads(now).get(0).stone(off.mark());
      assertTrue(it.fitted(), at);
      assertEquals(m.fitted.get(0).bottom(), it.bottom(), at);
      long other =
          heads(before).get(0).stones().stream()
              .filter(s -> s.side() == off.side() && s.index() > off.index())
              .filter(s -> !width(s).equals(width(heads(now).get(0).stone(s.mark()))))
              .count();
      assertTrue(other <= 1, at + " " + other);
      holds(m, now, at);
    }
    assertTrue(moved > RUNS / 2, moved + " moved");
  }

  private static Length width(PlacedStone s) {
    return s.feet().rightSoffit().minus(s.feet().leftSoffit());
  }

  /** Pieces are used once, and hold their stones; bearings, widths and jumps are as asked. */
  private static void holds(JobMaker m, FromStock chosen, String at) {
    Job job = m.make();
    Set<String> used = new HashSet<>();
    Map<String, Length> arris = new HashMap<>();
    for (Stock.Item i : job.stock().items()) {
      arris.put(i.mark() + "#1", i.length().minus(job.tools().saw().cleanCut().times(2)));
    }
    Set<String> cut =
        job.report().fitted().stream()
            .map(f -> f.opening() + "-" + f.stone())
            .collect(Collectors.toSet());
    for (FromStock.Taken t : chosen.taken()) {
      assertTrue(used.add(t.piece()), at + " " + t);
      assertTrue(!job.report().spoiled().contains(t.piece()), at + " " + t);
      if (cut.stream().noneMatch(c -> there(t.stone(), c))) {
        assertTrue(job.grid().ticks(t.extent()).compareTo(arris.get(t.piece())) <= 0, at + t);
      }
    }
    for (HeadLayout h : heads(chosen)) {
      for (Fitted f : job.report().fitted()) {
        if (f.opening().equals(h.opening().mark())) {
          assertTrue(h.stone(f.stone()).fitted(), at + " " + f);
          assertEquals(f.bottom(), h.stone(f.stone()).bottom(), at + " " + f);
        }
      }
      HeadSpec spec = h.opening().head();
      for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
        assertTrue(h.bearing(side).onWall().compareTo(spec.bearing().min()) >= 0, at);
        assertTrue(h.bearing(side).onWall().compareTo(spec.bearing().max()) <= 0, at);
        Length last = null;
        for (PlacedStone s : outwards(h, side)) {
          Length w = width(s);
          String mark = h.opening().mark() + "-" + s.mark();
          if (cut.stream().noneMatch(c -> there(mark, c))) {
            double slack = m.joint.isZero() && m.fitted.isEmpty() ? 0 : m.tick.mm();
            assertTrue(w.mm() >= spec.stones().min().mm() - slack, at + " " + s.mark());
            assertTrue(w.mm() <= spec.stones().max().mm() + slack, at + " " + s.mark());
            if (last != null && spec.stones().jump() != null) {
              double jump = w.minus(last).abs().mm();
              assertTrue(jump <= spec.stones().jump().mm() + slack, at + " " + s.mark());
            }
            Length extent =
                job.grid()
                    .ticks(
                        chosen.taken().stream()
                            .filter(t -> t.stone().equals(mark))
                            .findFirst()
                            .orElseThrow()
                            .extent());
            double lean = Math.max(s.feet().rightTop().mm(), s.feet().rightSoffit().mm());
            lean -= Math.min(s.feet().leftTop().mm(), s.feet().leftSoffit().mm());
            assertTrue(lean <= extent.mm() + 1e-6 + (m.joint.isZero() ? 0 : m.tick.mm()), at);
          }
          last = w;
        }
      }
    }
  }

  /** Whether a stone is there when another is: it is that one, or nearer the key. */
  private static boolean there(String stone, String cut) {
    int at = stone.indexOf('-') + 2;
    return stone.equals(cut)
        || stone.length() > at
            && cut.startsWith(stone.substring(0, at))
            && Integer.parseInt(stone.substring(at)) < Integer.parseInt(cut.substring(at));
  }

  private static List<PlacedStone> outwards(HeadLayout h, Side side) {
    return h.stones().stream()
        .filter(s -> s.side() == side)
        .sorted((a, b) -> a.index() - b.index())
        .toList();
  }

  /** Any mixture goes on within all rules, or is refused with a recut that works. */
  @Test
  void anyMixture() {
    CureCheck cures = new CureCheck();
    int solved = 0;
    for (long seed = 0; seed < 2 * RUNS; seed++) {
      FromStock before = choose(random(seed));
      if (heads(before).isEmpty()) {
        continue;
      }
      JobMaker m = mixture(seed, before);
      FromStock now = choose(m);
      String at = "seed " + seed;
      if (!heads(now).isEmpty()) {
        solved++;
        holds(m, now, at);
        continue;
      }
      cures.of(m, at);
    }
    assertEquals(List.of(), cures.failed);
    assertTrue(solved > RUNS / 2, solved + " solved");
  }

  /** All of the left side is cut, and its end stone so wide that it bears too far. */
  @Test
  void offersWhatHelpsAroundStonesThatAreCut() {
    FromStock before = choose(FromStockTest.maker(1, 40, 8.5));
    HeadLayout h = heads(before).get(0);
    JobMaker m = FromStockTest.maker(1, 40, 8.5);
    for (PlacedStone s : outwards(h, Side.LEFT)) {
      m.fitted.add(fitted(h, s, s.role() == Role.END ? 44 : 0, m.tick));
    }
    Solution.Refused no = (Solution.Refused) choose(m).solutions().get(0);
    assertTrue(no.problems().get(0).message().contains("around the stones that are cut"));
    CureCheck check = new CureCheck().of(m, "end stone");
    assertEquals(List.of(), check.failed);
    assertEquals(1, check.helped);
  }

  private static JobMaker mixture(long seed, FromStock before) {
    JobMaker m = random(seed);
    Random r = new Random(seed);
    for (HeadLayout h : heads(before)) {
      for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
        List<PlacedStone> row = outwards(h, side);
        int cut = r.nextInt(row.size() + 1);
        for (PlacedStone s : row.subList(0, cut)) {
          long far = r.nextInt(6) == 0 ? 40 : 4;
          long off = r.nextInt(3) > 0 ? 0 : Math.round(r.nextGaussian() * far);
          if (r.nextInt(6) > 0) {
            m.fitted.add(fitted(h, s, off, m.tick));
          }
        }
      }
      if (h.stones().stream().anyMatch(s -> s.mark().equals("K")) && r.nextInt(4) == 0) {
        m.fitted.add(fitted(h, h.stone("K"), r.nextInt(3) - 1, m.tick));
      }
    }
    if (r.nextBoolean() && !before.taken().isEmpty()) {
      FromStock.Taken t = before.taken().get(r.nextInt(before.taken().size()));
      m.spoiled.add(t.piece());
    }
    return m;
  }

  /** The piece that the job names is the one that is gone; its planned stone gets another. */
  @Test
  void thePieceThatTheJobNames() {
    FromStock before = choose(FromStockTest.maker(1, 40, 8.5));
    Map<String, String> planned = pieces(before);
    String other = planned.get("D1-L3 1");
    HeadLayout h = heads(before).get(0);
    PlacedStone l1 = h.stone("L1");
    JobMaker m = FromStockTest.maker(1, 40, 8.5);
    m.fitted.add(new Fitted("fitted.D1.L1", "D1", "L1", l1.bottom(), null, null, other));
    FromStock now = choose(m);
    Map<String, String> pieces = pieces(now);
    assertEquals(other, pieces.get("D1-L1 1"));
    assertTrue(!pieces.get("D1-L3 1").equals(other));
    assertEquals(2, now.changes().size());
    Job job = m.make();
    List<HeadWork> heads = headcourse.bench.HeadBench.workUp(job, heads(now));
    StockPlan plan = StockPlanner.plan(job, heads, now, heads);
    assertTrue(plan.blanks().stream().noneMatch(b -> b.id().equals(other)));
    m.fitted.set(
        0, new Fitted("fitted.D1.L1", "D1", "L1", l1.bottom(), null, null, Fitted.NO_PIECE));
    assertTrue(!pieces(choose(m)).containsKey("D1-L1 1"));
  }
}
