package headcourse.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.units.Length;
import headcourse.units.LengthParser;
import headcourse.units.Units;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Reads amounts and limits off the finished pages, and holds them against {@code layout.json}. */
class FinishedFiguresTest {
  private static final double LB = 0.45359237;
  private static final double FT = 0.3048;

  @TempDir Path folder;

  private Path draw(String job) {
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int status =
        Main.run(
            List.of(
                "draw", "jobs/" + job + ".yaml", "--only", "wall,contractor", "--out", "" + folder),
            Path.of(""),
            new PrintStream(new ByteArrayOutputStream()),
            new PrintStream(err));
    assertEquals(Main.DONE, status, err::toString);
    return folder.resolve(job);
  }

  private static String text(Path pdf) throws Exception {
    try (PDDocument d = Loader.loadPDF(Files.readAllBytes(pdf))) {
      return new PDFTextStripper().getText(d).replaceAll("\\s+", " ");
    }
  }

  private static List<String> all(String text, String pattern) {
    List<String> found = new ArrayList<>();
    Matcher m = Pattern.compile(pattern).matcher(text);
    while (m.find()) {
      found.add(m.group(1));
    }
    return found;
  }

  private static List<Double> numbers(String text, String pattern) {
    return all(text, pattern).stream().map(Double::parseDouble).toList();
  }

  private static double one(String text, String pattern) {
    List<Double> found = numbers(text, pattern);
    assertTrue(!found.isEmpty(), "no " + pattern);
    return found.get(0);
  }

  @ParameterizedTest
  @ValueSource(strings = {"cart-door", "courtyard-windows", "chapel-arches", "granary-store"})
  void amountsAddUpAndLimitsHold(String job) throws Exception {
    Path out = draw(job);
    String json = Files.readString(Path.of("out").resolve(job).resolve("layout.json"));
    String wall = text(out.resolve("wall.pdf"));
    String contractor = text(out.resolve("contractor.pdf"));
    boolean inch = json.contains("\"units\": \"in\"");
    mortar(json, wall, contractor, inch);
    masses(json, contractor, inch);
    props(json, wall, inch);
    deflections(json, contractor, inch);
  }

  private static void mortar(String json, String wall, String contractor, boolean inch) {
    String unit = inch ? " ft³" : " l";
    double m3 = inch ? FT * FT * FT : 0.001;
    double half = inch ? 0.005 : 0.05;
    List<Double> parts =
        numbers(
            contractor,
            "mortar: (?:setting bed|scratch coat|over the returns|joints|waste, 10 %) ([0-9.]+)"
                + unit);
    double sum = parts.stream().mapToDouble(Double::doubleValue).sum();
    double total = one(contractor, "mortar in all, by the 80 lb bag ([0-9.]+)" + unit);
    assertEquals(total, sum, 1e-9, "mortar adds up as printed");
    // The file has tenths of a litre.
    assertEquals(one(json, "\"mortarM3\": ([0-9.]+)") / m3, total, half + 0.00005 / m3 + 1e-9);
    assertEquals(total, one(wall, "Mortar for the whole job: ([0-9.]+)" + unit), 1e-9);
    double thick = 0;
    for (String key :
        List.of("mortarBedM3", "mortarScratchM3", "mortarSoffitM3", "mortarJointsM3")) {
      thick += one(json, "\"" + key + "\": ([0-9.]+)");
    }
    assertEquals(one(json, "\"mortarWasteM3\": ([0-9.]+)"), 0.1 * thick, 2e-4);
    double bags = one(contractor, "bags: ([0-9]+)");
    assertEquals(one(json, "\"mortarBags\": ([0-9]+)"), bags, 0);
    assertTrue(bags * 0.67 * FT * FT * FT >= one(json, "\"mortarM3\": ([0-9.]+)") - 0.00005);
  }

  private static void masses(String json, String contractor, boolean inch) {
    double kg = inch ? LB : 1;
    double total = one(contractor, "(?:mass|weight) of stone ([0-9.]+) (?:lb|kg)");
    // Soffit pieces under a V are counted apart in the file.
    double apart = numbers(json, "\"soffitPiecesKg\": ([0-9.]+)").stream().findFirst().orElse(0.0);
    assertEquals((one(json, "\"stoneKg\": ([0-9.]+)") + apart) / kg, total, 0.3);
  }

  private static void props(String json, String wall, boolean inch) throws Exception {
    List<String> spacing = all(json, "\"spacingMm\": ([0-9.]+|null)");
    List<String> posts = all(json, "\"posts\": ([0-9]+)");
    List<Double> postKg = numbers(json, "\"postKg\": ([0-9.]+)");
    double kg = inch ? LB : 1;
    List<String> printed =
        all(
            wall,
            "((?:on [0-9]+ posts at most .*?: between|on [0-9]+ posts, two under).*?carries up to [0-9]+ (?:lb|kg))");
    assertEquals(spacing.size(), printed.size());
    for (int i = 0; i < printed.size(); i++) {
      String said = printed.get(i);
      assertEquals(posts.get(i), all(said, "on ([0-9]+) posts").get(0));
      double most = one(said, "carries up to ([0-9]+)");
      assertTrue(most >= postKg.get(i) / kg - 1e-3 && most < postKg.get(i) / kg + 1, said);
      if (spacing.get(i).equals("null")) {
        assertTrue(said.contains("two under each springing"), said);
      } else {
        Length apart =
            LengthParser.parse(
                all(said, "posts at most (.*?) apart:").get(0),
                inch ? Units.INCH : Units.MILLIMETRE);
        assertEquals(Double.parseDouble(spacing.get(i)), apart.mm(), 1e-3);
      }
    }
  }

  /** IRC R703.7.2 (R703.8.2 from 2015) and MSJC 1.10.1: a 600th, 0.3 in at most. */
  private static void deflections(String json, String contractor, boolean inch) throws Exception {
    List<Double> widths = numbers(json, "\"widthMm\": ([0-9.]+)");
    List<String> limits = all(contractor, "limit L/600 = ([^,]+),");
    assertTrue(!limits.isEmpty());
    List<String> distinct = all(json, "limit L/600 = ([^,]+),");
    assertEquals(widths.size(), distinct.size());
    for (int i = 0; i < widths.size(); i++) {
      Length most =
          LengthParser.parse(
              distinct.get(i).replace("\\\"", "\""), inch ? Units.INCH : Units.MILLIMETRE);
      assertTrue(most.mm() <= Math.min(widths.get(i) / 600, 7.62) + 1e-9, distinct.get(i));
    }
    for (String limit : limits) {
      Length most = LengthParser.parse(limit, inch ? Units.INCH : Units.MILLIMETRE);
      assertTrue(most.mm() <= 7.62 && most.isPositive(), limit);
    }
  }
}
