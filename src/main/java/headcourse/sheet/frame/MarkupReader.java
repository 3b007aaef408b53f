package headcourse.sheet.frame;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Reads the markup of a frame file into a tree, and refuses whatever could reach out of the file,
 * run, or blow up. It knows of XML 1.0 what has no document type; so it starts in a fraction of the
 * time that a general parser needs, and knows the place of every attribute.
 */
final class MarkupReader {
  private static final String SVG = "http://www.w3.org/2000/svg";
  private static final int MOST_ELEMENTS = 5000;
  private static final int DEEPEST = 32;

  private final Complaints complaints;
  private final Scanner in;
  private int elements;

  MarkupReader(String text, Complaints complaints) {
    this.complaints = complaints;
    in = new Scanner(text);
  }

  /** The root, or null where the file cannot be read on. */
  Node read() {
    try {
      declaration();
      miscellany();
      if (!in.looksAt("<")) {
        throw in.malformed("no element");
      }
      Map<String, String> spaces = new HashMap<>();
      spaces.put("xml", "http://www.w3.org/XML/1998/namespace");
      Node root = element(spaces, 1);
      miscellany();
      if (!in.atEnd()) {
        throw in.malformed("something after the end");
      }
      return root;
    } catch (Scanner.Malformed e) {
      complaints.error(e.offset(), e.getMessage(), e.hints());
      return null;
    }
  }

  private void declaration() {
    if (!in.looksAt("<?xml ")) {
      return;
    }
    String declaration = in.through("?>").toUpperCase(Locale.ROOT);
    int at = declaration.indexOf("ENCODING");
    if (at >= 0) {
      String rest = declaration.substring(at);
      if (!rest.contains("UTF-8") && !rest.contains("US-ASCII")) {
        throw new Scanner.Malformed(0, "the frame is not in UTF-8", "save it as UTF-8");
      }
    }
  }

  /** White space, comments and instructions. */
  private void miscellany() {
    while (true) {
      in.space();
      if (in.looksAt("<!--")) {
        in.comment();
      } else if (in.looksAt("<?")) {
        in.through("?>");
      } else if (in.looksAt("<!")) {
        throw new Scanner.Malformed(
            in.at(), "a document type is refused in a frame", "delete the <!DOCTYPE …> line");
      } else {
        return;
      }
    }
  }

  /** Reads an element from its start to its end. */
  private Node element(Map<String, String> outer, int depth) {
    int start = in.at();
    if (depth > DEEPEST) {
      throw new Scanner.Malformed(
          start, "nested deeper than " + DEEPEST + " elements", "simplify the frame");
    }
    if (++elements > MOST_ELEMENTS) {
      throw new Scanner.Malformed(
          start, "more than " + MOST_ELEMENTS + " elements", "simplify the frame");
    }
    in.skip("<");
    String name = in.name();
    List<String> names = new ArrayList<>();
    List<Node.Attribute> values = new ArrayList<>();
    Map<String, String> spaces = outer;
    while (in.space() && !in.looksAt(">") && !in.looksAt("/>")) {
      int at = in.at();
      String attribute = in.name();
      in.space();
      in.skip("=");
      in.space();
      String value = in.quoted();
      if (names.contains(attribute)) {
        throw new Scanner.Malformed(at, "not well-formed XML: " + attribute + " stands twice");
      }
      names.add(attribute);
      values.add(new Node.Attribute(value, at));
      if (attribute.equals("xmlns") || attribute.startsWith("xmlns:")) {
        spaces = spaces == outer ? new HashMap<>(outer) : spaces;
        spaces.put(attribute.equals("xmlns") ? "" : attribute.substring(6), value);
      }
    }
    boolean ours = SVG.equals(space(name, spaces, start));
    Map<String, Node.Attribute> kept = new HashMap<>();
    for (int i = 0; i < names.size(); i++) {
      attribute(names.get(i), values.get(i), spaces, ours ? kept : new HashMap<>());
    }
    if (Dangers.isScript(local(name))) {
      complaints.error(start, "a script is refused in a frame");
    }
    Node node = new Node(ours ? local(name) : "", kept, new ArrayList<>(), start);
    if (in.looksAt("/>")) {
      in.skip("/>");
    } else {
      in.skip(">");
      content(node, name, spaces, depth);
    }
    return node;
  }

  private void content(Node node, String name, Map<String, String> spaces, int depth) {
    while (true) {
      if (in.looksAt("</")) {
        in.skip("</");
        int at = in.at();
        if (!in.name().equals(name)) {
          throw new Scanner.Malformed(at, "not well-formed XML: <" + name + "> is not closed");
        }
        in.space();
        in.skip(">");
        return;
      } else if (in.looksAt("<!--")) {
        in.comment();
      } else if (in.looksAt("<![CDATA[")) {
        in.skip("<![CDATA[");
        String text = in.through("]]>");
        node.content().add(text.substring(0, text.length() - 3));
      } else if (in.looksAt("<?")) {
        in.through("?>");
      } else if (in.looksAt("<")) {
        node.content().add(element(spaces, depth + 1));
      } else if (in.atEnd()) {
        throw in.malformed("<" + name + "> is not closed");
      } else {
        node.content().add(in.text());
      }
    }
  }

  private void attribute(
      String name,
      Node.Attribute value,
      Map<String, String> spaces,
      Map<String, Node.Attribute> kept) {
    String local = local(name);
    if (name.equals("xmlns") || name.startsWith("xmlns:")) {
      return;
    }
    boolean plain = local.equals(name);
    String space = plain ? "" : space(name, spaces, value.offset());
    boolean link = local.equals("href") && (plain || Dangers.XLINK.equals(space));
    Dangers.look(local, link, value, complaints);
    if (plain || link) {
      kept.put(local, value);
    }
  }

  private static String local(String name) {
    return name.substring(name.indexOf(':') + 1);
  }

  private static String space(String name, Map<String, String> spaces, int offset) {
    int colon = name.indexOf(':');
    String prefix = colon < 0 ? "" : name.substring(0, colon);
    String space = spaces.get(prefix);
    if (space == null && colon >= 0) {
      throw new Scanner.Malformed(
          offset, "not well-formed XML: the prefix " + prefix + " is not declared");
    }
    return space;
  }
}
