package headcourse.overview;

/** An HTML file in the making; everything but {@link #raw} is escaped. */
final class Html {
  private final StringBuilder out;

  Html(int size) {
    out = new StringBuilder(size);
  }

  /** Adds markup as it is. */
  Html raw(String markup) {
    out.append(markup);
    return this;
  }

  /** Adds text; characters that HTML has no place for become spaces. */
  Html text(String s) {
    if (harmless(s)) {
      return raw(s);
    }
    for (int i = 0; i < s.length(); ) {
      int c = s.codePointAt(i);
      i += Character.charCount(c);
      switch (c) {
        case '&' -> out.append("&amp;");
        case '<' -> out.append("&lt;");
        case '>' -> out.append("&gt;");
        case '"' -> out.append("&quot;");
        default -> out.appendCodePoint(sound(c) ? c : ' ');
      }
    }
    return this;
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
    for (byte b : target.getBytes(java.nio.charset.StandardCharsets.UTF_8)) {
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

  @Override
  public String toString() {
    return out.toString();
  }
}
