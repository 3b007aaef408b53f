package headcourse.diag;

import java.util.List;

/**
 * One thing to tell the user.
 *
 * @param severity how grave
 * @param span where, or null where it belongs to no place in a file
 * @param message what is wrong, one line
 * @param hints what to write instead, each one line
 */
public record Diagnostic(Severity severity, Span span, String message, List<String> hints) {
  /** Copies the hints. */
  public Diagnostic {
    hints = List.copyOf(hints);
  }

  /** An error with its hints. */
  public static Diagnostic error(Span span, String message, String... hints) {
    return new Diagnostic(Severity.ERROR, span, message, List.of(hints));
  }

  /** A warning with its hints. */
  public static Diagnostic warning(Span span, String message, String... hints) {
    return new Diagnostic(Severity.WARNING, span, message, List.of(hints));
  }

  /** A note with its hints. */
  public static Diagnostic note(Span span, String message, String... hints) {
    return new Diagnostic(Severity.NOTE, span, message, List.of(hints));
  }
}
