package headcourse.sheet.frame;

/** Goes through a text of XML piece by piece. */
final class Scanner {
  private static final String[] NAMES = {"amp", "lt", "gt", "quot", "apos"};
  private static final String CHARACTERS = "&<>\"'";

  private final String text;
  private int at;

  /** The text cannot be read on. */
  static final class Malformed extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final int offset;
    private final transient String[] hints;

    Malformed(int offset, String message, String... hints) {
      super(message, null, false, false);
      this.offset = offset;
      this.hints = hints;
    }

    int offset() {
      return offset;
    }

    String[] hints() {
      return hints;
    }
  }

  Scanner(String text) {
    this.text = text;
  }

  int at() {
    return at;
  }

  boolean atEnd() {
    return at >= text.length();
  }

  boolean looksAt(String s) {
    return text.startsWith(s, at);
  }

  Malformed malformed(String what) {
    return new Malformed(at, "not well-formed XML: " + what);
  }

  /** Goes on past what must stand here. */
  void skip(String s) {
    if (!looksAt(s)) {
      throw malformed("expected " + s);
    }
    at += s.length();
  }

  /** Goes on past white space; true, for use in a condition. */
  boolean space() {
    while (at < text.length() && white(text.charAt(at))) {
      at++;
    }
    return true;
  }

  private static boolean white(char c) {
    return c == ' ' || c == '\n' || c == '\t' || c == '\r';
  }

  /** Everything up to and with an end. */
  String through(String end) {
    int to = text.indexOf(end, at);
    if (to < 0) {
      throw malformed(end + " is missing");
    }
    String s = text.substring(at, to + end.length());
    check(at, to);
    at = to + end.length();
    return s;
  }

  void comment() {
    at += 4;
    int to = text.indexOf("--", at);
    if (to < 0 || !text.startsWith("-->", to)) {
      throw malformed("a comment that is not closed by -->");
    }
    check(at, to);
    at = to + 3;
  }

  String name() {
    int from = at;
    while (at < text.length() && nameable(text.charAt(at), at > from)) {
      at++;
    }
    if (at == from) {
      throw malformed("expected a name");
    }
    return text.substring(from, at);
  }

  private static boolean nameable(char c, boolean later) {
    boolean letter = c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c == '_' || c > 0xBF;
    return letter || later && (c >= '0' && c <= '9' || c == '-' || c == '.' || c == ':');
  }

  /** A value in quotes, its references replaced. */
  String quoted() {
    char quote = atEnd() ? 0 : text.charAt(at);
    if (quote != '"' && quote != '\'') {
      throw malformed("expected a value in quotes");
    }
    int to = text.indexOf(quote, at + 1);
    if (to < 0) {
      throw malformed("a value that is not closed");
    }
    at++;
    String s = plain(to);
    if (at < to) {
      throw malformed("< within a value");
    }
    at = to + 1;
    return s;
  }

  /** Text up to the next tag, its references replaced. */
  String text() {
    int to = text.indexOf('<', at);
    return plain(to < 0 ? text.length() : to);
  }

  private String plain(int to) {
    StringBuilder s = new StringBuilder(to - at);
    while (at < to && text.charAt(at) != '<') {
      char c = text.charAt(at);
      if (c == '&') {
        reference(s, to);
      } else {
        check(at, at + 1);
        s.append(white(c) ? ' ' : c);
        at++;
      }
    }
    return s.toString();
  }

  private void reference(StringBuilder s, int to) {
    int end = text.indexOf(';', at);
    if (end < 0 || end >= to) {
      throw malformed("& without ;");
    }
    String name = text.substring(at + 1, end);
    int known = java.util.Arrays.asList(NAMES).indexOf(name);
    if (known >= 0) {
      s.append(CHARACTERS.charAt(known));
    } else if (name.startsWith("#")) {
      s.appendCodePoint(number(name));
    } else {
      throw new Malformed(at, "an entity is refused in a frame: &" + name + ";");
    }
    at = end + 1;
  }

  private int number(String name) {
    boolean hex = name.startsWith("#x");
    try {
      int c = Integer.parseInt(name.substring(hex ? 2 : 1), hex ? 16 : 10);
      if (c >= ' ' && c < 0xD800 || c >= 0xE000 && c < 0xFFFE || c >= 0x10000 && c <= 0x10FFFF) {
        return c;
      }
      return switch (c) {
        case '\t', '\n', '\r' -> ' ';
        default -> throw malformed("no such character: &" + name + ";");
      };
    } catch (NumberFormatException e) {
      throw malformed("no such character: &" + name + ";");
    }
  }

  /** Refuses characters that XML has no place for. */
  private void check(int from, int to) {
    for (int i = from; i < to; i++) {
      char c = text.charAt(i);
      if (c < ' ' && !white(c) || c >= 0xFFFE) {
        throw new Malformed(i, "not well-formed XML: a control character");
      }
    }
  }
}
