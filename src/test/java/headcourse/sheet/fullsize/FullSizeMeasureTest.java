package headcourse.sheet.fullsize;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.drawing.Page;
import headcourse.drawing.PageSet;
import headcourse.export.LayoutJson;
import headcourse.job.Bundle;
import headcourse.job.Language;
import headcourse.job.Paper;
import headcourse.job.PaperSizes;
import headcourse.job.Papers;
import headcourse.render.pdf.PdfRenderer;
import headcourse.sheet.SheetCases;
import headcourse.sheet.book.SheetBook;
import headcourse.sheet.frame.Frame;
import headcourse.testing.Congruent;
import headcourse.testing.DemoJobs;
import headcourse.testing.FinishedPdf;
import headcourse.testing.FinishedPdf.Part;
import headcourse.testing.FinishedPdf.Run;
import headcourse.testing.MarksSaid;
import headcourse.testing.PageInspector;
import headcourse.testing.StrokedPaths;
import headcourse.units.Length;
import headcourse.units.Units;
import headcourse.work.ShopWork;
import java.awt.geom.Path2D;
import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.yaml.snakeyaml.Yaml;

/**
 * 1:1 is 1:1: outlines and check bars measured in the finished PDF. One point is 25.4/72 mm (ISO
 * 32000-1, 8.3.2.3); an inch is 25.4 mm (the international yard of 1959).
 */
class FullSizeMeasureTest {
  private static final double WITHIN = 0.05;

  /**
   * An outline as it is drawn, y up.
   *
   * @param marks the stones that it is said to serve
   * @param turned those that it is said to serve turned over
   * @param said all that is written on it
   * @param arrows which way arrows on it point, degrees from up, counterclockwise
   */
  private record Drawn(
      int page,
      List<double[]> outline,
      Set<String> marks,
      Set<String> turned,
      String said,
      List<Double> arrows) {

    /** Whether it is the outline of a stone, or its right half to be turned over. */
    boolean serves(String mark, List<double[]> stone, boolean flat) {
      if (!marks.contains(mark)) {
        return false;
      }
      boolean over = turned.contains(mark);
      List<double[]> wanted = over ? Congruent.mirrored(stone) : stone;
      if (!said.contains("right half")) {
        return Congruent.turns(wanted, outline, WITHIN).stream()
            .anyMatch(turn -> over || lies(turn, flat));
      }
      for (int i = 0; i < outline.size(); i++) {
        if (atTheLeft(i)
            && !Congruent.turns(stone, Congruent.unfolded(outline, i), WITHIN).isEmpty()) {
          return true;
        }
      }
      return false;
    }

    // Top up, a quarter turn over to the left, or the way an arrow points; of voussoirs the chord
    // is
    // level, not the head.
    private boolean lies(double turn, boolean flat) {
      if (said.contains("the arrow points to the top")) {
        return arrows.size() == 1
            && Math.abs(Math.IEEEremainder(turn - arrows.get(0), 360)) < (flat ? 0.1 : 90);
      }
      double off = Math.IEEEremainder(turn - (said.contains("← top") ? 90 : 0), 360);
      return (said.contains("↑ top") || said.contains("← top"))
          && Math.abs(off) < (flat ? 0.01 : 90);
    }

    // The centre line of a right half is at its left, or at its foot where it lies on its side.
    private boolean atTheLeft(int edge) {
      int axis = said.contains("← top") ? 1 : 0;
      double least = outline.stream().mapToDouble(v -> v[axis]).min().orElseThrow();
      return outline.get(edge)[axis] < least + 0.01
          && outline.get((edge + 1) % outline.size())[axis] < least + 0.01;
    }
  }

  @ParameterizedTest
  @CsvSource({
    "DOOR_8,arch-c",
    "DOOR_8,arch-d",
    "TINY_STONES,letter",
    "MORTAR_METRIC,a3",
    "JACK,arch-c",
    "DOOR_8,tabloid",
    "SEGMENTAL,a3",
    "SEMICIRCULAR,tabloid",
    "MIXED,arch-c"
  })
  void everyOutlineIsOnPaperAtFullSize(SheetCases head, String paper) throws Exception {
    for (boolean every : new boolean[] {true, false}) {
      ShopWork work = head.work(paper, Language.EN, every);
      List<Drawn> drawn = drawn(pdf(work));
      Map<String, List<double[]>> stones = stones(work);
      boolean flat = work.heads().stream().noneMatch(h -> h.layout().curved());
      for (var stone : stones.entrySet()) {
        boolean wanted = every || !rectangle(stone.getValue());
        assertEquals(
            wanted ? 1 : 0,
            drawn.stream().filter(d -> d.serves(stone.getKey(), stone.getValue(), flat)).count(),
            stone.getKey() + " at full size, every outline: " + every);
        assertEquals(
            wanted,
            drawn.stream().anyMatch(d -> d.marks.contains(stone.getKey())),
            stone.getKey() + " is said to be at full size, every outline: " + every);
      }
      // What is congruent is drawn once, mirror twins among it.
      for (Drawn one : drawn) {
        for (Drawn other : drawn) {
          boolean alike =
              !Congruent.turns(one.outline, other.outline, 0.01).isEmpty()
                  || !Congruent.turns(Congruent.mirrored(one.outline), other.outline, 0.01)
                      .isEmpty();
          assertTrue(one == other || !alike, one.marks + " and " + other.marks + " are one");
        }
      }
    }
  }

  /** A stone of 8 by 12 in takes two tiles: its long sides less the overlap are 304.8 mm. */
  @Test
  void aLargeOutlineIsWholeOverItsTiles() throws Exception {
    List<Double> parts = new ArrayList<>();
    try (PDDocument pdf =
        Loader.loadPDF(pdf(SheetCases.DOOR_8.work("letter", Language.EN, true)))) {
      for (PDPage page : pdf.getPages()) {
        List<Path2D> paths = StrokedPaths.of(page);
        bars(paths);
        for (Path2D p : paths) {
          List<double[]> v = StrokedPaths.vertices(p, false);
          if (v.size() == 4
              && Math.abs(StrokedPaths.distance(v.get(1), v.get(2)) - 203.2) < WITHIN) {
            double one = StrokedPaths.distance(v.get(0), v.get(1));
            // A raked stone has two different sides; the others are square.
            if (Math.abs(one - StrokedPaths.distance(v.get(2), v.get(3))) < WITHIN) {
              parts.add(one);
            }
          }
        }
      }
    }
    assertEquals(2, parts.size(), "tiles of the plain stones, which are alike");
    assertEquals(304.8 + Tiling.OVERLAP, parts.get(0) + parts.get(1), WITHIN);
  }

  /**
   * A jack arch's end stone, 5 1/2 in wide and 12 in high, leans 9 in: upright its box is 15 in
   * wide and takes four sheets of letter, its leaning edge along the paper two.
   */
  @Test
  void aLeaningStoneLiesAlongThePaper() throws Exception {
    ShopWork work = DemoJobs.work("forge-arch");
    PageSet set = SheetBook.compose(work, Bundle.FULL_SIZE, Frame.plain());
    Map<String, Long> sheets =
        set.pages().stream()
            .filter(p -> p.label().matches("S1-[KLR].*"))
            .collect(
                Collectors.groupingBy(
                    p -> p.label().replaceFirst("-[A-Z][0-9]$", ""),
                    TreeMap::new,
                    Collectors.counting()));
    assertEquals(2, sheets.get("S1-L6"), sheets.toString());
    assertTrue(sheets.values().stream().mapToLong(n -> n).sum() <= 15, sheets.toString());
    for (Page page : set.pages()) {
      assertEquals(List.of(), PageInspector.faults(page));
    }
  }

  /**
   * The two outer stones of the dairy's jack arch fit arch B whole with their long edge along it.
   */
  @Test
  void anArrowShowsTheTopOfWhatLiesAskew() throws Exception {
    ShopWork work = DemoJobs.work("as-built-dairy", "arch-b", "en");
    List<Drawn> drawn = drawn(pdf(work));
    Map<String, List<double[]>> stones = stones(work);
    for (String mark : List.of("W1-L4", "W1-L5")) {
      List<Drawn> its = drawn.stream().filter(d -> d.serves(mark, stones.get(mark), true)).toList();
      assertEquals(1, its.size(), mark);
      assertEquals(1, its.get(0).arrows.size(), mark);
      assertTrue(Math.abs(its.get(0).arrows.get(0)) > 5, mark + " lies as it stands");
      assertTrue(its.get(0).said.contains("key side right of the arrow"), its.get(0).said);
      assertTrue(
          its.get(0).serves(mark.replace("L", "R"), stones.get(mark.replace("L", "R")), true));
    }
  }

  @Test
  void aRollHasAllOutlinesOnOnePage() throws Exception {
    ShopWork made = SheetCases.DOOR_8.work("arch-d", Language.EN, true);
    var roll = PaperSizes.roll(Length.inches(24), Units.INCH);
    Map<Bundle, Paper> papers = new EnumMap<>(Bundle.class);
    for (Bundle b : Bundle.values()) {
      papers.put(b, roll);
    }
    ShopWork work =
        new ShopWork(
            made.job().withPapers(new Papers(papers)),
            made.heads(),
            made.stock(),
            made.materials(),
            made.findings(),
            made.changes());
    byte[] file = pdf(work);
    try (PDDocument pdf = Loader.loadPDF(file)) {
      for (PDPage page : pdf.getPages()) {
        bars(StrokedPaths.of(page));
        double w = page.getMediaBox().getWidth() * 25.4 / 72;
        double h = page.getMediaBox().getHeight() * 25.4 / 72;
        assertTrue(Math.abs(w - 609.6) < 0.01 || Math.abs(h - 609.6) < 0.01, w + " × " + h);
      }
    }
    for (Page page : SheetBook.compose(work, Bundle.FULL_SIZE, Frame.plain()).pages()) {
      // Torn off where the outlines end, not before.
      assertEquals(List.of(), PageInspector.faults(page));
    }
    List<Drawn> drawn = drawn(file);
    assertEquals(1, drawn.stream().map(Drawn::page).distinct().count(), "one page for all");
    for (var s : stones(work).entrySet()) {
      assertTrue(
          drawn.stream().anyMatch(d -> d.serves(s.getKey(), s.getValue(), true)), s.getKey());
    }
  }

  /** The outlines of {@code layout.json} by mark. */
  private static Map<String, List<double[]>> stones(ShopWork work) {
    Map<?, ?> layout = new Yaml().load(LayoutJson.write(work));
    Map<String, List<double[]>> stones = new TreeMap<>();
    for (Object opening : (List<?>) layout.get("openings")) {
      for (Object stone : (List<?>) ((Map<?, ?>) opening).get("stones")) {
        List<double[]> outline = new ArrayList<>();
        for (Object at : (List<?>) ((Map<?, ?>) stone).get("outlineMm")) {
          List<?> xy = (List<?>) at;
          outline.add(
              new double[] {
                ((Number) xy.get(0)).doubleValue(), ((Number) xy.get(1)).doubleValue()
              });
        }
        stones.put((String) ((Map<?, ?>) stone).get("mark"), outline);
      }
    }
    return stones;
  }

  private static boolean rectangle(List<double[]> v) {
    return v.size() == 4
        && Math.abs(
                StrokedPaths.distance(v.get(0), v.get(2))
                    - StrokedPaths.distance(v.get(1), v.get(3)))
            < 0.01
        && Math.abs(
                StrokedPaths.distance(v.get(0), v.get(1))
                    - StrokedPaths.distance(v.get(2), v.get(3)))
            < 0.01;
  }

  private static List<Drawn> drawn(byte[] file) throws Exception {
    List<Drawn> drawn = new ArrayList<>();
    Pattern over = Pattern.compile("turn over for (.*?)(?= V | face, seen|$)");
    for (Part sheet : FinishedPdf.read(file)) {
      for (Part figure : sheet.all().filter(p -> p.type().equals("Figure")).toList()) {
        for (Path2D path : figure.paths()) {
          List<double[]> outline = StrokedPaths.vertices(path, true);
          if (!figure.alt().contains("-") || outline.size() < 4) {
            continue;
          }
          String said =
              sheet
                  .all()
                  .filter(p -> p.page() == figure.page())
                  .flatMap(p -> p.runs().stream())
                  .filter(r -> path.getBounds2D().contains(r.middleX(), r.y()))
                  .map(Run::text)
                  .collect(Collectors.joining(" "));
          Matcher m = over.matcher(said);
          Set<String> turned = m.find() ? MarksSaid.all(m.group(1)) : Set.of();
          List<Double> arrows =
              sheet
                  .all()
                  .filter(p -> p.page() == figure.page() && p.alt().equals("arrow to the top"))
                  .flatMap(p -> p.paths().stream())
                  .filter(a -> path.getBounds2D().contains(a.getBounds2D()))
                  .map(a -> StrokedPaths.vertices(a, false))
                  .map(
                      v ->
                          Math.toDegrees(
                              Math.atan2(v.get(0)[0] - v.get(1)[0], v.get(1)[1] - v.get(0)[1])))
                  .toList();
          Set<String> marks = MarksSaid.all(figure.alt());
          for (String side : List.of("L", "R")) {
            String of = side.equals("L") ? "right" : "left";
            assertTrue(
                !said.contains("key side " + of + " of the arrow")
                    || marks.stream()
                        .filter(k -> !turned.contains(k))
                        .allMatch(k -> k.contains("-" + side)),
                said);
          }
          drawn.add(new Drawn(figure.page(), outline, marks, turned, said, arrows));
        }
      }
    }
    return drawn;
  }

  private static void bars(List<Path2D> paths) {
    for (double length : new double[] {100, 101.6}) {
      for (int axis : new int[] {0, 1}) {
        assertTrue(
            paths.stream().anyMatch(p -> bar(p, length, axis)),
            "no bar of " + length + " mm along axis " + axis);
      }
    }
  }

  private static boolean bar(Path2D path, double length, int axis) {
    List<double[]> v = StrokedPaths.vertices(path, false);
    return v.size() == 2
        && Math.abs(v.get(0)[1 - axis] - v.get(1)[1 - axis]) < 1e-3
        && Math.abs(Math.abs(v.get(0)[axis] - v.get(1)[axis]) - length) < WITHIN;
  }

  private static byte[] pdf(ShopWork work) throws Exception {
    PageSet set = SheetBook.compose(work, Bundle.FULL_SIZE, Frame.plain());
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PdfRenderer.render(set, "measure", out);
    return out.toByteArray();
  }
}
