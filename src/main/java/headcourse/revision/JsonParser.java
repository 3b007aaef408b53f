package headcourse.revision;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Reads JSON strictly; nesting is bounded, so that a hostile file can't exhaust the stack. */
final class JsonParser {
  private static final int DEEPEST = 40;

  private final String text;
  private int at;
  private int depth;

  JsonParser(String text) {
    this.text = text;
  }

  Json whole() throws Json.Fault {
    Json value = value();
    blank();
    if (at < text.length()) {
      throw fault("something follows the end");
    }
    return value;
  }

  private Json.Fault fault(String what) {
    long line =
        1 + text.substring(0, Math.min(at, text.length())).chars().filter(c -> c == '\n').count();
    return new Json.Fault(what + " in line " + line);
  }

  private void blank() {
    while (at < text.length() && " \t\r\n".indexOf(text.charAt(at)) >= 0) {
      at++;
    }
  }

  /** The next character that is not blank, or 0 at the end. */
  private char peek() {
    blank();
    return at < text.length() ? text.charAt(at) : 0;
  }

  private boolean take(char c) {
    if (peek() == c) {
      at++;
      return true;
    }
    return false;
  }

  private void want(char c) throws Json.Fault {
    if (!take(c)) {
      throw fault(at < text.length() ? "no " + c + " where one should be" : "it ends too early");
    }
  }

  private Json value() throws Json.Fault {
    if (depth > DEEPEST) {
      throw fault("nested too deep");
    }
    char c = peek();
    if (c == '{' || c == '[') {
      at++;
      depth++;
      Json inner = c == '{' ? fields() : items();
      depth--;
      return inner;
    }
    if (c == '"') {
      return new Json.Text(string());
    }
    for (String word : List.of("true", "false", "null")) {
      if (text.startsWith(word, at)) {
        at += word.length();
        return new Json.Literal(word);
      }
    }
    return number();
  }

  private Json fields() throws Json.Fault {
    Map<String, Json> fields = new TreeMap<>();
    if (!take('}')) {
      do {
        if (peek() != '"') {
          throw fault("no name where one should be");
        }
        String name = string();
        want(':');
        if (fields.putIfAbsent(name, value()) != null) {
          throw fault("a name stands twice");
        }
      } while (take(','));
      want('}');
    }
    return new Json.Fields(fields);
  }

  private Json items() throws Json.Fault {
    List<Json> items = new ArrayList<>();
    if (!take(']')) {
      do {
        items.add(value());
      } while (take(','));
      want(']');
    }
    return new Json.Items(List.copyOf(items));
  }

  private Json number() throws Json.Fault {
    int from = at;
    while (at < text.length() && "+-.0123456789eE".indexOf(text.charAt(at)) >= 0) {
      at++;
    }
    String s = text.substring(from, at);
    if (s.length() > 40 || !s.matches("-?(0|[1-9][0-9]*)(\\.[0-9]+)?([eE][+-]?[0-9]+)?")) {
      throw fault(from < text.length() ? "no value where one should be" : "it ends too early");
    }
    double d = Double.parseDouble(s);
    if (Double.isInfinite(d)) {
      throw fault("a number is too large");
    }
    return new Json.Number(d);
  }

  private String string() throws Json.Fault {
    want('"');
    StringBuilder s = new StringBuilder();
    while (true) {
      char c = next();
      if (c == '"') {
        return s.toString();
      }
      if (c < ' ') {
        throw fault("a control character stands in a text");
      }
      s.append(c == '\\' ? escaped() : c);
    }
  }

  private char next() throws Json.Fault {
    if (at >= text.length()) {
      throw fault("it ends too early");
    }
    return text.charAt(at++);
  }

  private char escaped() throws Json.Fault {
    char c = next();
    int plain = "\"\\/bfnrt".indexOf(c);
    if (plain >= 0) {
      return "\"\\/\b\f\n\r\t".charAt(plain);
    }
    if (c == 'u') {
      int code = 0;
      for (int i = 0; i < 4; i++) {
        int digit = Character.digit(next(), 16);
        if (digit < 0) {
          throw fault("a text is escaped wrongly");
        }
        code = code * 16 + digit;
      }
      return (char) code;
    }
    throw fault("a text is escaped wrongly");
  }
}
