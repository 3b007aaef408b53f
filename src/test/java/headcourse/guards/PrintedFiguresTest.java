package headcourse.guards;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.export.LayoutJson;
import headcourse.job.Bundle;
import headcourse.job.Job;
import headcourse.render.pdf.PdfRenderer;
import headcourse.sheet.book.SheetBook;
import headcourse.sheet.frame.Frame;
import headcourse.testing.DemoJobs;
import headcourse.testing.FinishedPdf;
import headcourse.testing.FinishedPdf.Part;
import headcourse.testing.Records;
import headcourse.work.ShopWork;
import headcourse.work.WorkUp;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The figures, sides and directions on finished sheets, read back from the PDF and held against
 * {@code layout.json} and the job. How a number comes from there to its place on paper is worked
 * out here by other rules than the sheets' own.
 */
public class PrintedFiguresTest {
  static Stream<String> jobs() throws IOException {
    return DemoJobs.names().stream();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("jobs")
  void demoJobs(String name) throws IOException {
    hold(DemoJobs.work(name));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("headcourse.guards.GuardedJobs#made")
  void otherJobs(String name, Job job) throws IOException {
    hold(WorkUp.of(job).value().orElseThrow());
  }

  /** A head that is revised: what stood before comes from a layout.json of its own. */
  @Test
  void aRevision() throws IOException {
    Job job = GuardedJobs.lopsided();
    byte[] before = LayoutJson.write(WorkUp.of(job).value().orElseThrow()).getBytes(UTF_8);
    Job now = GuardedJobs.higher();
    Job revised = Records.with(now, "info", Records.with(now.info(), "revisionOf", "before.json"));
    ShopWork work = WorkUp.of(revised, name -> Optional.of(before)).value().orElseThrow();
    assertTrue(work.changes().items().size() > 2, "nothing changed");
    hold(work);
  }

  /** What there is to choose from: in inches, and in millimetres with sides that differ. */
  @ParameterizedTest
  @ValueSource(strings = {INCHES, METRIC})
  void choices(String text) throws IOException {
    // Of 15 heads four, of four mixed ones two that none outdoes.
    ChooseGuard.hold(text, text.equals(INCHES) ? 4 : 2);
  }

  private static final String INCHES =
      """
      stone: {thickness: 1 1/4}
      openings:
        - mark: D1
          width: 16'
      %s    head:
            key: {bottom: 8, top: 11, rise: 2, drop: 1, proud: 1/2}
            stones: {min: 5, max: 8 1/2, target: 7 7/16}
            bearing: {min: 4, max: 8, target: 6}
      stock:
        corners:
          - {mark: C1, arris: 24, face: 18, return: 5, count: 30}
      """;

  private static final String METRIC =
      """
      units: mm
      paper: a4
      stone: {thickness: 30}
      setting: {joints: mortar, joint: 6, cut-tolerance: 1}
      openings:
        - mark: W1
          width: 1800
          wall-right: 190
      %s    head:
            key: {bottom: 200, top: 250, rise: 40}
            stones: {min: 110, max: 220, target: 160, step: 9, rhythm: mixed, mirror: false}
            bearing: {min: 120, max: 260, target: 200}
      stock:
        corners:
          - {mark: C1, arris: 700, face: 420, return: 150, count: 30}
      """;

  private static void hold(ShopWork work) throws IOException {
    Map<Bundle, List<Part>> bundles = new EnumMap<>(Bundle.class);
    for (Bundle b : Bundle.values()) {
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      PdfRenderer.render(SheetBook.compose(work, b, Frame.plain()), "guard", out);
      bundles.put(b, FinishedPdf.read(out.toByteArray()));
    }
    Printed p = new Printed(work.job(), LayoutJson.write(work), bundles);
    TicketGuard.hold(p);
    BenchGuard.hold(p);
    WallGuard.hold(p);
    ArcGuard.hold(p);
    StackGuard.hold(p);
    StrikingGuard.hold(p);
    PictureGuard.hold(p);
    CutsGuard.hold(p);
    OrderGuard.hold(p);
    ContractorGuard.hold(p);
    FullSizeGuard.hold(p);
    AsBuiltGuard.hold(p);
    assertEquals(List.of(), p.faults);
    assertTrue(p.held > 100, "only " + p.held + " figures held");
  }
}
