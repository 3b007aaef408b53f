package headcourse.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From the table on the terminal to a job that takes a letter of it. */
class ChooseCommandTest {
  private static final String JOB =
      """
      stone: {density: 130 lb/ft3, thickness: 1 1/4}
      openings:
        - mark: D1
          label: Cart door
          width: 16'
      %s    head:
            height: 12
            key: {bottom: 8, top: 11, rise: 2, drop: 1, proud: 1/2}
            stones: {min: 5, max: 8 1/2, target: 7 7/16}
            bearing: {min: 4, max: 8, target: 6}
      stock:
        corners:
          - {mark: C1, arris: 24, face: 18, return: 5, count: 30}
      """;

  @TempDir Path folder;
  private String said;

  private int run(String chosen, String... args) throws IOException {
    Files.writeString(folder.resolve("barn.yaml"), JOB.formatted(chosen));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PrintStream stream = new PrintStream(out, true, StandardCharsets.UTF_8);
    int code = Main.run(List.of(args), folder, stream, stream);
    said = out.toString(StandardCharsets.UTF_8);
    return code;
  }

  private String line(String from) {
    return said.lines().filter(l -> l.startsWith(from)).findFirst().orElseThrow();
  }

  @Test
  void whatIsPrintedFixesAHead() throws IOException {
    assertEquals(Main.DONE, run("", "choose", "barn.yaml", "D1"), said);
    assertTrue(line("D1: ").startsWith("D1: 15 heads keep what the job asks"), said);
    String first = line("  A ");
    assertTrue(first.contains("13 x 7 7/16") && first.contains("10,000"), first);
    assertTrue(line("  B ").contains("12 x 8 1/16"), said);
    Path out = folder.resolve("out/barn");
    String svg = Files.readString(out.resolve("choose.svg"));
    assertTrue(svg.contains("Choose a head: D1 Cart door"), svg);
    assertTrue(svg.contains("Seen from outside, all to one scale. Mark one."), svg);
    try (PDDocument pdf = Loader.loadPDF(out.resolve("choose.pdf").toFile())) {
      String text = new PDFTextStripper().getText(pdf);
      assertTrue(text.contains("Choose a head: Cart door"), text);
      assertTrue(text.contains("Seen from outside, all to one scale. Mark one."), text);
      assertTrue(text.contains("D1: the choices in their wall"), text);
      assertTrue(text.contains("B · D1 · Cart door"), text);
      assertTrue(text.contains("The veneer carries nothing"), text);
    }
    String chosen = line("    chosen: ");
    assertEquals(Main.DONE, run("    choose: A\n" + chosen + "\n", "check", "barn.yaml"), said);
    assertTrue(said.contains("D1: choose A, which comes first"), said);
    run("    choose: B\n    chosen: {stones: {widths: [12 x 8 1/16]}}\n", "check", "barn.yaml");
    assertTrue(said.contains("D1: choose B has "), said);
    assertTrue(
        said.contains("A comes first: B has a key 1.02 times a stone, not 1.11; 13 blanks, not 9"),
        said);
  }

  /** An opening without a label, in a job without a title. */
  @Test
  void aHeadingEndsInNoColon() throws IOException {
    Files.writeString(folder.resolve("plain.yaml"), JOB.formatted("").replace("label:", "#"));
    PrintStream none = new PrintStream(new ByteArrayOutputStream());
    assertEquals(Main.DONE, Main.run(List.of("choose", "plain.yaml"), folder, none, none));
    try (PDDocument pdf = Loader.loadPDF(folder.resolve("out/plain/choose.pdf").toFile())) {
      String text = new PDFTextStripper().getText(pdf);
      assertTrue(text.contains("Choose a head: D1"), text);
    }
  }

  @Test
  void anOpeningThatIsNotThere() throws IOException {
    assertEquals(Main.WRONG, run("", "choose", "barn.yaml", "D7"));
    assertTrue(said.contains("no opening is marked D7"), said);
    assertTrue(said.contains("the job's openings are D1"), said);
    assertFalse(Files.exists(folder.resolve("out")));
  }
}
