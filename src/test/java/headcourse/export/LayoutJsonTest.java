package headcourse.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.testing.JobMaker;
import headcourse.testing.RandomJobs;
import headcourse.testing.Seeds;
import headcourse.work.ShopWork;
import headcourse.work.WorkUp;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/** The promises of layout.json, read back by an independent parser (JSON is a subset of YAML). */
class LayoutJsonTest {
  @SuppressWarnings("unchecked")
  private static Map<String, Object> read(String json) {
    return (Map<String, Object>) new Yaml(new SafeConstructor(new LoaderOptions())).load(json);
  }

  @SuppressWarnings("unchecked")
  private static List<Map<String, Object>> list(Object o) {
    return (List<Map<String, Object>>) o;
  }

  private static double number(Map<String, Object> m, String key) {
    return ((Number) m.get(key)).doubleValue();
  }

  @Test
  void everyFieldOfTheContractIsThere() {
    Map<String, Object> root =
        read(LayoutJson.write(WorkUp.of(JobMaker.one().make()).value().orElseThrow()));
    assertEquals(1, root.get("format"));
    for (String key :
        List.of("job", "units", "gridMm", "openings", "blanks", "order", "materials", "findings")) {
      assertTrue(root.containsKey(key), key);
    }
    Map<String, Object> opening = list(root.get("openings")).get(0);
    for (String key :
        List.of(
            "mark",
            "count",
            "widthMm",
            "head",
            "bearingLeftMm",
            "bearingRightMm",
            "proof",
            "stones")) {
      assertTrue(opening.containsKey(key), key);
    }
    // 96 in with soldiers of 8 in beside a key of 10 in, dry.
    assertEquals(2438.4, number(opening, "widthMm"), 1e-9);
    Map<String, Object> stone = list(opening.get("stones")).get(0);
    for (String key :
        List.of(
            "mark",
            "role",
            "side",
            "index",
            "setOrder",
            "outlineMm",
            "bottomMm",
            "topMm",
            "heightMm",
            "diagonalsMm",
            "rakeInnerDeg",
            "rakeOuterDeg",
            "proudMm",
            "thicknessMm",
            "returnMm",
            "reliefMm",
            "areaM2",
            "massKg",
            "chordDeviationMm",
            "blank",
            "saw",
            "notches")) {
      assertTrue(stone.containsKey(key), key);
    }
    Map<String, Object> notch = list(stone.get("notches")).get(0);
    for (String key :
        List.of(
            "edge",
            "heightMm",
            "mouthMm",
            "runMm",
            "slantDeg",
            "coverMm",
            "plungeMm",
            "screwMm",
            "penetrationMm")) {
      assertTrue(notch.containsKey(key), key);
    }
    Map<String, Object> pass = list(stone.get("saw")).get(0);
    assertEquals(
        Set.of("edge", "pass", "lay", "mitreDeg", "tiltDeg"), new HashSet<>(pass.keySet()));
  }

  @Test
  void outlinesTurnCounterClockwiseAndHoldTheAreaPrinted() {
    int read = 0;
    for (long seed = 1; seed <= Seeds.of(80); seed++) {
      Optional<ShopWork> work = WorkUp.of(RandomJobs.flat(seed).make()).value();
      if (work.isEmpty()) {
        continue;
      }
      read++;
      for (Map<String, Object> opening : list(read(LayoutJson.write(work.get())).get("openings"))) {
        stones(seed, list(opening.get("stones")));
      }
    }
    assertTrue(read > 40, "too few jobs read: " + read);
  }

  @SuppressWarnings("unchecked")
  private static void stones(long seed, List<Map<String, Object>> stones) {
    Set<Object> marks = new HashSet<>();
    Set<Object> orders = new HashSet<>();
    for (Map<String, Object> s : stones) {
      String which = "seed " + seed + ", " + s.get("mark");
      assertTrue(marks.add(s.get("mark")), which);
      assertTrue(orders.add(s.get("setOrder")), which);
      List<List<Number>> outline = (List<List<Number>>) s.get("outlineMm");
      double twice = 0;
      for (int i = 0; i < outline.size(); i++) {
        List<Number> a = outline.get(i);
        List<Number> b = outline.get((i + 1) % outline.size());
        twice +=
            a.get(0).doubleValue() * b.get(1).doubleValue()
                - b.get(0).doubleValue() * a.get(1).doubleValue();
      }
      // A cambered soffit is given by chords, each within 0.05 mm.
      assertEquals(number(s, "areaM2"), twice / 2e6, 6e-5, which);
      assertTrue(twice > 0, which);
      double inner = number(s, "rakeInnerDeg");
      double outer = number(s, "rakeOuterDeg");
      assertTrue(inner > -1e-9 && outer > -1e-9, which);
      if (!"centre".equals(s.get("side"))) {
        assertFalse(number(s, "bottomMm") <= 0, which);
      }
    }
    for (int i = 1; i <= stones.size(); i++) {
      assertTrue(orders.contains(i), "seed " + seed + " lacks number " + i + " in setting order");
    }
  }

  @Test
  void numbersHaveNoExponentAndNoMinusZero() {
    assertEquals("0.0", JsonWriter.decimal(-0.00001));
    assertEquals("12345678.9", JsonWriter.decimal(12345678.9));
    assertEquals("0.0001", JsonWriter.decimal(0.0001));
    assertEquals("5.0", JsonWriter.decimal(5));
  }
}
