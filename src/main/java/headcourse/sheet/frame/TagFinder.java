package headcourse.sheet.frame;

/**
 * Finds where the start tags of well-formed markup stand, one after the other; the parser itself
 * tells only roughly.
 */
final class TagFinder {
  private final String text;
  private int start;
  private int end;

  TagFinder(String text) {
    this.text = text;
  }

  /** Goes to the next start tag, or to a document type. */
  void next() {
    int at = end;
    while (true) {
      at = text.indexOf('<', at);
      if (at < 0) {
        start = text.length();
        end = start;
        return;
      }
      if (text.startsWith("<!--", at)) {
        at = after("-->", at + 4);
      } else if (text.startsWith("<![CDATA[", at)) {
        at = after("]]>", at + 9);
      } else if (text.startsWith("<?", at)) {
        at = after("?>", at + 2);
      } else if (text.startsWith("</", at)) {
        at = after(">", at + 2);
      } else {
        start = at;
        end = tagEnd(at);
        return;
      }
    }
  }

  private int after(String mark, int from) {
    int at = text.indexOf(mark, from);
    return at < 0 ? text.length() : at + mark.length();
  }

  private int tagEnd(int from) {
    char quote = 0;
    for (int i = from; i < text.length(); i++) {
      char c = text.charAt(i);
      if (quote != 0) {
        quote = c == quote ? 0 : quote;
      } else if (c == '"' || c == '\'') {
        quote = c;
      } else if (c == '>') {
        return i + 1;
      }
    }
    return text.length();
  }

  /** Where the tag begins. */
  int start() {
    return start;
  }

  /** Where an attribute of the tag begins, by the name that it has without its prefix. */
  int attribute(String name) {
    char quote = 0;
    for (int i = start; i < end; i++) {
      char c = text.charAt(i);
      if (quote != 0) {
        quote = c == quote ? 0 : quote;
      } else if (c == '"' || c == '\'') {
        quote = c;
      } else if (text.startsWith(name, i) && ends(i + name.length()) && begins(i)) {
        while (!Character.isWhitespace(text.charAt(i - 1))) {
          i--;
        }
        return i;
      }
    }
    return start;
  }

  private boolean begins(int at) {
    char c = text.charAt(at - 1);
    return Character.isWhitespace(c) || c == ':';
  }

  private boolean ends(int at) {
    return at < end && (text.charAt(at) == '=' || Character.isWhitespace(text.charAt(at)));
  }
}
