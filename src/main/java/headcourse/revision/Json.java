package headcourse.revision;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A value of JSON (RFC 8259). */
sealed interface Json {
  /** An object, by name. */
  record Fields(Map<String, Json> byName) implements Json {}

  /** An array. */
  record Items(List<Json> list) implements Json {}

  /** A string. */
  record Text(String value) implements Json {}

  /** A number; always finite. */
  record Number(double value) implements Json {}

  /** {@code true}, {@code false} or {@code null}. */
  record Literal(String word) implements Json {}

  /** What is wrong with a text, and where. */
  final class Fault extends Exception {
    private static final long serialVersionUID = 1;

    Fault(String message) {
      super(message);
    }
  }

  /** The value of a name in an object; empty where it is absent, null, or this is no object. */
  default Optional<Json> get(String name) {
    return this instanceof Fields f
        ? Optional.ofNullable(f.byName.get(name))
            .filter(j -> !(j instanceof Literal l && l.word.equals("null")))
        : Optional.empty();
  }

  /** Reads a text; nothing may follow the value. */
  static Json parse(String text) throws Fault {
    return new JsonParser(text).whole();
  }
}
