package headcourse.job.yaml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.diag.Outcome;
import headcourse.job.Job;
import headcourse.job.Stock;
import headcourse.units.Length;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Job files with what is said of them: {@code x.yaml} beside {@code x.txt}, empty for a good one.
 */
class JobCasesTest {
  private static final Path FOLDER = Path.of("src/test/resources/headcourse/job-cases");

  private static List<String> stems(String end) throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return List.copyOf(
          new TreeSet<>(
              files
                  .map(p -> p.getFileName().toString())
                  .filter(n -> n.endsWith(end))
                  .map(n -> n.substring(0, n.length() - end.length()))
                  .toList()));
    }
  }

  private static Optional<byte[]> beside(String path) {
    try {
      Path p = FOLDER.resolve(path);
      return Files.exists(p) ? Optional.of(Files.readAllBytes(p)) : Optional.empty();
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  @Test
  void everyCaseSaysWhatIsExpected() throws IOException {
    boolean refresh = Boolean.getBoolean("headcourse.refresh") && System.getenv("CI") == null;
    Locale before = Locale.getDefault();
    try {
      for (String tag : List.of("en-US", "tr-TR", "de-DE")) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        for (String stem : stems(".yaml")) {
          byte[] bytes = Files.readAllBytes(FOLDER.resolve(stem + ".yaml"));
          Outcome<Job> o = ReaderCase.read(stem + ".yaml", bytes, JobCasesTest::beside);
          Path golden = FOLDER.resolve(stem + ".txt");
          if (refresh) {
            Files.writeString(golden, ReaderCase.said(o));
          }
          assertEquals(Files.readString(golden), ReaderCase.said(o), stem);
          assertEquals(o.diagnostics().isEmpty(), o.value().isPresent(), stem);
        }
      }
    } finally {
      Locale.setDefault(before);
    }
    assertEquals(stems(".yaml"), stems(".txt"), "a case without its pair");
  }

  @Test
  void whatIsWrittenForANewJobReadsCleanly() throws IOException {
    byte[] b = Files.readAllBytes(Path.of("src/main/resources/headcourse/new-job.yaml"));
    assertEquals("", ReaderCase.said(ReaderCase.read("new.yaml", b, p -> Optional.empty())));
  }

  @Test
  void aMinimalJobIsSolvedInBothUnits() {
    for (int feet = 3; feet <= 16; feet++) {
      for (String text :
          List.of(
              "stone: {thickness: 1 1/4}\nopenings: [{width: " + feet + "'}]\n",
              "units: mm\nstone: {thickness: 30}\nopenings: [{width: " + feet * 305 + "}]\n")) {
        Job job = ReaderCase.read(text).value().orElseThrow();
        var shape = headcourse.layout.shapes.Shapes.named("soldier").orElseThrow();
        var solution = shape.setOut(job, job.openings().get(0));
        assertTrue(solution instanceof headcourse.layout.Solution.Solved, text);
      }
    }
  }

  /** A sheet as it comes from the yard: title, notes, a sum, and each man's way with fractions. */
  @Test
  void aSpreadsheetAsItComesFromTheYard() throws IOException {
    byte[] b = Files.readAllBytes(FOLDER.resolve("good-sheet.yaml"));
    Job job = ReaderCase.read("good-sheet.yaml", b, JobCasesTest::beside).value().orElseThrow();
    List<Stock.Item> items = job.stock().items();
    assertEquals(
        List.of("A1", "A2", "A3", "A4", "A5"), items.stream().map(Stock.Item::mark).toList());
    // 7 1/2", 7-1/2 and 7,5 are the same.
    for (Stock.Item i : items.subList(0, 4)) {
      assertEquals(Length.inches(7.5), i.length(), i.mark());
      assertEquals(Length.inches(13.25), i.face(), i.mark());
    }
    assertEquals(Length.mm(190), items.get(4).length());
    assertEquals(8, items.stream().mapToInt(Stock.Item::count).sum());
  }

  @Test
  void everySectionComesThrough() throws IOException {
    byte[] b = Files.readAllBytes(FOLDER.resolve("good-full.yaml"));
    Job job = ReaderCase.read("good-full.yaml", b, JobCasesTest::beside).value().orElseThrow();
    assertEquals(4, job.stock().items().size());
    assertEquals(0.15, job.stock().spare(), 1e-12);
    assertEquals(List.of("C2#3", "D1-R5"), job.report().spoiled());
    assertEquals("D1-R4", job.report().cut().get(0).mark());
    assertEquals("C1#3", job.report().cut().get(1).piece());
    Stock.Item x1 =
        job.stock().items().stream().filter(i -> i.mark().equals("X1")).findFirst().orElseThrow();
    assertEquals(21, x1.lead());
    assertEquals(Length.inches(0.5), x1.trim());
    assertEquals(0, x1.count());
    assertEquals(Length.inches(1.75), job.props().thickness());
    assertEquals(Length.inches(9.25), job.props().width());
    // A pound on a square inch is 0.006894757 N/mm² (NIST SP 811).
    assertEquals(1_400_000 * 0.006894757, job.props().stiffness(), 0.01);
    assertEquals(Length.inches(1 / 16.0), job.props().sag());
    assertEquals(1.5, job.props().push());
    assertEquals(Length.inches(1), job.props().lagging());
    assertEquals(3, job.openings().get(0).measured().soffit().size());
    assertEquals(2022, job.checks().limits().edition());
    // 12 lb/ft2 by the international pound and foot (0.45359237 kg, 0.3048 m).
    assertEquals(58.5891, (Double) job.checks().limits().values().get("veneer-weight"), 1e-4);
    assertTrue(job.spans().given("openings[0].head.stones.max"));
    assertEquals(3, job.report().fitted().size());
    assertEquals("C1#2", job.report().fitted().get(2).piece());
    assertEquals(Length.inches(6.5), job.report().fitted().get(2).bottom());
  }
}
