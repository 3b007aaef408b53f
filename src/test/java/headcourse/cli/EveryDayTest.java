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
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is done every day: drawn again on saving, one opening alone, shown, said to be old. */
class EveryDayTest {
  private static final String TWO =
      """
      units: in
      stone: {kind: sandstone, density: 138 lb/ft3, thickness: 1 1/4}
      openings:
        - {mark: D1, width: 5'}
        - {mark: D2, width: 4'}
      """;

  @TempDir Path folder;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();
  private final List<String> shown = new ArrayList<>();

  private int run(String... args) {
    out.reset();
    err.reset();
    PrintStream messages = new PrintStream(err, true, StandardCharsets.UTF_8);
    return Main.run(
        List.of(args),
        folder,
        new Console(
            new PrintStream(out, true, StandardCharsets.UTF_8),
            messages,
            Progress.none(),
            shown::add));
  }

  private String err() {
    return err.toString(StandardCharsets.UTF_8);
  }

  private void write(String text) throws IOException {
    Files.writeString(folder.resolve("barn.yaml"), text);
  }

  private static void until(Callable<Boolean> seen, Callable<String> said) throws Exception {
    // Patience for a slow machine; how soon it is seen is not measured here.
    for (int i = 0; i < 600 && !seen.call(); i++) {
      Thread.sleep(50);
    }
    assertTrue(seen.call(), said.call());
  }

  @Test
  void watchDrawsAgainWhenAFileIsSavedAndKeepsTheLastGoodSheets() throws Exception {
    write(TWO);
    Path svg = folder.resolve("out/barn/elevation-D1.svg");
    Thread watching = new Thread(() -> run("watch", "barn.yaml", "--only", "svg"));
    watching.start();
    try {
      until(() -> err().contains("watching barn.yaml"), this::err);
      String first = Files.readString(svg);
      write(TWO.replace("width: 5'", "width: 6'"));
      until(() -> !Files.readString(svg).equals(first), this::err);
      until(() -> err().contains("barn.yaml was saved"), this::err);
      String second = Files.readString(svg);
      write(TWO.replace("width: 5'", "widht: 5'"));
      until(() -> err().contains("did you mean width?"), this::err);
      until(() -> err().contains("the sheets in out/barn are older"), this::err);
      assertEquals(second, Files.readString(svg));
      write(TWO);
      until(() -> Files.readString(svg).equals(first), this::err);
    } finally {
      watching.interrupt();
      watching.join();
    }
  }

  @Test
  void watchSeesFilesThatTheJobNames() throws Exception {
    Files.writeString(folder.resolve("yard.csv"), "mark,arris,face,return,count\nC1,30,16,6,9\n");
    write(TWO + "stock: {file: yard.csv}\n");
    Thread watching = new Thread(() -> run("watch", "barn.yaml", "--only", "json"));
    watching.start();
    try {
      until(() -> err().contains("watching"), this::err);
      Files.writeString(folder.resolve("yard.csv"), "mark,arris,face,return,count\nC1,x,16,6,9\n");
      until(() -> err().contains("yard.csv:2:4"), this::err);
    } finally {
      watching.interrupt();
      watching.join();
    }
  }

  @Test
  void theLastLineSaysWhatToOpenFirstAndOpenOpensIt() throws IOException {
    write(TWO);
    assertEquals(0, run("draw", "barn.yaml", "--open"), this::err);
    assertTrue(
        err().endsWith("11 files in out/barn; open first: out/barn/index.html\n"), this::err);
    Path index = folder.resolve("out/barn/index.html").toAbsolutePath().normalize();
    assertEquals(List.of(index.toString()), shown);
    assertEquals(0, run("draw", "barn.yaml", "--only", "csv,svg"), this::err);
    assertTrue(err().endsWith("open first: out/barn/elevation-D1.svg\n"), this::err);
    assertEquals(1, shown.size());
  }

  @Test
  void aRefusedJobSaysHowOldTheSheetsAreThatLieThere() throws IOException {
    write(TWO);
    assertEquals(0, run("draw", "barn.yaml"), this::err);
    for (Path p : Files.list(folder.resolve("out/barn")).toList()) {
      Duration age = Duration.ofHours(73);
      Files.setLastModifiedTime(
          p, FileTime.from(Files.getLastModifiedTime(p).toInstant().minus(age)));
    }
    // Wrong to read, and then impossible to set out.
    for (String bad : List.of("widht: 5'", "width: 5', head: {key: {bottom: 70}}")) {
      write(TWO.replace("width: 5'", bad));
      assertEquals(2, run("draw", "barn.yaml"));
      assertTrue(
          err().contains("nothing was drawn; the sheets in out/barn are older (3 days old)"),
          this::err);
    }
    Files.move(folder.resolve("barn.yaml"), folder.resolve("shed.yaml"));
    assertEquals(2, run("draw", "shed.yaml"));
    assertFalse(err().contains("older"), this::err);
  }

  @Test
  void agesInWords() {
    assertEquals("less than a minute old", Age.words(59));
    assertEquals("1 minute old", Age.words(60));
    assertEquals("119 minutes old", Age.words(7199));
    assertEquals("2 hours old", Age.words(7200));
    assertEquals("47 hours old", Age.words(47 * 3600 + 5));
    assertEquals("2 days old", Age.words(48 * 3600));
  }

  /** The pages of one opening are those of the whole set, and a whole set takes them away. */
  @Test
  void oneOpeningAlone() throws IOException {
    write(TWO);
    assertEquals(2, run("draw", "barn.yaml", "--opening", "D3"));
    assertTrue(err().contains("its openings are D1, D2"), this::err);
    assertEquals(0, run("draw", "barn.yaml", "--opening", "D2"), this::err);
    Path target = folder.resolve("out/barn");
    List<String> names = Files.list(target).map(p -> p.getFileName().toString()).sorted().toList();
    assertEquals(
        List.of("bench-D2.pdf", "elevation-D2.svg", "full-size-D2.pdf", "wall-D2.pdf"), names);
    String tickets = text(target.resolve("bench-D2.pdf"));
    for (String stone : List.of("D2-K", "D2-R1", "D2-board")) {
      assertTrue(tickets.contains(stone), stone);
    }
    assertTrue(text(target.resolve("wall-D2.pdf")).contains("D2"));
    byte[] svg = Files.readAllBytes(target.resolve("elevation-D2.svg"));
    assertEquals(0, run("draw", "barn.yaml"), this::err);
    assertFalse(Files.exists(target.resolve("bench-D2.pdf")));
    org.junit.jupiter.api.Assertions.assertArrayEquals(
        svg, Files.readAllBytes(target.resolve("elevation-D2.svg")));
    String whole = text(target.resolve("bench.pdf"));
    for (String line : tickets.split("\n")) {
      assertTrue(whole.contains(line), line);
    }
    assertEquals(2, run("draw", "barn.yaml", "--opening", "D2", "--only", "csv"));
  }

  private static String text(Path pdf) throws IOException {
    try (var document = Loader.loadPDF(pdf.toFile())) {
      return new PDFTextStripper().getText(document);
    }
  }

  @Test
  void progressIsOneLineOnATerminalAndGoesAgain() throws Exception {
    PrintStream to = new PrintStream(out, true, StandardCharsets.UTF_8);
    Progress progress = new Progress(to, 0);
    progress.at("setting out D1, 1 of 2");
    until(() -> out.toString(StandardCharsets.UTF_8).contains("1 of 2"), this::err);
    progress.at("drawing");
    until(() -> out.toString(StandardCharsets.UTF_8).contains("drawing"), this::err);
    progress.done();
    String all = out.toString(StandardCharsets.UTF_8);
    assertTrue(all.matches("(?s)\r.*drawing {15}\r {7,}\r"), all);
    assertFalse(all.contains("\n"));
    progress.done();
    assertEquals(all, out.toString(StandardCharsets.UTF_8));
    Progress.none().at("nothing");
    Progress.none().done();
  }

  @Test
  void whatOpensAFileOnEachSystem() {
    assertEquals(List.of("xdg-open", "x"), Viewer.command("Linux", "x"));
    assertEquals(List.of("open", "x"), Viewer.command("Mac OS X", "x"));
    assertEquals("rundll32", Viewer.command("Windows 11", "x").get(0));
  }
}
