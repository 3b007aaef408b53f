package headcourse.diag;

import java.util.List;

/**
 * A text that messages point into.
 *
 * @param name the file's name as the user gave it
 * @param lines its lines without their ends
 */
public record Source(String name, List<String> lines) {
  /** Copies the lines. */
  public Source {
    lines = List.copyOf(lines);
  }

  /** Splits a text at its line ends. */
  public static Source of(String name, String text) {
    return new Source(name, List.of(text.split("\\r\\n|[\\n\\r]", -1)));
  }
}
