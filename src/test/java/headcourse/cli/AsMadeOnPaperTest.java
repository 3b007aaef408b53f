package headcourse.cli;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A key asked 8 in wide whose sides must cross the lines on the grid is made another width: the
 * setting sheet and the schedule say so, and name the width that layout.json has.
 */
class AsMadeOnPaperTest {
  @TempDir Path folder;

  private String text(String bundle) throws IOException {
    try (PDDocument d = Loader.loadPDF(folder.resolve("out/a/" + bundle + ".pdf").toFile())) {
      return new PDFTextStripper().getText(d).replaceAll("\\s+", " ");
    }
  }

  @Test
  void settingSheetAndScheduleNameTheWidthMade() throws Exception {
    Files.writeString(
        folder.resolve("a.yaml"),
        """
        units: mm
        grid: 1
        paper: a4
        stone: {density: 2200 kg/m3, thickness: 30}
        openings:
          - mark: D1
            width: 2400
            head: {height: 300, key: {bottom: 201, top: 278, rise: 40, drop: 20}}
        """);
    PrintStream none = new PrintStream(OutputStream.nullOutputStream());
    assertTrue(Main.run(List.of("draw", "a.yaml"), folder, none, none) <= Main.FINDINGS);
    String json = Files.readString(folder.resolve("out/a/layout.json"));
    String key = json.substring(json.indexOf("\"D1-K\""));
    String made = key.replaceAll("(?s).*?\"bottomMm\": ([0-9]+)\\.0.*", "$1");
    assertTrue(made.matches("[0-9]{3}") && !made.equals("201"), made);
    String said = "the key is made " + made + " mm wide at its lower end";
    assertTrue(json.contains(said), "layout.json: " + said);
    assertTrue(text("wall").contains(said), text("wall"));
    assertTrue(text("contractor").contains(said), text("contractor"));
  }
}
