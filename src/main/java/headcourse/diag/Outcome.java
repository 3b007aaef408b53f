package headcourse.diag;

import java.util.List;
import java.util.Optional;

/**
 * What a stage gives: a value, or none where an error stands; and what it has to say either way.
 *
 * @param value the value; empty only where a diagnostic is an error
 * @param diagnostics in the order of the source
 */
public record Outcome<T>(Optional<T> value, List<Diagnostic> diagnostics) {
  /** Copies the diagnostics. */
  public Outcome {
    diagnostics = List.copyOf(diagnostics);
  }

  /** A value with remarks. */
  public static <T> Outcome<T> of(T value, List<Diagnostic> diagnostics) {
    return new Outcome<>(Optional.of(value), diagnostics);
  }

  /** No value. */
  public static <T> Outcome<T> failed(List<Diagnostic> diagnostics) {
    return new Outcome<>(Optional.empty(), diagnostics);
  }
}
