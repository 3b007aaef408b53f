package headcourse.cli;

import headcourse.drawing.Lettering;
import headcourse.drawing.Mark;
import headcourse.drawing.Page;
import headcourse.drawing.PageSet;
import headcourse.drawing.Pen;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.job.Bundle;
import headcourse.job.yaml.JobReader;
import headcourse.render.pdf.PdfRenderer;
import headcourse.sheet.book.SheetBook;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/**
 * Loads what every drawing needs while the job is still being read and worked out: the reader, the
 * sheets, and fonts and PDF writer by way of a trial page. Nothing of it shows.
 */
final class HeadStart {
  private HeadStart() {}

  /** Begins, on a thread that does not keep the program alive. */
  static void begin() {
    Thread thread = new Thread(HeadStart::load, "head start");
    thread.setDaemon(true);
    // What fails here fails again, and is told, where it is needed.
    thread.setUncaughtExceptionHandler((t, e) -> {});
    thread.start();
  }

  private static void load() {
    // A job of one line takes as many parts of the reader as a long one; the main thread loads the
    // rules meanwhile.
    JobReader.read(
        "",
        "units: mm".getBytes(StandardCharsets.UTF_8),
        List.of(),
        List.of(),
        name -> Optional.empty());
    trial();
    SheetBook.prepare();
  }

  private static void trial() {
    List<Mark> marks =
        List.of(
            new Mark.Label(new Point(9, 9), "1", Lettering.BODY, Mark.Align.MIDDLE, 0),
            new Mark.Label(new Point(9, 9), "1", Lettering.MARK, Mark.Align.START, 90),
            new Mark.Stroke(Path.through(new Point(1, 1), new Point(9, 9)), Pen.HIDDEN));
    Mark group = new Mark.Group(Mark.Role.FIGURE, "", "", marks);
    Page page = new Page(99, 99, "1", "1", List.of(group), List.of());
    PageSet set = new PageSet(Bundle.BENCH, "1", "", "en", "", "", List.of(page));
    try {
      PdfRenderer.render(set, "", OutputStream.nullOutputStream());
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }
}
