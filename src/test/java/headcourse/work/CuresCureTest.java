package headcourse.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.cure.Cure;
import headcourse.diag.Diagnostic;
import headcourse.diag.Outcome;
import headcourse.job.Change;
import headcourse.job.HeadSpec;
import headcourse.job.Measured;
import headcourse.testing.JobMaker;
import headcourse.testing.JobText;
import headcourse.testing.JobYaml;
import headcourse.testing.RandomArches;
import headcourse.testing.RandomJobs;
import headcourse.testing.Seeds;
import headcourse.units.Grid;
import headcourse.units.Length;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Every cure that is offered is written into the job file, and the job then comes out. */
class CuresCureTest {
  private static void cures(CureCheck check, int share) {
    System.getLogger("cures").log(System.Logger.Level.DEBUG, check.toString());
    if (Boolean.getBoolean("headcourse.tell")) {
      System.out.println(check);
    }
    assertEquals(List.of(), check.failed, check.toString());
    assertTrue(check.helped * 100 >= check.refused * share, check.toString());
  }

  @Test
  void flatHeads() {
    CureCheck check = new CureCheck();
    for (long seed = 0; check.refused < Seeds.of(55); seed++) {
      check.of(RandomJobs.flat(seed), "seed " + seed);
    }
    cures(check, 90);
  }

  @Test
  void curvedHeads() {
    CureCheck check = new CureCheck();
    for (long seed = 0; check.refused < Seeds.of(45); seed++) {
      check.of(tight(seed), "seed " + seed);
    }
    cures(check, 90);
  }

  /** Narrow limits, short walls and keys of any width. */
  private static JobMaker tight(long seed) {
    JobMaker m = RandomArches.job(seed);
    Random r = new Random(seed * 77 + 5);
    Grid grid = new Grid(m.tick);
    JobMaker.OpeningMaker o = m.first();
    o.min = grid.snap(Length.inches(3 + r.nextInt(6)));
    o.max = o.min.plus(grid.snap(Length.inches(r.nextInt(12) / 8.0)));
    o.target = o.min;
    o.clear = grid.snap(Length.inches(r.nextInt(7)));
    o.eachSide = r.nextInt(3) == 0 ? 1 + r.nextInt(9) : null;
    if (r.nextInt(3) == 0) {
      o.wallLeft = grid.snap(Length.inches(1 + r.nextInt(8)));
    }
    if (r.nextInt(4) == 0) {
      o.step = grid.ticks(r.nextInt(9) - 4);
      o.rhythm = HeadSpec.Rhythm.GRADED;
    }
    return m;
  }

  @Test
  void asMeasured() {
    CureCheck check = new CureCheck();
    for (long seed = 0; check.refused < Seeds.of(18); seed++) {
      JobMaker m = RandomJobs.flat(seed + 5_000);
      Random r = new Random(seed);
      Length width = m.first().width;
      Grid grid = new Grid(m.tick);
      Length more = grid.snap(Length.inches(r.nextInt(9) / 8.0 - 0.5));
      m.first().measured =
          new Measured(
              width.plus(more),
              null,
              null,
              List.of(),
              null,
              null,
              grid.snap(Length.inches(r.nextInt(5) / 8.0 - 0.25)));
      check.of(m, "seed " + seed);
    }
    cures(check, 90);
  }

  /**
   * Fewer words: so many stones a side, or arrises worked to the curve, and the finding is gone.
   */
  @Test
  void whatARuleSaysWouldDo() {
    int said = 0;
    for (long seed = 0; said < Seeds.of(15); seed++) {
      JobMaker m = RandomArches.job(seed);
      m.first().clear = new Grid(m.tick).snap(Length.inches(1 + seed % 4));
      String text = JobYaml.of(m);
      Optional<ShopWork> work = JobYaml.read(text).value().flatMap(j -> WorkUp.of(j).value());
      List<String> values =
          work.stream()
              .flatMap(w -> w.heads().get(0).layout().remarks().stream())
              .filter(r -> r.key().equals("arris") && r.values().size() > 4)
              .map(r -> r.values())
              .findFirst()
              .orElse(List.of());
      if (values.isEmpty()) {
        continue;
      }
      said++;
      assertFalse(offCurve(work.orElseThrow()).isEmpty(), "seed " + seed);
      String stones = "openings[0].head.stones.each-side";
      for (Change c :
          List.of(
              new Change(stones, values.get(5), ""),
              new Change("openings[0].head.arris", "worked", ""))) {
        ShopWork then = WorkUp.of(JobYaml.job(JobText.with(text, List.of(c)))).value().orElse(null);
        assertTrue(then != null, "seed " + seed + " " + c);
        assertEquals(List.of(), offCurve(then), "seed " + seed + " " + c);
      }
    }
  }

  private static List<String> offCurve(ShopWork work) {
    return work.findings().stream()
        .filter(f -> f.rule().equals("chord-deviation"))
        .map(f -> f.message())
        .toList();
  }

  /** What can't be is the key's fault, and is told at the key's line. */
  @Test
  void aKeyAtFaultIsNamed() {
    String job =
        """
        stone: {thickness: 1 1/4}
        openings:
          - mark: D1
            width: 4'
            head:
              shape: SHAPE
              key:
                KEY
        """;
    for (String[] c :
        new String[][] {
          {"soldier", "bottom: 50", "52\" wide, the opening 48\""},
          {"soldier", "{bottom: 8, top: 46}", "wide, the opening 48\""},
          {"soldier", "{bottom: 9, top: 8 1/2}", "8 1/2\" wide at the top and 9\" at the foot"},
          {"jack", "bottom: 49", "wide, the opening 48\""},
          {"segmental", "bottom: 50", "a key of 50\" is wider than the whole head"},
          {"semicircular", "bottom: 60", "a key of 60\" is wider than the whole head"}
        }) {
      String text = job.replace("SHAPE", c[0]).replace("KEY", c[1]);
      Outcome<ShopWork> done = WorkUp.of(JobYaml.job(text));
      Diagnostic first = done.diagnostics().get(0);
      assertTrue(first.message().contains(c[2]), first.message());
      assertEquals(8, first.span().line(), first.message());
      assertFalse(CureCheck.advice(JobYaml.job(text), 0).cures().isEmpty(), first.message());
      CureCheck check = new CureCheck();
      check.of(text, c[0] + c[1]);
      assertEquals(List.of(), check.failed);
    }
  }

  /** Growing stones made equal: the step goes with the rhythm it is for. */
  @Test
  void equalStonesTakeNoNegativeStep() {
    JobMaker m = JobMaker.one();
    m.first().rhythm = HeadSpec.Rhythm.GRADED;
    m.first().step = Length.inches(-3);
    CureCheck check = new CureCheck().of(m, "growing");
    assertEquals(List.of(), check.failed);
    List<List<Change>> even =
        CureCheck.advice(m).cures().stream()
            .map(Cure::changes)
            .filter(c -> c.get(0).path().endsWith("rhythm") && c.get(0).value().equals("even"))
            .toList();
    assertEquals(1, even.size());
    assertTrue(even.get(0).get(1).leavesOut());
  }
}
