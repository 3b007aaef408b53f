package headcourse.diag;

import java.util.Arrays;

/** Writes a message as {@code file:line:column: error: …}, its line with a caret, its hints. */
public final class DiagnosticPrinter {
  /** Columns of the source line that are shown at most. */
  private static final int WINDOW = 96;

  /** Code points to either side that are looked at; more than a window of combining ones. */
  private static final int NEAR = 1000;

  private DiagnosticPrinter() {}

  /** The message, several lines without a last line end. */
  public static String print(Diagnostic d) {
    StringBuilder s = new StringBuilder();
    Span span = d.span();
    s.append(span == null ? "headcourse" : visible(span.place())).append(": ");
    s.append(d.severity().word()).append(": ").append(visible(d.message()));
    if (span != null && span.line() >= 1 && span.line() <= span.source().lines().size()) {
      excerpt(s, span);
    }
    for (String hint : d.hints()) {
      s.append("\n  hint: ").append(visible(hint));
    }
    return s.toString();
  }

  private static void excerpt(StringBuilder s, Span span) {
    String whole = span.source().lines().get(span.line() - 1);
    if (whole.isEmpty()) {
      return;
    }
    int count = whole.codePointCount(0, whole.length());
    int column = Math.max(0, Math.min(span.column() - 1, count));
    // Of a line that is a whole file only what can be shown is looked at.
    int skipped = Math.max(0, column - NEAR);
    int first = whole.offsetByCodePoints(0, skipped);
    int[] line = whole.substring(first).codePoints().limit(2 * NEAR).toArray();
    int at = column - skipped;
    int end = Math.max(at, Math.min(at + span.length(), line.length));
    int from = at;
    for (int room = WINDOW / 3; from > 0 && room > 0; from--) {
      room -= width(line[from - 1]);
    }
    // Near the start nothing is cut away: three dots would take the place of what they hide.
    boolean fits =
        skipped == 0 && Arrays.stream(line).map(DiagnosticPrinter::width).sum() <= WINDOW;
    from = skipped == 0 && from <= 3 || fits ? 0 : from;
    StringBuilder text = new StringBuilder(from > 0 ? "..." : "");
    StringBuilder caret = new StringBuilder(from > 0 ? "   " : "");
    int columns = 0;
    int i = from;
    for (; i < line.length && columns < WINDOW; i++) {
      text.append(shown(line[i]));
      int w = width(line[i]);
      columns += w;
      if (i < at) {
        caret.append(" ".repeat(w));
      } else if (i < end) {
        caret.append("^".repeat(w));
      }
    }
    if (caret.indexOf("^") < 0) {
      caret.append('^');
    }
    s.append("\n    ").append(text).append(i < line.length ? "..." : "");
    s.append("\n    ").append(caret);
  }

  private static String visible(String text) {
    StringBuilder s = new StringBuilder();
    text.codePoints().forEach(c -> s.append(shown(c)));
    return s.toString();
  }

  // A terminal must not obey what a file holds, nor be turned to the left by it.
  private static String shown(int c) {
    if (c == '\t') {
      return " ";
    }
    int type = Character.getType(c);
    boolean hidden =
        type == Character.CONTROL
            || type == Character.FORMAT
            || type == Character.SURROGATE
            || type == Character.LINE_SEPARATOR
            || type == Character.PARAGRAPH_SEPARATOR;
    return hidden ? "\uFFFD" : Character.toString(c);
  }

  /** Columns that a code point takes on a terminal, after Unicode's East Asian widths. */
  private static int width(int c) {
    int type = Character.getType(c);
    if (type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK) {
      return 0;
    }
    boolean wide =
        c >= 0x1100 && c <= 0x115F
            || c >= 0x2E80 && c <= 0xA4CF && c != 0x303F
            || c >= 0xAC00 && c <= 0xD7A3
            || c >= 0xF900 && c <= 0xFAFF
            || c >= 0xFE30 && c <= 0xFE6F
            || c >= 0xFF00 && c <= 0xFF60
            || c >= 0xFFE0 && c <= 0xFFE6
            || c >= 0x1F300 && c <= 0x1FAFF
            || c >= 0x20000 && c <= 0x3FFFD;
    return wide ? 2 : 1;
  }
}
