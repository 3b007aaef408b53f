package headcourse.guards;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.choose.Choice;
import headcourse.choose.Choices;
import headcourse.export.LayoutJson;
import headcourse.render.pdf.PdfRenderer;
import headcourse.sheet.choose.ChoiceSheets;
import headcourse.sheet.frame.Frame;
import headcourse.testing.FinishedPdf;
import headcourse.testing.FinishedPdf.Part;
import headcourse.testing.JobYaml;
import headcourse.testing.Tape;
import headcourse.work.WorkUp;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What stands beside each letter, read back from the finished PDF and held against the {@code
 * layout.json} of the job that takes that letter.
 */
final class ChooseGuard {
  private static final String SIZE = "([0-9][0-9 /'⁰-⁹₀-₉¹²³⁄\"-]*(?:\"|mm))";

  private static final Pattern SAID =
      Pattern.compile(
          "key "
              + SIZE
              + " below, "
              + SIZE
              + " above, ([0-9.]+) × a stone · ([0-9]+) × .*?"
              + "Passes (?:each jamb by "
              + SIZE
              + "|the jambs by "
              + SIZE
              + " left, "
              + SIZE
              + " right); nearest joint or end "
              + SIZE
              + " from a jamb\\. ([0-9]+) stones out of ([0-9]+) blanks, .*?Lands in ([0-9,]+) of"
              + " ([0-9,]+) builds.*?Stone ([0-9.]+) (lb|kg)");

  private ChooseGuard() {}

  /**
   * The sheets of a job whose text has a place for what is written under its opening.
   *
   * @param pictures how many it has
   */
  static void hold(String text, int pictures) throws IOException {
    Choices choices = Choices.of(JobYaml.job(text.formatted("")), 0);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PdfRenderer.render(ChoiceSheets.compose(List.of(choices), Frame.plain()), "guard", out);
    Map<String, String> said = said(FinishedPdf.read(out.toByteArray()), choices);
    int held = 0;
    for (Choice c : choices.pictured()) {
      String beside = "    choose: " + c.letter() + "\n    chosen: " + c.settings().text() + "\n";
      Json layout =
          Json.of(
              LayoutJson.write(
                  WorkUp.of(JobYaml.job(text.formatted(beside))).value().orElseThrow()));
      Matcher m = SAID.matcher(said.get(c.letter()));
      assertTrue(m.find(), c.letter() + ": " + said.get(c.letter()));
      figures(c.letter(), m, layout);
      held++;
    }
    assertEquals(pictures, held, "heads that none outdoes");
  }

  private static void figures(String letter, Matcher m, Json layout) {
    Json opening = layout.list("openings").get(0);
    List<Json> stones = opening.list("stones");
    double half = layout.number("gridMm") / 2 + 0.011;
    Json key = stones.stream().filter(s -> s.text("role").equals("key")).findFirst().orElseThrow();
    assertEquals(key.number("bottomMm"), Tape.mm(m.group(1)), half, letter + " key below");
    assertEquals(key.number("topMm"), Tape.mm(m.group(2)), half, letter + " key above");
    long right = stones.stream().filter(s -> s.text("side").equals("right")).count();
    long left = stones.stream().filter(s -> s.text("side").equals("left")).count();
    assertEquals(left, Long.parseLong(m.group(4)), letter + " a side");
    String one = m.group(5) == null ? m.group(6) : m.group(5);
    String other = m.group(5) == null ? m.group(7) : m.group(5);
    assertEquals(opening.number("bearingLeftMm"), Tape.mm(one), half, letter + " left");
    assertEquals(opening.number("bearingRightMm"), Tape.mm(other), half, letter + " right");
    double lap = lap(opening, stones);
    double printed = Tape.mm(m.group(8));
    assertTrue(printed <= lap + 0.011 && printed > lap - 2 * half, letter + " lap " + lap);
    assertEquals(left + right + 1, Long.parseLong(m.group(9)), letter + " stones");
    assertEquals(layout.list("blanks").size(), Long.parseLong(m.group(10)), letter + " blanks");
    Json lands = opening.get("lands");
    assertEquals(lands.number("builds"), Double.parseDouble(m.group(12).replace(",", "")), letter);
    assertEquals(
        lands.number("checked") * lands.number("builds"),
        Double.parseDouble(m.group(11).replace(",", "")),
        0.5,
        letter + " lands");
    double kg = Double.parseDouble(m.group(13)) * (m.group(14).equals("lb") ? 0.45359237 : 1);
    Json materials = layout.get("materials");
    assertEquals(
        materials.number("stoneKg") + materials.number("soffitPiecesKg"), kg, 0.24, letter);
  }

  /** Between the lower corners of the stones and the jamb lines, which stand symmetrically. */
  private static double lap(Json opening, List<Json> stones) {
    double jamb = opening.number("widthMm") / 2;
    double least = Double.POSITIVE_INFINITY;
    for (Json s : stones) {
      if (!s.text("role").equals("key")) {
        List<Json> outline = s.list("outlineMm");
        for (int i : new int[] {0, 1}) {
          double x = outline.get(i).list().get(0).number();
          least = Math.min(least, Math.abs(Math.abs(x) - jamb));
        }
      }
    }
    return least;
  }

  /** The words after each letter, up to the next. */
  private static Map<String, String> said(List<Part> pdf, Choices choices) {
    List<String> letters = choices.pictured().stream().map(Choice::letter).toList();
    List<String> texts = new ArrayList<>();
    for (Part p : pdf) {
      p.texts().forEach(r -> texts.add(r.text()));
    }
    Map<String, String> said = new LinkedHashMap<>();
    String now = null;
    for (String t : texts) {
      if (said.size() < letters.size() && t.equals(letters.get(said.size()))) {
        now = t;
        said.put(now, "");
      } else if (now != null) {
        said.merge(now, t + " ", String::concat);
      }
    }
    return said;
  }
}
