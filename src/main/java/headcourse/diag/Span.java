package headcourse.diag;

/**
 * A run of characters on one line of a source.
 *
 * @param source the text it lies in
 * @param line from 1
 * @param column from 1, in code points
 * @param length at least 1, in code points
 */
public record Span(Source source, int line, int column, int length) {
  /** {@code file:line:column}. */
  public String place() {
    return source.name() + ":" + line + ":" + column;
  }
}
