package headcourse.job.yaml;

import headcourse.diag.Diagnostic;
import headcourse.diag.Severity;
import headcourse.diag.Span;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Collects what is wrong with a file. */
final class Problems {
  /** More than this helps nobody. */
  private static final int MOST = 100;

  private final List<Diagnostic> found = new ArrayList<>();

  void error(Span span, String message, String... hints) {
    found.add(Diagnostic.error(span, message, hints));
  }

  boolean any() {
    return found.stream().anyMatch(d -> d.severity() == Severity.ERROR);
  }

  int count() {
    return found.size();
  }

  /** In the order of the file; those of another file after them. */
  List<Diagnostic> inOrder(String name) {
    return found.stream()
        .sorted(
            Comparator.comparing((Diagnostic d) -> !d.span().source().name().equals(name))
                .thenComparing(d -> d.span().line())
                .thenComparing(d -> d.span().column()))
        .distinct()
        .limit(MOST)
        .toList();
  }
}
