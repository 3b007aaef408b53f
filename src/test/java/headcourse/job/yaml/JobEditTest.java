package headcourse.job.yaml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.diag.Outcome;
import headcourse.job.Change;
import headcourse.layout.shapes.Shapes;
import headcourse.rules.RuleBook;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Values written into the text of a job: nothing else in it changes. */
class JobEditTest {
  private static final JobEdit EDIT =
      new JobEdit(KeyTable.of(Shapes.definitions(), RuleBook.limits()));

  private static final String JOB =
      """
      # A barn.
      units: in    # or mm
      job:
        title: Barn
      stone: {thickness: 1 1/4, kind: sandstone}    # as quarried
      openings:
        - mark: D1             # short
          # count: 2           # so many alike
          width: 16'           # as drawn

          # measured:          # as built
          #   width: {head: 48}
          head:
            shape: soldier     # or jack
            key: none
        # The window.
        - {mark: W1, width: 4'}
      notes:
        - first: of all
      """;

  private static String edited(String job, String path, String value) {
    Outcome<byte[]> done =
        EDIT.of(
            "barn.yaml",
            job.getBytes(StandardCharsets.UTF_8),
            List.of(new Change(path, value, "")));
    return new String(
        done.value().orElseThrow(() -> new AssertionError(done.diagnostics().toString())),
        StandardCharsets.UTF_8);
  }

  /** The lines of the edited job that are not in the job. */
  private static List<String> lines(String path, String value) {
    List<String> lines = new ArrayList<>(edited(JOB, path, value).lines().toList());
    JOB.lines().forEach(lines::remove);
    return lines;
  }

  @Test
  void aValueTakesTheOldOnesPlaceAndCommentsKeepTheirColumn() {
    assertEquals(
        List.of("    width: 16' 4 1/2\"    # as drawn"), lines("openings[0].width", "16' 4 1/2\""));
    assertEquals(List.of("    width: 9             # as drawn"), lines("openings[0].width", "9"));
    assertEquals(
        List.of("stone: {thickness: 2, kind: sandstone}    # as quarried"),
        lines("stone.thickness", "2"));
    assertEquals(List.of("  title: 'Barn: east'"), lines("job.title", "Barn: east"));
    assertEquals(List.of("  title: '# 1'"), lines("job.title", "# 1"));
    assertEquals(List.of("  title: '[old] barn'"), lines("job.title", "[old] barn"));
    assertEquals(
        List.of("stone: {thickness: 1 1/4, kind: 'lime, stone'}    # as quarried"),
        lines("stone.kind", "lime, stone"));
  }

  @Test
  void aNewKeyTakesTheLineThatHasItAsAComment() {
    assertEquals(
        List.of("    count: 3             # so many alike"), lines("openings[0].count", "3"));
    assertEquals(
        List.of("    measured: {width: {head: 192}} # as built"),
        lines("openings[0].measured.width.head", "192"));
  }

  @Test
  void aNewKeyStandsInTheOrderOfTheTable() {
    List<String> all = edited(JOB, "openings[0].height", "8'").lines().toList();
    assertEquals("    height: 8'", all.get(all.indexOf("    width: 16'           # as drawn") + 1));
    all = edited(JOB, "job.number", "26-001").lines().toList();
    assertEquals("  number: 26-001", all.get(all.indexOf("job:") + 1));
    all = edited(JOB, "openings[0].head.height", "12").lines().toList();
    assertEquals(
        "      height: 12", all.get(all.indexOf("      shape: soldier     # or jack") + 1));
    assertEquals(List.of("      key: {bottom: 8}"), lines("openings[0].head.key.bottom", "8"));
    assertEquals(
        List.of("  - {mark: W1, width: 4', head: {stones: {max: 9}}}"),
        lines("openings[1].head.stones.max", "9"));
  }

  @Test
  void whatIsLeftOutBecomesAComment() {
    assertEquals(
        List.of("    # width: 16'           # as drawn"), lines("openings[0].width", null));
    assertEquals(
        List.of("    # head:", "    #   shape: soldier     # or jack", "    #   key: none"),
        lines("openings[0].head", null));
    assertEquals(List.of("# job:", "#   title: Barn"), lines("job.title", ""));
    assertEquals(List.of("  - {mark: W1}"), lines("openings[1].width", ""));
    String back = edited(edited(JOB, "openings[0].width", null), "openings[0].width", "16'");
    assertEquals(JOB.replace("16'           #", "16'             #"), back);
  }

  @Test
  void windowsLinesAndAMarkAtTheStartStay() {
    String windows = "\uFEFF" + JOB.replace("\n", "\r\n");
    String done = edited(windows, "openings[0].height", "8'");
    assertEquals(windows.replace("drawn\r\n", "drawn\r\n    height: 8'\r\n"), done);
  }

  @Test
  void whatWouldChangeSomethingElseIsRefused() {
    String shared =
        """
        stone: {thickness: 1}
        openings:
          - {mark: D1, width: &w 4'}
          - {mark: D2, width: *w}
        """;
    byte[] bytes = shared.getBytes(StandardCharsets.UTF_8);
    Outcome<byte[]> no =
        EDIT.of("a.yaml", bytes, List.of(new Change("openings[1].width", "5'", "")));
    assertTrue(no.value().isEmpty());
    assertTrue(no.diagnostics().get(0).message().contains("openings[1].width"));
    assertTrue(
        EDIT.of("a.yaml", bytes, List.of(new Change("job.title", "a\nb", ""))).value().isEmpty());
    byte[] broken = "a: [".getBytes(StandardCharsets.UTF_8);
    assertTrue(
        EDIT.of("a.yaml", broken, List.of(new Change("job.title", "a", ""))).value().isEmpty());
  }

  @Test
  void everyValueOfAJobCanBeWrittenAndLeftOut() throws IOException {
    List<Path> jobs =
        List.of(
            Path.of("src/main/resources/headcourse/new-job.yaml"),
            Path.of("jobs/as-built-dairy.yaml"));
    int tried = 0;
    for (Path p : jobs) {
      String job = Files.readString(p);
      JobOutline outline = JobOutline.of("x", Files.readAllBytes(p)).value().orElseThrow();
      for (String path : paths(outline, "")) {
        String now = edited(job, path, "7 1/16");
        assertEquals("7 1/16", outline(now).value(path).orElseThrow(), path);
        List<String> gone = new ArrayList<>(job.lines().toList());
        now.lines().forEach(gone::remove);
        boolean many = outline.value(path).orElseThrow().startsWith("[");
        assertFalse(gone.size() > 1 && !many, () -> p + " " + path + " " + gone);
        comments(job, now);
        if (!path.endsWith("]")) {
          comments(job, edited(job, path, null));
        }
        tried++;
      }
    }
    assertTrue(tried > 100, "only " + tried);
  }

  private static JobOutline outline(String job) {
    return JobOutline.of("x", job.getBytes(StandardCharsets.UTF_8)).value().orElseThrow();
  }

  /** Every comment is still there. */
  private static void comments(String job, String now) {
    for (String line : job.lines().toList()) {
      if (line.strip().startsWith("# ") || line.contains("    # ")) {
        String comment = line.substring(line.indexOf("# ")).strip();
        assertTrue(now.contains(comment), comment);
      }
    }
  }

  private static List<String> paths(JobOutline outline, String around) {
    List<String> all = new ArrayList<>();
    for (String key : outline.keys(around)) {
      String path = around.isEmpty() ? key : around + "." + key;
      List<String> inner = paths(outline, path);
      for (int i = 0; i < outline.size(path); i++) {
        inner.addAll(paths(outline, path + "[" + i + "]"));
      }
      all.addAll(inner.isEmpty() ? List.of(path) : inner);
    }
    return all;
  }
}
