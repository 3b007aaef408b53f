package headcourse.sheet.frame;

import headcourse.diag.Diagnostic;
import headcourse.diag.Severity;
import headcourse.diag.Source;
import headcourse.diag.Span;
import java.util.ArrayList;
import java.util.List;

/** What is wrong with a frame file, each with its place. */
final class Complaints {
  /** More than this tells nobody anything. */
  private static final int MOST = 50;

  private final String text;
  private final String name;

  /** Split into lines only when there is something to say. */
  private Source source;

  private final List<Diagnostic> list = new ArrayList<>();

  Complaints(String name, String text) {
    this.text = text;
    this.name = name;
  }

  void error(int offset, String message, String... hints) {
    add(Diagnostic.error(span(offset), message, hints));
  }

  void warning(int offset, String message, String... hints) {
    add(Diagnostic.warning(span(offset), message, hints));
  }

  private void add(Diagnostic d) {
    if (list.size() < MOST) {
      list.add(d);
    }
  }

  boolean failed() {
    for (Diagnostic d : list) {
      if (d.severity() == Severity.ERROR) {
        return true;
      }
    }
    return false;
  }

  List<Diagnostic> all() {
    return list;
  }

  private Span span(int offset) {
    source = source == null ? Source.of(name, text) : source;
    int end = Math.max(0, Math.min(offset, text.length()));
    int line = 1;
    int start = 0;
    for (int i = 0; i < end; i++) {
      char c = text.charAt(i);
      if (c == '\n' || c == '\r' && !(i + 1 < text.length() && text.charAt(i + 1) == '\n')) {
        line++;
        start = i + 1;
      }
    }
    return new Span(source, line, text.codePointCount(start, end) + 1, 1);
  }
}
