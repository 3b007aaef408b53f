package headcourse.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.job.AnchorKind;
import headcourse.job.Backing;
import headcourse.job.Job;
import headcourse.job.Sheathing;
import headcourse.testing.JobMaker;
import headcourse.testing.RandomJobs;
import headcourse.testing.Seeds;
import headcourse.units.Length;
import headcourse.work.WorkUp;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/**
 * What holds every screw of random jobs with random walls, worked out again from {@code
 * layout.json} alone and what the job file says of the wall.
 */
class AnchorsRecomputedTest {
  private final int[] seen = new int[4];

  private static JobMaker job(long seed) {
    JobMaker m = RandomJobs.flat(seed, 24, 100);
    Random r = new Random(seed * 31 + 7);
    m.scratch = Length.inches(r.nextInt(4) / 4.0);
    m.sheathing = new Sheathing(Length.inches(r.nextInt(4) / 4.0), r.nextInt(3) == 0);
    m.embedment = Length.inches(r.nextBoolean() ? 1 : 0.75);
    if (r.nextBoolean()) {
      m.kinds = List.of(AnchorKind.WOOD_SCREW, AnchorKind.MASONRY_SCREW);
    }
    if (r.nextInt(3) == 0) {
      m.lengths = List.of(Length.inches(2), Length.inches(2.5), Length.inches(3));
    }
    List<Backing> lines = new ArrayList<>();
    double to = 0;
    for (int i = r.nextInt(4); i > 0; i--) {
      to += 2 + r.nextInt(20) / 4.0;
      Backing.Kind kind = Backing.Kind.of(Backing.Kind.words().get(r.nextInt(6)));
      lines.add(new Backing(Length.inches(to), kind, "line " + i, 0.41));
    }
    Backing.Kind above = Backing.Kind.of(Backing.Kind.words().get(r.nextInt(6)));
    lines.add(new Backing(null, above, "above", 0.41));
    m.backing = lines;
    return m;
  }

  @Test
  void penetrationFromTheFileAlone() {
    for (long seed = 0; seed < Seeds.of(60); seed++) {
      Job job = job(seed).make();
      var work = WorkUp.of(job).value();
      if (work.isPresent()) {
        Map<String, Object> root =
            new Yaml(new SafeConstructor(new LoaderOptions())).load(LayoutJson.write(work.get()));
        List<Map<String, Object>> findings = list(root.get("findings"));
        for (Map<String, Object> stone : list(list(root.get("openings")).get(0).get("stones"))) {
          for (Map<String, Object> notch : list(stone.get("notches"))) {
            check(job, stone, notch, findings, "seed " + seed + " " + stone.get("mark"));
          }
        }
      }
    }
    for (int n : seen) {
      assertTrue(n > 20, "too few cases of a kind: " + java.util.Arrays.toString(seen));
    }
  }

  private void check(
      Job job,
      Map<String, Object> stone,
      Map<String, Object> notch,
      List<Map<String, Object>> findings,
      String name) {
    double a = number(notch, "mouthMm");
    double e = number(notch, "runMm");
    double c = Math.hypot(a, e);
    boolean counts = job.wall().sheathing().holds();
    double thick = job.wall().sheathing().thickness().mm();
    double idle =
        job.wall().bed().mm()
            + Math.max(0, number(stone, "proudMm"))
            + job.wall().scratch().mm()
            + (counts ? 0 : thick);
    String kind = kind(job, height(stone, notch));
    boolean masonry = job.fastener().kinds().size() == 2;
    boolean suits = kind.equals("wood") || masonry && List.of("concrete", "block").contains(kind);
    boolean loose = List.of("board", "gap").contains(kind);
    double embed = job.fastener().embedment().mm();
    boolean can = suits || loose && counts && thick >= embed - 1e-9;
    Double wanted = null;
    for (Length l : job.fastener().lengths()) {
      double deep = (l.mm() - c) * a / c - idle;
      if (wanted == null && deep >= embed - 1e-9) {
        wanted = l.mm();
      }
    }
    boolean said =
        findings.stream()
            .filter(f -> stone.get("mark").equals(f.get("stone")))
            .filter(f -> "error".equals(f.get("severity")))
            .anyMatch(f -> f.get("rule").toString().matches("screw-(reach|holds|kind)"));
    if (!can || wanted == null) {
      seen[can ? 0 : loose ? 1 : 2]++;
      assertNull(notch.get("screwMm"), name);
      assertNull(notch.get("holdsIn"), name);
      assertEquals(0, number(notch, "penetrationMm"), name);
      assertTrue(said, name);
      return;
    }
    seen[3]++;
    assertEquals(wanted, number(notch, "screwMm"), 1e-3, name);
    double deep = (wanted - c) * a / c - idle;
    assertEquals(loose ? Math.min(deep, thick) : deep, number(notch, "penetrationMm"), 1e-3, name);
    boolean sheathing = loose || counts && deep <= thick;
    assertEquals(sheathing ? "sheathing" : kind, notch.get("holdsIn"), name);
    assertFalse(number(notch, "penetrationMm") < embed - 1e-3, name);
  }

  /** Height of a slot above the soffit line: along its edge from the lower corner. */
  private static double height(Map<String, Object> stone, Map<String, Object> notch) {
    List<List<Number>> v = outline(stone);
    boolean left =
        notch.get("edge").equals("left")
            || notch.get("edge").equals("outer") && stone.get("side").equals("left")
            || notch.get("edge").equals("inner") && stone.get("side").equals("right");
    // A cambered soffit has vertices between its ends; edges and top are straight.
    List<Number> low = v.get(left ? 0 : v.size() - 3);
    List<Number> high = v.get(left ? v.size() - 1 : v.size() - 2);
    double dx = high.get(0).doubleValue() - low.get(0).doubleValue();
    double dy = high.get(1).doubleValue() - low.get(1).doubleValue();
    return low.get(1).doubleValue() + number(notch, "heightMm") * dy / Math.hypot(dx, dy);
  }

  private static String kind(Job job, double height) {
    for (Backing b : job.wall().backing()) {
      if (b.to() == null || height <= b.to().mm() + 1e-3) {
        return b.kind().word();
      }
    }
    return "gap";
  }

  @SuppressWarnings("unchecked")
  private static List<List<Number>> outline(Map<String, Object> stone) {
    return (List<List<Number>>) stone.get("outlineMm");
  }

  @SuppressWarnings("unchecked")
  private static List<Map<String, Object>> list(Object o) {
    return (List<Map<String, Object>>) o;
  }

  private static double number(Map<String, Object> m, String key) {
    return ((Number) m.get(key)).doubleValue();
  }
}
