package headcourse.sheet.frame;

import java.util.List;
import java.util.Map;

/**
 * An element of a frame file.
 *
 * @param name its local name; empty for one of another vocabulary, which is not drawn
 * @param attributes by local name, those of other vocabularies left out
 * @param content elements ({@code Node}) and text ({@code String}) in their order
 * @param offset where it begins in the text
 */
record Node(String name, Map<String, Attribute> attributes, List<Object> content, int offset) {
  /** A value and where its name stands in the text. */
  record Attribute(String value, int offset) {}

  /** The value of an attribute, or a default. */
  String get(String name, String otherwise) {
    Attribute a = attributes.get(name);
    return a == null ? otherwise : a.value();
  }

  /** Where an attribute stands, or the element where it has none. */
  int at(String name) {
    Attribute a = attributes.get(name);
    return a == null ? offset : a.offset();
  }
}
