package headcourse.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
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
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the command line promises: streams, exit status, all files or none. */
class CommandLineTest {
  private static final String GOOD =
      """
      units: in
      stone: {kind: sandstone, density: 138 lb/ft3, thickness: 1 1/4}
      openings:
        - {mark: D1, width: 8'}
      """;

  @TempDir Path folder;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private int run(String... args) {
    out.reset();
    err.reset();
    return Main.run(
        List.of(args),
        folder,
        new PrintStream(out, true, StandardCharsets.UTF_8),
        new PrintStream(err, true, StandardCharsets.UTF_8));
  }

  private String out() {
    return out.toString(StandardCharsets.UTF_8);
  }

  private String err() {
    return err.toString(StandardCharsets.UTF_8);
  }

  private void write(String name, String text) throws IOException {
    Files.writeString(folder.resolve(name), text);
  }

  private Map<String, byte[]> files(String job) throws IOException {
    Map<String, byte[]> files = new TreeMap<>();
    Path target = folder.resolve("out").resolve(job);
    if (Files.exists(target)) {
      try (Stream<Path> list = Files.list(target)) {
        for (Path p : list.toList()) {
          files.put(p.getFileName().toString(), Files.readAllBytes(p));
        }
      }
    }
    return files;
  }

  @Test
  void helpAndVersion() {
    assertEquals(0, run());
    assertTrue(out().contains("headcourse draw JOB.yaml"));
    assertEquals("", err());
    assertEquals(0, run("--help"));
    assertEquals(0, run("draw", "--help"));
    assertTrue(out().contains("--paper"));
    assertEquals(0, run("--version"));
    assertTrue(out().startsWith("headcourse "));
  }

  @Test
  void drawsEverythingAndNamesIt() throws IOException {
    write("barn.yaml", GOOD);
    assertEquals(0, run("draw", "barn.yaml"), this::err);
    Map<String, byte[]> files = files("barn");
    assertEquals(
        List.of(
            "bench.pdf",
            "contractor.pdf",
            "cut-list.csv",
            "elevation-D1.svg",
            "full-size.pdf",
            "index.html",
            "layout.json",
            "order-list.csv",
            "order.pdf",
            "wall.pdf"),
        List.copyOf(files.keySet()));
    files.keySet().forEach(n -> assertTrue(out().contains("out/barn/" + n), n));
  }

  @Test
  void namesAfterTwoDashesAreFiles() throws IOException {
    write("-barn.yaml", GOOD);
    assertEquals(2, run("check", "-barn.yaml"));
    assertTrue(err().contains("unknown option -barn.yaml"), err());
    assertEquals(0, run("check", "--", "-barn.yaml"), this::err);
    assertEquals(2, run("check", "--", "--help"));
    assertTrue(err().contains("no file --help"), err());
  }

  @Test
  void onlySomeOnOtherPaper() throws IOException {
    write("barn.yaml", GOOD);
    assertEquals(
        0, run("draw", "barn.yaml", "--only", "csv,json", "--paper=a3", "--out", "x"), this::err);
    assertTrue(Files.exists(folder.resolve("x/barn/layout.json")));
    assertFalse(Files.exists(folder.resolve("x/barn/bench.pdf")));
  }

  @Test
  void aWrongJobLeavesWhatWasThere() throws IOException {
    write("barn.yaml", GOOD);
    assertEquals(0, run("draw", "barn.yaml"), this::err);
    Map<String, byte[]> before = files("barn");
    write("barn.yaml", GOOD.replace("width: 8'", "widht: 8'"));
    assertEquals(2, run("draw", "barn.yaml"));
    assertTrue(err().contains("barn.yaml:4:"), this::err);
    assertTrue(err().contains("width"), this::err);
    assertEquals("", out());
    Map<String, byte[]> after = files("barn");
    assertEquals(before.keySet(), after.keySet());
    before.forEach((n, b) -> assertArrayEquals(b, after.get(n), n));
  }

  @Test
  void aHeadThatCannotBeIsRefusedWithChangesThatWork() throws IOException {
    // 8 ft with soldiers of exactly 7 in and a joint in line with the jamb.
    write(
        "barn.yaml",
        """
        units: in
        stone: {kind: sandstone, density: 138 lb/ft3, thickness: 1 1/4}
        setting: {joints: mortar, joint: 1/8}
        openings:
          - mark: D1
            width: 8'
            head:
              key: {bottom: 10, top: 10}
              stones: {min: 7, max: 7, target: 7}
              clear: 1
        """);
    assertEquals(2, run("draw", "barn.yaml"), this::err);
    assertTrue(err().contains("barn.yaml:"), this::err);
    assertEquals(Map.of(), files("barn"));
  }

  @Test
  void aFindingOfSeverityErrorGivesOneUnlessAccepted() throws IOException {
    // 1 1/4 in at 145 lb/ft3 weighs 15.1 lb/ft2 (TMS 402-16 §12.3, from memory).
    String heavy = GOOD.replace("138 lb/ft3", "145 lb/ft3");
    write("barn.yaml", heavy);
    assertEquals(1, run("draw", "barn.yaml"));
    assertTrue(err().contains("veneer-weight"), this::err);
    assertTrue(files("barn").containsKey("wall.pdf"));
    write("barn.yaml", heavy + "accept:\n  - {rule: veneer-weight, reason: letter of 12 April}\n");
    assertEquals(0, run("draw", "barn.yaml"), this::err);
  }

  @Test
  void checkDrawsNothingAndReportsOnStandardOutput() throws IOException {
    write("barn.yaml", GOOD);
    assertEquals(0, run("check", "barn.yaml"), this::err);
    assertTrue(out().contains("D1: soldier"), this::out);
    assertTrue(
        out()
            .matches(
                "(?s).*D1: lands in [0-9,]+ of 10,000 builds with the check, [0-9,]+ without"
                    + " \\(ordinary care, assumed\\).*"),
        this::out);
    assertFalse(Files.exists(folder.resolve("out")));
  }

  @Test
  void newWritesAJobThatDraws() throws IOException {
    assertEquals(0, run("new", "mine.yaml"), this::err);
    int status = run("draw", "mine.yaml");
    assertTrue(status <= 1, this::err);
    assertEquals(2, run("new", "mine.yaml"));
    assertTrue(err().contains("stays as it is"), this::err);
  }

  @Test
  void rulesNameTheirSources() {
    assertEquals(0, run("rules"));
    assertTrue(out().contains("veneer-weight"));
    assertTrue(out().contains("TMS 402"));
  }

  @Test
  void whatTheUserMistypes() {
    assertEquals(2, run("drwa", "barn.yaml"));
    assertTrue(err().contains("drwa"), this::err);
    assertEquals(2, run("draw"));
    assertEquals(2, run("draw", "nowhere.yaml"));
    assertTrue(err().contains("nowhere.yaml"), this::err);
    assertEquals(2, run("draw", "x.yaml", "--only", "walls"));
    assertTrue(err().contains("full-size"), this::err);
    assertEquals(2, run("draw", "x.yaml", "--paper", "a9"));
    assertEquals(2, run("draw", "x.yaml", "--colour"));
  }

  @Test
  void twoJobsOfOneNameAreNotDrawnOverEachOther() throws IOException {
    Files.createDirectories(folder.resolve("a"));
    Files.createDirectories(folder.resolve("b"));
    write("a/barn.yaml", GOOD);
    write("b/barn.yaml", GOOD);
    assertEquals(2, run("draw", "a/barn.yaml", "b/barn.yaml", "--only", "json"));
    assertTrue(err().contains("same folder"), this::err);
  }

  @Test
  void aFolderThatCannotBeWrittenIsTheMachinesFault() throws IOException {
    write("barn.yaml", GOOD);
    write("out", "a file where the folder should be");
    assertEquals(3, run("draw", "barn.yaml", "--only", "json"));
    assertTrue(err().contains("can't write"), this::err);
  }

  @Test
  void elevationsOfOpeningsThatAreGoneGoToo() throws IOException {
    write("barn.yaml", GOOD + "  - {mark: D2, width: 6'}\n");
    assertEquals(0, run("draw", "barn.yaml", "--only", "svg"), this::err);
    assertTrue(files("barn").containsKey("elevation-D2.svg"));
    Files.writeString(folder.resolve("out/barn/my-notes.txt"), "mine");
    write("barn.yaml", GOOD);
    assertEquals(0, run("draw", "barn.yaml", "--only", "svg"), this::err);
    assertFalse(files("barn").containsKey("elevation-D2.svg"));
    assertTrue(files("barn").containsKey("my-notes.txt"));
  }

  @Test
  void nearMissesAreUnderstood() throws IOException {
    assertEquals(0, run("help", "draw"));
    assertTrue(out().contains("--opening"), this::out);
    assertEquals(2, run("drow", "barn.yaml"));
    assertTrue(err().contains("did you mean headcourse draw?"), this::err);
    Files.writeString(folder.resolve("mill.yaml"), "units: in\n");
    assertEquals(2, run("draw", "mill"));
    assertTrue(err().contains("there is mill.yaml"), this::err);
    assertEquals(2, run("draw", "none"));
    assertTrue(err().contains("headcourse new none.yaml writes one"), this::err);
  }

  /** With stones reported cut, the head's own fault is told, not that they have no size. */
  @Test
  void aReportDoesNotHideWhyAHeadCannotBe() throws IOException {
    Files.writeString(
        folder.resolve("narrow.yaml"),
        """
        units: in
        stone: {density: 138 lb/ft3, thickness: 1 1/4}
        openings:
          - {mark: D1, width: 7', wall-left: 2}
        cut: [D1-R1]
        spoiled: [D1-R3]
        """);
    assertEquals(2, run("check", "narrow.yaml"));
    assertTrue(err().contains("narrow.yaml:4:"), this::err);
    assertTrue(err().contains("wall-left"), this::err);
    assertFalse(err().contains("has no size"), this::err);
  }
}
