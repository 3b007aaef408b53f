package headcourse.cli;

import headcourse.diag.Diagnostic;
import headcourse.diag.Outcome;
import headcourse.job.Job;
import headcourse.sheet.SheetFrame;
import headcourse.sheet.frame.Frame;
import headcourse.sheet.frame.FrameReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;

/** Finds the frame that a job asks for. */
final class Frames {
  private static final String PLAIN = "templates/plain.svg";

  private Frames() {}

  static Outcome<SheetFrame> of(Job job, JobFile file) {
    String name = job.frame().isEmpty() ? PLAIN : job.frame();
    Optional<byte[]> own = job.frame().isEmpty() ? Optional.empty() : file.beside(name);
    byte[] svg = own.orElseGet(() -> builtIn(name));
    if (svg == null) {
      return Outcome.failed(
          List.of(
              Diagnostic.error(
                  job.spans().of("frame"),
                  "there is no frame " + name,
                  "write frame: " + PLAIN + ", or leave the line out for the built-in frame")));
    }
    Outcome<Frame> read = FrameReader.read(name, svg);
    return new Outcome<>(read.value().map(f -> (SheetFrame) f), read.diagnostics());
  }

  private static byte[] builtIn(String name) {
    if (!name.startsWith("templates/") || name.contains("..")) {
      return null;
    }
    try (InputStream in = Frames.class.getResourceAsStream("/headcourse/" + name)) {
      return in == null ? null : in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
