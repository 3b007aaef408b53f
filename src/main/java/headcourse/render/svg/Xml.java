package headcourse.render.svg;

import headcourse.geom.Path;
import headcourse.text.Utf8Buffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;

/** An XML file in the making, everything escaped. */
final class Xml {
  private final Utf8Buffer out = new Utf8Buffer(8192);
  private final PathData path = new PathData(out);
  private final Deque<byte[]> open = new ArrayDeque<>();

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
    return open(ascii(element));
  }

  /** An element's name, to be put often. */
  static byte[] name(String element) {
    return ascii(element);
  }

  Xml open(byte[] element) {
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
    out.put(' ').put(name).put('=').put('"');
    escape(value);
    out.put('"');
    return this;
  }

  /** How an attribute begins, to be put often. */
  static byte[] start(String name) {
    return ascii(" " + name + "=\"");
  }

  /** An attribute as it stands in the file, to be put often. */
  static byte[] whole(String name, String value) {
    return ascii(" " + name + "=\"" + value + "\"");
  }

  private static byte[] ascii(String s) {
    return s.getBytes(StandardCharsets.US_ASCII);
  }

  /** An attribute that is written already. */
  Xml whole(byte[] attribute) {
    out.put(attribute);
    return this;
  }

  /** An attribute that is a number. */
  Xml number(byte[] start, double value) {
    out.put(start).number(value).put('"');
    return this;
  }

  /** An attribute that is a colour. */
  Xml colour(byte[] start, int rgb) {
    out.put(start).put('#').hex(rgb, 6).put('"');
    return this;
  }

  /** An attribute that is a path. */
  Xml path(byte[] start, Path value) {
    out.put(start);
    path.put(value);
    out.put('"');
    return this;
  }

  Xml text(String s) {
    endTag();
    escape(s);
    inline = true;
    return this;
  }

  Xml close() {
    byte[] element = open.pop();
    if (inTag) {
      out.put('/').put('>');
      inTag = false;
    } else {
      if (!inline) {
        newLine();
      }
      out.put('<').put('/').put(element).put('>');
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
    byte[] octets = s.getBytes(StandardCharsets.UTF_8);
    for (byte b : octets) {
      if (b < ' ' && b >= (byte) 0xED || b == '?') {
        octets = sound(s).getBytes(StandardCharsets.UTF_8);
        break;
      }
    }
    for (byte b : octets) {
      switch (b) {
        case '&' -> out.put("&amp;");
        case '<' -> out.put("&lt;");
        case '>' -> out.put("&gt;");
        case '"' -> out.put("&quot;");
        default -> out.put((char) b);
      }
    }
  }

  // Only where its octets are doubtful: half a surrogate has become a question mark; all of them,
  // and U+FFFE, begin with 0xED or more.
  private static String sound(String s) {
    StringBuilder sound = new StringBuilder();
    for (int i = 0; i < s.length(); ) {
      int c = s.codePointAt(i);
      i += Character.charCount(c);
      boolean bad = c < ' ' || c >= 0xD800 && c < 0xE000 || c == 0xFFFE || c == 0xFFFF;
      sound.appendCodePoint(bad ? ' ' : c);
    }
    return sound.toString();
  }

  byte[] toBytes() {
    return out.toBytes();
  }
}
