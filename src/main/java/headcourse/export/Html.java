package headcourse.export;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;

/** An HTML file in the making, in UTF-8; everything but {@link #raw} is escaped. */
final class Html {
  private final ByteArrayOutputStream out;

  Html(int size) {
    out = new ByteArrayOutputStream(size);
  }

  /** Adds markup as it is. */
  Html raw(String markup) {
    return raw(markup.getBytes(StandardCharsets.UTF_8));
  }

  /** The same, in UTF-8. */
  Html raw(byte[] markup) {
    out.write(markup, 0, markup.length);
    return this;
  }

  /** Adds text; characters that HTML has no place for become spaces. */
  Html text(String s) {
    if (harmless(s)) {
      return raw(s);
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
        default -> safe.appendCodePoint(sound(c) ? c : ' ');
      }
    }
    return raw(safe.toString());
  }

  private static boolean harmless(String s) {
    for (int i = 0; i < s.length(); i++) {
      char c = s.charAt(i);
      if (c >= 0xD800 || c == '&' || c == '<' || c == '>' || c == '"' || !sound(c)) {
        return false;
      }
    }
    return true;
  }

  private static boolean sound(int c) {
    boolean control = c < ' ' && c != '\n' && c != '\t' || c >= 0x7F && c < 0xA0;
    boolean surrogate = c >= 0xD800 && c < 0xE000;
    boolean none = (c & 0xFFFE) == 0xFFFE || c >= 0xFDD0 && c < 0xFDF0;
    return !control && !surrogate && !none;
  }

  /** An element that holds only text; nothing where there is none. */
  Html element(String name, String text) {
    if (!text.isBlank()) {
      raw("<" + name + ">").text(text).raw("</" + name.split(" ")[0] + ">\n");
    }
    return this;
  }

  /** A link within the folder or the file. */
  Html link(String target, String text) {
    return raw("<a href=\"").raw(address(target)).raw("\">").text(text).raw("</a>");
  }

  /** A relative reference: what may not stand in one (RFC 3986) is written as its octets. */
  private static String address(String target) {
    StringBuilder s = new StringBuilder();
    for (byte b : target.getBytes(StandardCharsets.UTF_8)) {
      char c = (char) (b & 0xFF);
      boolean plain = c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c >= '0' && c <= '9';
      if (plain || "-._~#=/".indexOf(c) >= 0) {
        s.append(c);
      } else {
        s.append('%').append(Character.toUpperCase(Character.forDigit(b >> 4 & 15, 16)));
        s.append(Character.toUpperCase(Character.forDigit(b & 15, 16)));
      }
    }
    return s.toString();
  }

  byte[] toBytes() {
    return out.toByteArray();
  }
}
