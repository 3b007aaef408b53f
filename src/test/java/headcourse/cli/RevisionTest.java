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
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What changed since the revision before is told in the data and on the contractor's sheets. */
class RevisionTest {
  private static final String JOB =
      """
      units: in
      job: {revision: %s%s}
      stone: {kind: sandstone, density: 138 lb/ft3, thickness: 1 1/4}
      openings:
        - mark: D1
          width: 8'
          head: {key: {bottom: %s, top: 13}}
        - {mark: W2, width: 6'}
      """;

  @TempDir Path folder;
  private String said = "";

  private int draw(String revision, String before, String key, String... more) throws IOException {
    String of = before.isEmpty() ? "" : ", revision-of: " + before;
    Files.writeString(folder.resolve("barn.yaml"), String.format(JOB, revision, of, key));
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    List<String> args = new java.util.ArrayList<>(List.of("draw", "barn.yaml"));
    args.addAll(List.of(more));
    int status =
        Main.run(
            args,
            folder,
            new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8));
    said = err.toString(StandardCharsets.UTF_8);
    return status;
  }

  private void sentOut() throws IOException {
    assertEquals(0, draw("A", "", "10", "--only", "json"), () -> said);
    Files.copy(folder.resolve("out/barn/layout.json"), folder.resolve("sent-A.json"));
  }

  private String contractor() throws IOException {
    try (var pdf = Loader.loadPDF(folder.resolve("out/barn/contractor.pdf").toFile())) {
      return new PDFTextStripper().getText(pdf);
    }
  }

  @Test
  void nothingChanged() throws IOException {
    sentOut();
    assertEquals(0, draw("B", "sent-A.json", "10"), () -> said);
    String json = Files.readString(folder.resolve("out/barn/layout.json"));
    assertTrue(json.contains("\"since\": \"A\""));
    int changes = json.indexOf("\"changes\"");
    assertTrue(changes > 0, json);
    assertFalse(json.substring(changes).contains("\"kind\": "), json.substring(changes));
    assertTrue(contractor().contains("Nothing changed since revision A."));
  }

  @Test
  void aWiderKeyIsToldWithItsNeighboursAndNothingElse() throws IOException {
    sentOut();
    assertEquals(0, draw("B", "sent-A.json", "11"), () -> said);
    String json = Files.readString(folder.resolve("out/barn/layout.json"));
    String changes = json.substring(json.indexOf("\"changes\""));
    assertTrue(changes.contains("\"stone\": \"D1-K\""));
    // 10 in and 11 in.
    assertTrue(changes.contains("\"before\": [254.0]"), changes);
    assertTrue(changes.contains("\"after\": [279.4]"), changes);
    assertFalse(changes.contains("W2"), changes);
    String text = contractor().replaceAll("\\s+", " ");
    assertTrue(text.contains("changed since revision A"), text);
    assertTrue(text.contains("bottom 10\" → 11\""), text);
  }

  @Test
  void anOpeningThatIsGoneIsTold() throws IOException {
    sentOut();
    String json = Files.readString(folder.resolve("sent-A.json"));
    Files.writeString(folder.resolve("sent-A.json"), json.replace("\"W2", "\"W9"));
    assertEquals(0, draw("B", "sent-A.json", "10", "--only", "json"), () -> said);
    String now = Files.readString(folder.resolve("out/barn/layout.json"));
    String changes = now.substring(now.indexOf("\"changes\"")).replaceAll("\\s+", " ");
    assertTrue(changes.contains("\"opening\": \"W2\", \"stone\": null, \"kind\": \"added\""));
    assertTrue(changes.contains("\"opening\": \"W9\", \"stone\": null, \"kind\": \"removed\""));
  }

  @Test
  void aFileThatIsNotThereOrIsWrittenOverIsRefused() throws IOException {
    sentOut();
    assertEquals(2, draw("B", "sent-Z.json", "10"));
    assertTrue(said.contains("sent-Z.json") && said.contains("barn.yaml:2"), said);
    assertEquals(2, draw("B", "out/barn/layout.json", "10"));
    assertTrue(said.contains("writes over"), said);
    Files.writeString(folder.resolve("sent-A.json"), "{\"format\": 7}");
    assertEquals(2, draw("B", "sent-A.json", "10"));
    assertTrue(said.contains("its format is not 1"), said);
  }
}
