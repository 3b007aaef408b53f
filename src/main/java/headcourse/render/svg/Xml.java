package headcourse.render.svg;

import java.util.ArrayDeque;
import java.util.Deque;

/** An XML file in the making, everything escaped. */
final class Xml {
  private final Figures out = new Figures();
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
    out.put(s);
    return this;
  }

  Xml open(String element) {
    endTag();
    if (!open.isEmpty()) {
      newLine();
    }
    out.put('<').put(element);
    open.push(element);
    inTag = true;
    inline = false;
    return this;
  }

  Xml attribute(String name, String value) {
    out.put(' ').put(name).put("=\"");
    escape(value);
    out.put('"');
    return this;
  }

  /** An attribute whose value needs no escaping, such as path data. */
  Xml plain(String name, String value) {
    out.put(' ').put(name).put("=\"").put(value).put('"');
    return this;
  }

  /** The same of what is octets already. */
  Xml plain(String name, Figures value) {
    out.put(' ').put(name).put('=').put('"').put(value).put('"');
    return this;
  }

  /** An attribute that is a number. */
  Xml number(String name, double value) {
    out.put(' ').put(name).put('=').put('"').number(value).put('"');
    return this;
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
      out.put("/>");
      inTag = false;
    } else {
      if (!inline) {
        newLine();
      }
      out.put("</").put(element).put('>');
    }
    inline = false;
    if (open.isEmpty()) {
      out.put('\n');
    }
    return this;
  }

  private void endTag() {
    if (inTag) {
      out.put('>');
      inTag = false;
    }
  }

  private void newLine() {
    if (!indented) {
      return;
    }
    out.put('\n').put(" ".repeat(Math.min(open.size(), 20)));
  }

  /** Characters that XML 1.0 has no place for become spaces. */
  private void escape(String s) {
    if (harmless(s)) {
      out.put(s);
      return;
    }
    StringBuilder safe = new StringBuilder();
    for (int i = 0; i < s.length(); ) {
      int c = s.codePointAt(i);
      i += Character.charCount(c);
      switch (c) {
        case '&' -> safe.append("&amp;");
        case '<' -> safe.append("&lt;");
        case '>' -> safe.append("&gt;");
        case '"' -> safe.append("&quot;");
        default -> {
          boolean bad = c < ' ' || c >= 0xD800 && c < 0xE000 || c == 0xFFFE || c == 0xFFFF;
          safe.appendCodePoint(bad ? ' ' : c);
        }
      }
    }
    out.put(safe.toString());
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

  byte[] toBytes() {
    return out.toBytes();
  }

  @Override
  public String toString() {
    return out.toString();
  }
}
