package headcourse.job.yaml;

import headcourse.diag.DiagnosticPrinter;
import headcourse.diag.Outcome;
import headcourse.job.Job;
import headcourse.layout.shapes.Shapes;
import headcourse.rules.RuleBook;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.stream.Collectors;

/** Reads job texts for tests, with the program's own shapes and rules. */
final class ReaderCase {
  private ReaderCase() {}

  static Outcome<Job> read(String name, byte[] bytes, SideFiles files) {
    return JobReader.read(name, bytes, Shapes.definitions(), RuleBook.limits(), files);
  }

  static Outcome<Job> read(String text) {
    return read("job.yaml", text.getBytes(StandardCharsets.UTF_8), p -> Optional.empty());
  }

  static String said(Outcome<Job> outcome) {
    return outcome.diagnostics().stream()
        .map(d -> DiagnosticPrinter.print(d) + "\n")
        .collect(Collectors.joining());
  }
}
