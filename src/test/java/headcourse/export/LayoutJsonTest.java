package headcourse.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.job.HeadSpec;
import headcourse.job.Setting;
import headcourse.layout.FaceEdge;
import headcourse.testing.JobMaker;
import headcourse.testing.RandomJobs;
import headcourse.testing.Seeds;
import headcourse.units.Length;
import headcourse.work.ShopWork;
import headcourse.work.WorkUp;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
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

  /**
   * 1/32 in is 0.79375 mm, which four decimals don't hold: every length on the grid, or on half of
   * one of its steps as jambs and bearings may be, is written in full. 1 in = 25.4 mm, exact.
   */
  @Test
  void lengthsOnAGridOfThirtySecondsAreExact() {
    Pattern size =
        Pattern.compile(
            "\"((?:grid|width|jambLeft|jambRight|bearing\\w+|bottom|top|thickness)Mm)\":"
                + " (-?[0-9.]+)");
    int read = 0;
    int fine = 0;
    for (int i = 0; i < 12; i++) {
      JobMaker m = JobMaker.one();
      m.tick = Length.inches(1 / 32.0);
      m.first().width = Length.inches(80 + (2 * i + 1) / 32.0);
      m.first().key =
          new HeadSpec.Key(
              Length.inches(8 + i / 32.0),
              Length.inches(9 + 3 * i / 32.0),
              Length.ZERO,
              Length.ZERO,
              Length.ZERO);
      String json = LayoutJson.write(WorkUp.of(m.make()).value().orElseThrow());
      Matcher found = size.matcher(json);
      while (found.find()) {
        BigDecimal halves =
            new BigDecimal(found.group(2))
                .multiply(BigDecimal.valueOf(64))
                .divide(new BigDecimal("25.4"), 20, RoundingMode.HALF_EVEN);
        assertEquals(0, halves.remainder(BigDecimal.ONE).signum(), found.group());
        fine += halves.remainder(BigDecimal.valueOf(4)).signum() == 0 ? 0 : 1;
        read++;
      }
      assertTrue(json.contains("\"gridMm\": 0.79375,"));
      // Feet of a dry head are ticks, in the outline too.
      String outlines =
          Pattern.compile("\"outlineMm\": *\\[(?:\\s*\\[[^\\]]*\\],?)*")
              .matcher(json)
              .results()
              .map(java.util.regex.MatchResult::group)
              .collect(java.util.stream.Collectors.joining());
      Matcher outline = Pattern.compile("\\[(-?[0-9.]+), (-?[0-9.]+)\\]").matcher(outlines);
      assertTrue(outlines.length() > 500, outlines);
      while (outline.find()) {
        BigDecimal ticks =
            new BigDecimal(outline.group(1))
                .multiply(BigDecimal.valueOf(32))
                .divide(new BigDecimal("25.4"), 20, RoundingMode.HALF_EVEN);
        assertEquals(0, ticks.remainder(BigDecimal.ONE).signum(), outline.group());
      }
    }
    assertTrue(read > 200 && fine > 50, read + " lengths, " + fine + " finer than 1/16");
  }

  /** A stone's sizes are its outline's own, though print rounds them; its rakes too. */
  @Test
  @SuppressWarnings("unchecked")
  void sizesAndRakesAreThoseOfTheOutline() {
    for (String shape : List.of("segmental", "semicircular", "pointed", "jack")) {
      JobMaker m = JobMaker.one();
      m.joints = Setting.Joints.MORTAR;
      m.joint = Length.inches(0.25);
      m.first().shape = shape;
      m.first().width = Length.inches(61);
      m.first().min = Length.inches(2);
      m.first().max = Length.inches(24);
      m.first().key =
          new HeadSpec.Key(
              shape.equals("jack") ? Length.inches(6) : null,
              null,
              Length.ZERO,
              Length.ZERO,
              Length.ZERO);
      if (shape.equals("segmental")) {
        m.first().params.put("rise", Length.inches(7));
      }
      ShopWork work = WorkUp.of(m.make()).value().orElseThrow();
      Map<String, Object> opening = list(read(LayoutJson.write(work)).get("openings")).get(0);
      for (Map<String, Object> s : list(opening.get("stones"))) {
        String which = shape + " " + s.get("mark");
        List<List<Number>> outline = (List<List<Number>>) s.get("outlineMm");
        var stone = work.heads().get(0).layout().stone(String.valueOf(s.get("mark")).substring(3));
        List<headcourse.geom.Edge> soffit = stone.edges(FaceEdge.Where.SOFFIT);
        var from = soffit.get(0).from();
        var to = soffit.get(soffit.size() - 1).to();
        assertEquals(from.x(), outline.get(0).get(0).doubleValue(), 1e-4, which);
        assertEquals(from.distance(to), number(s, "bottomMm"), 1e-4, which);
        if ("centre".equals(s.get("side"))) {
          continue;
        }
        double outer = number(s, "rakeOuterDeg");
        assertTrue(outer > 0 && outer <= 90, which + " leans " + outer);
        if (!shape.equals("jack") && !shape.equals("segmental") && "end".equals(s.get("role"))) {
          assertEquals(90, outer, 1e-9, which);
        }
      }
    }
  }
}
