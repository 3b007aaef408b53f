package headcourse.job.yaml;

import headcourse.diag.Diagnostic;
import headcourse.diag.Severity;
import headcourse.diag.Span;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Collects what is wrong with a file. */
final class Problems {
  /** More than this helps nobody. */
  static final int MOST = 100;

  /** After so many no more are kept; a file of nothing but faults must not take long. */
  private static final int KEPT = 2000;

  private final List<Diagnostic> found = new ArrayList<>();
  private final Set<String> seen = new HashSet<>();

  void error(Span span, String message, String... hints) {
    // Compared by place and words, because a span holds its whole text.
    if (found.size() < KEPT && seen.add(span.place() + " " + message)) {
      found.add(Diagnostic.error(span, message, hints));
    }
  }

  boolean any() {
    return found.stream().anyMatch(d -> d.severity() == Severity.ERROR);
  }

  /** In the order of the file; those of another file after them. */
  List<Diagnostic> inOrder(String name) {
    return found.stream()
        .sorted(
            Comparator.comparing((Diagnostic d) -> !d.span().source().name().equals(name))
                .thenComparing(d -> d.span().line())
                .thenComparing(d -> d.span().column()))
        .limit(MOST)
        .toList();
  }
}
