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

  /** Good to know. */
  void note(Span span, String message) {
    found.add(Diagnostic.note(span, message));
  }

  boolean any() {
    return found.stream().anyMatch(d -> d.severity() == Severity.ERROR);
  }

  /** In the order of the file; those of another file after them. */
  List<Diagnostic> inOrder(String name) {
    List<Diagnostic> sorted = new ArrayList<>(sorted(name));
    if (sorted.size() <= MOST) {
      return sorted;
    }
    int more = sorted.size() - MOST;
    List<Diagnostic> first = new ArrayList<>(sorted.subList(0, MOST));
    first.add(
        Diagnostic.note(
            sorted.get(MOST).span(),
            (found.size() < KEPT ? "" : "at least ")
                + more
                + " more "
                + (more == 1 ? "error is" : "errors are")
                + " not shown; mend the first, and read again"));
    return first;
  }

  private List<Diagnostic> sorted(String name) {
    return found.stream()
        .sorted(
            Comparator.comparing((Diagnostic d) -> !d.span().source().name().equals(name))
                .thenComparing(d -> d.span().line())
                .thenComparing(d -> d.span().column()))
        .toList();
  }
}
