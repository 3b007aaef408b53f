package headcourse.choose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.diag.Outcome;
import headcourse.drawing.Mark;
import headcourse.drawing.Page;
import headcourse.drawing.PageSet;
import headcourse.export.LayoutJson;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Tolerance;
import headcourse.job.Job;
import headcourse.sheet.choose.ChoiceSheets;
import headcourse.sheet.choose.ChoiceSvg;
import headcourse.sheet.frame.Frame;
import headcourse.testing.JobYaml;
import headcourse.testing.PageInspector;
import headcourse.work.ShopWork;
import headcourse.work.WorkUp;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.yaml.snakeyaml.Yaml;

/** Choices as they are shown, and as they are drawn when a job takes their letter. */
class ChoicesTest {
  private static final String METRIC =
      """
      units: mm
      paper: a4
      language: en+es
      stone: {kind: limestone, thickness: 30}
      setting: {joints: mortar, joint: 6, cut-tolerance: 1}
      openings:
        - mark: W9
          label: Store window
          width: 1847
          wall-right: 310
          vary:
            shape: [soldier, jack, segmental]
            rhythm: [even, mixed]
            rise: [150, 220]
            key: {bottom: 150..210 by 20}
            joints: [dry, 6]
            proportion: 1.05..1.3
          head:
            height: 300
            key: {bottom: 190, top: 231, rise: 30, drop: 12}
            stones: {min: 110, max: 220, target: 157, mirror: false}
            bearing: {min: 120, max: 230, target: 170}
      stock:
        corners:
          - {mark: C1, arris: 600, face: 420, return: 120, count: 9, price: 41.5}
        order:
          - {mark: X1, arris: 500, face: 420, return: 120, price: 60}
      """;

  static final String INCHES =
      """
      stone: {thickness: 1 1/4}
      openings:
        - mark: D1
          label: Cart door
          width: 16'
          wall-left: 2'
          vary: {key: {bottom: 7..9 by 1/2}, shape: [soldier, jack]}
      %s    head:
            height: 12
            key: {bottom: 8, top: 11, rise: 2, drop: 1, proud: 1/2}
            stones: {min: 5, max: 8 1/2, target: 7 7/16}
            bearing: {min: 4, max: 8, target: 6}
      stock:
        corners:
          - {mark: C1, arris: 24, face: 18, return: 5, count: 30}
      """;

  private static final String TWELVE =
      """
      stone: {thickness: 1 1/4}
      openings:
        - mark: D1
          label: Cart door
          width: 9'
          vary:
            key: {bottom: 7..9 by 1/2}
            shape: [soldier, segmental]
            rise: [12, 16]
            rhythm: [even, mixed]
          head:
            height: 12
            key: {bottom: 8, top: 11, rise: 2}
            stones: {min: 5, max: 9, target: 7 1/2}
            bearing: {min: 4, max: 8, target: 6}
      stock:
        corners:
          - {mark: C1, arris: 24, face: 18, return: 5, count: 30}
      """;

  @Test
  void eachPictureIsTheHeadDrawnWithItsLetter() {
    outlines(METRIC, METRIC);
    outlines(INCHES.formatted(""), INCHES);
  }

  /** Of a key one width is given, and an upright one has both, spelt out with the letter. */
  @Test
  void aKeyGivenOnlyAtItsTopOrFoot() {
    for (String key : List.of("top: 10, rise: 2", "bottom: 8, rise: 2", "rise: 2")) {
      for (String vary : List.of("shape: [jack, soldier]", "key: {top: 7..10 by 1}")) {
        for (String shape : List.of("soldier", "jack")) {
          String text =
              ONE_WIDTH
                  .replace("KEY", key)
                  .replace("VARY", vary + ", rhythm: [even, mixed]")
                  .replace("SHAPE", shape);
          outlines(text, text);
        }
      }
    }
  }

  /** Where the file gives its top alone, the foot keeps the same 2 in less as the top varies. */
  @Test
  void aSoldiersKeyKeepsItsTaper() {
    String text =
        ONE_WIDTH
            .replace("KEY", "top: 10, rise: 2")
            .replace("VARY", "key: {top: 7..10 by 1}")
            .replace("SHAPE", "soldier");
    TreeSet<String> keys = new TreeSet<>();
    for (Enumeration.Kept k : Enumeration.of(JobYaml.job(text), 0).kept()) {
      Map<String, String> values = k.candidate().combination().settings().values();
      keys.add(values.get("key.bottom") + "/" + values.get("key.top"));
    }
    assertTrue(Set.of("5/7", "6/8", "7/9", "8/10").containsAll(keys), keys::toString);
    assertTrue(keys.size() > 1, keys::toString);
    String both = text.replace("top: 10, rise: 2", "bottom: 8, top: 10, rise: 2");
    for (Enumeration.Kept k : Enumeration.of(JobYaml.job(both), 0).kept()) {
      assertEquals("8", k.candidate().combination().settings().values().get("key.bottom"));
    }
  }

  private static final String ONE_WIDTH =
      """
      stone: {thickness: 1 1/4}
      openings:
        - mark: D1
          width: 9'
          vary: {VARY}
          head:
            height: 12
            shape: SHAPE
            key: {KEY}
            stones: {min: 5, max: 9, target: 7 1/2}
            bearing: {min: 4, max: 8, target: 6}
      stock:
        corners:
          - {mark: C1, arris: 24, face: 18, return: 5, count: 30}
      """;

  /** Twelve letters, nothing that touches, two of another kind; both languages. */
  @Test
  void twelvePicturesWithoutACollision() {
    for (String text : List.of(METRIC, TWELVE)) {
      Choices choices = Choices.of(JobYaml.job(text), 0);
      assertEquals(Choices.PICTURED, choices.pictured().size());
      Look first = choices.pictured().get(0).look();
      long unlike = choices.pictured().stream().filter(c -> !c.look().like(first)).count();
      assertTrue(unlike >= Choices.UNLIKE, "unlike " + unlike);
      withoutACollision(choices);
    }
  }

  /**
   * Where the jack arch comes to nothing, five keys leave nine soldier heads that none outdoes; two
   * of them look alike.
   */
  @Test
  void noMoreArePicturedThanThereAre() {
    Choices choices = Choices.of(JobYaml.job(INCHES.formatted("")), 0);
    assertEquals(66, choices.all());
    assertEquals(57, choices.outdone());
    assertEquals(8, choices.pictured().size());
    assertEquals(1, choices.rest().size());
    assertEquals(1, choices.refused().size());
    assertTrue(choices.refused().get(0).startsWith("jack: "), choices.refused().get(0));
    withoutACollision(choices);
  }

  private static void withoutACollision(Choices choices) {
    for (Page page : ChoiceSheets.compose(List.of(choices), Frame.plain()).pages()) {
      assertEquals(List.of(), PageInspector.faults(page));
    }
    assertEquals(List.of(), PageInspector.faults(ChoiceSvg.page(choices)));
  }

  @Test
  void theyStandInTheOrderStated() {
    Choices choices = Choices.of(JobYaml.job(METRIC), 0);
    for (int i = 1; i < choices.pictured().size(); i++) {
      Choice a = choices.pictured().get(i - 1);
      Choice b = choices.pictured().get(i);
      assertEquals(Choices.letter(i), b.letter());
      for (Criterion c : Criterion.values()) {
        int by = c.compare(a, b);
        assertTrue(by <= 0, a.letter() + " before " + b.letter() + ": " + c);
        if (by < 0) {
          break;
        }
      }
    }
  }

  @Test
  void aLetterAloneIsTheSameAndSaysWhatToWrite() {
    Job by = JobYaml.job(INCHES.formatted("    choose: c\n"));
    Outcome<Job> settled = Letters.settled(by);
    Choice c = Choices.of(by, 0).lettered("C").orElseThrow();
    assertTrue(
        settled.diagnostics().get(0).hints().get(0).endsWith("chosen: " + c.settings().text()));
    ShopWork work = WorkUp.of(settled.value().orElseThrow()).value().orElseThrow();
    assertTrue(SameHead.are(c.head(), work.heads().get(0).layout()));
    Outcome<Job> unknown = Letters.settled(JobYaml.job(INCHES.formatted("    choose: ZZ\n")));
    assertTrue(unknown.value().isEmpty());
    assertTrue(unknown.diagnostics().get(0).message().contains("there is no choice ZZ"));
  }

  @Test
  void checkSaysWhyItIsNotTheFirst() {
    Choices choices = Choices.of(JobYaml.job(INCHES.formatted("")), 0);
    Choice b = choices.pictured().get(1);
    List<String> lines = Why.lines(choices, "B", b.head());
    assertEquals(1, lines.size());
    assertTrue(lines.get(0).startsWith("D1: choose B "), lines.get(0));
    assertTrue(lines.get(0).contains("A comes first: B has "), lines.get(0));
    assertEquals(
        List.of("D1: choose A, which comes first"),
        Why.lines(choices, "A", choices.pictured().get(0).head()));
    assertTrue(Why.lines(choices, "C", b.head()).get(0).endsWith("it is B"));
  }

  private static void outlines(String text, String pattern) {
    Choices choices = Choices.of(JobYaml.job(text), 0);
    PageSet set = ChoiceSheets.compose(List.of(choices), Frame.plain());
    Map<String, Path> drawn = new LinkedHashMap<>();
    set.pages().forEach(p -> stones(p.marks(), drawn));
    for (Choice c : choices.pictured()) {
      String beside = "    choose: " + c.letter() + "\n    chosen: " + c.settings().text() + "\n";
      String with =
          pattern.contains("%s")
              ? pattern.formatted(beside)
              : text.replace("    head:\n", beside + "    head:\n");
      ShopWork work = WorkUp.of(JobYaml.job(with)).value().orElseThrow();
      Map<?, ?> json = new Yaml().load(LayoutJson.write(work));
      Map<?, ?> opening = (Map<?, ?>) ((List<?>) json.get("openings")).get(0);
      List<?> stones = (List<?>) opening.get("stones");
      // Small beside its letter, and in its wall.
      same(c.letter(), stones, "", drawn);
      same(c.letter(), stones, "-" + opening.get("mark"), drawn);
    }
    assertEquals(List.of(), new ArrayList<>(drawn.keySet()));
  }

  private static void same(String letter, List<?> stones, String mark, Map<String, Path> drawn) {
    double scale = Double.NaN;
    Point origin = null;
    for (Object o : stones) {
      Map<?, ?> stone = (Map<?, ?>) o;
      List<?> outline = (List<?>) stone.get("outlineMm");
      String own = stone.get("mark").toString();
      String name = letter + mark + own.substring(own.indexOf('-'));
      Path path = drawn.remove(name);
      assertTrue(path != null, "no " + name);
      if (origin == null) {
        scale = path.bounds().width() / width(outline);
      }
      List<Point> paper = path.vertices(Tolerance.VERTEX * scale);
      assertEquals(outline.size(), paper.size(), name);
      for (int i = 0; i < paper.size(); i++) {
        List<?> p = (List<?>) outline.get(i);
        double x = ((Number) p.get(0)).doubleValue();
        double y = ((Number) p.get(1)).doubleValue();
        if (origin == null) {
          origin = new Point(paper.get(0).x() - scale * x, paper.get(0).y() + scale * y);
        }
        assertEquals(origin.x() + scale * x, paper.get(i).x(), 1e-3, name);
        assertEquals(origin.y() - scale * y, paper.get(i).y(), 1e-3, name);
      }
    }
  }

  private static double width(List<?> outline) {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (Object p : outline) {
      double x = ((Number) ((List<?>) p).get(0)).doubleValue();
      least = Math.min(least, x);
      most = Math.max(most, x);
    }
    return most - least;
  }

  private static void stones(List<Mark> marks, Map<String, Path> into) {
    for (Mark m : marks) {
      if (m instanceof Mark.Group g && g.role() == Mark.Role.STONE) {
        Mark.Fill fill = (Mark.Fill) g.marks().get(0);
        into.put(g.id(), fill.path());
      } else if (m instanceof Mark.Group g) {
        stones(g.marks(), into);
      }
    }
  }
}
