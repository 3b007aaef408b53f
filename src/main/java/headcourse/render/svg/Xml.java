package headcourse.render.svg;

import java.util.ArrayDeque;
import java.util.Deque;

/** An XML file in the making, everything escaped. */
final class Xml {
  private final StringBuilder out = new StringBuilder(16384);
  private final Deque<String> open = new ArrayDeque<>();

  /** Whether every element stands on a line of its own, indented. */
  private final boolean indented;

  /** Whether the start tag is not ended yet. */
  private boolean inTag;

  /** Whether the element has text, so that no white space may be added to it. */
  private boolean inline;

  Xml(boolean indented) {
    this.indented = indented;
  }

  Xml raw(String s) {
    out.append(s);
    return this;
  }

  Xml open(String element) {
    endTag();
    if (!open.isEmpty()) {
      newLine();
    }
    out.append('<').append(element);
    open.push(element);
    inTag = true;
    inline = false;
    return this;
  }

  Xml attribute(String name, String value) {
    out.append(' ').append(name).append("=\"");
    escape(value);
    out.append('"');
    return this;
  }

  /** An attribute whose value needs no escaping, such as path data. */
  Xml plain(String name, String value) {
    out.append(' ').append(name).append("=\"").append(value).append('"');
    return this;
  }

  /** An attribute that is a number. */
  Xml number(String name, double value) {
    return plain(name, Figures.of(value));
  }

  Xml text(String s) {
    endTag();
    escape(s);
    inline = true;
    return this;
  }

  Xml close() {
    String element = open.pop();
    if (inTag) {
      out.append("/>");
      inTag = false;
    } else {
      if (!inline) {
        newLine();
      }
      out.append("</").append(element).append('>');
    }
    inline = false;
    if (open.isEmpty()) {
      out.append('\n');
    }
    return this;
  }

  private void endTag() {
    if (inTag) {
      out.append('>');
      inTag = false;
    }
  }

  private void newLine() {
    if (!indented) {
      return;
    }
    out.append('\n').append(" ".repeat(Math.min(open.size(), 20)));
  }

  /** Characters that XML 1.0 has no place for become spaces. */
  private void escape(String s) {
    if (harmless(s)) {
      out.append(s);
      return;
    }
    for (int i = 0; i < s.length(); ) {
      int c = s.codePointAt(i);
      i += Character.charCount(c);
      switch (c) {
        case '&' -> out.append("&amp;");
        case '<' -> out.append("&lt;");
        case '>' -> out.append("&gt;");
        case '"' -> out.append("&quot;");
        default -> {
          boolean bad = c < ' ' || c >= 0xD800 && c < 0xE000 || c == 0xFFFE || c == 0xFFFF;
          out.appendCodePoint(bad ? ' ' : c);
        }
      }
    }
  }

  private static boolean harmless(String s) {
    for (int i = 0; i < s.length(); i++) {
      char c = s.charAt(i);
      if (c < ' ' || c >= 0xD800 || c == '&' || c == '<' || c == '>' || c == '"') {
        return false;
      }
    }
    return true;
  }

  @Override
  public String toString() {
    return out.toString();
  }
}
