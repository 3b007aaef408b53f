package headcourse.sheet.frame;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * Reads the markup of a frame file into a tree, and refuses whatever could reach out of the file,
 * run, or blow up.
 */
final class MarkupReader {
  private static final String SVG = "http://www.w3.org/2000/svg";
  private static final String XLINK = "http://www.w3.org/1999/xlink";
  private static final int MOST_ELEMENTS = 5000;
  private static final int DEEPEST = 32;

  private final String text;
  private final Complaints complaints;
  private final TagFinder tags;
  private int elements;
  private int depth;

  MarkupReader(String text, Complaints complaints) {
    this.text = text;
    this.complaints = complaints;
    tags = new TagFinder(text);
  }

  /** The root, or null where something was refused. */
  Node read() {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLInputFactory.IS_REPLACING_ENTITY_REFERENCES, false);
    factory.setXMLResolver(
        (id, system, base, namespace) -> {
          throw new XMLStreamException("reaches out of the file");
        });
    try {
      XMLStreamReader xml = factory.createXMLStreamReader(new StringReader(text));
      if (!encodingKnown(xml.getCharacterEncodingScheme())) {
        complaints.error(0, "the frame is not in UTF-8", "save it as UTF-8");
        return null;
      }
      return root(xml);
    } catch (XMLStreamException e) {
      int at = e.getLocation() == null ? tags.start() : e.getLocation().getCharacterOffset();
      complaints.error(at, "not well-formed XML: " + reason(e.getMessage()));
      return null;
    }
  }

  private static boolean encodingKnown(String declared) {
    String e = declared == null ? "UTF-8" : declared.toUpperCase(Locale.ROOT);
    return e.equals("UTF-8") || e.equals("US-ASCII");
  }

  /** The parser's message, without the place that it puts before it. */
  private static String reason(String message) {
    int at = message.indexOf("Message: ");
    return (at < 0 ? message : message.substring(at + 9)).replace('\n', ' ');
  }

  private Node root(XMLStreamReader xml) throws XMLStreamException {
    while (xml.hasNext()) {
      int event = xml.next();
      if (event == XMLStreamConstants.DTD) {
        tags.next();
        complaints.error(
            tags.start(), "a document type is refused in a frame", "delete the <!DOCTYPE …> line");
        return null;
      }
      if (event == XMLStreamConstants.START_ELEMENT) {
        return element(xml);
      }
    }
    return null;
  }

  /** Reads an element from its start to its end; null where it is refused. */
  private Node element(XMLStreamReader xml) throws XMLStreamException {
    tags.next();
    Node node = head(xml);
    if (++elements > MOST_ELEMENTS || ++depth > DEEPEST) {
      complaints.error(
          node.offset(),
          depth > DEEPEST
              ? "nested deeper than " + DEEPEST + " elements"
              : "more than " + MOST_ELEMENTS + " elements",
          "simplify the frame");
      return null;
    }
    while (true) {
      int event = xml.next();
      if (event == XMLStreamConstants.START_ELEMENT) {
        Node child = element(xml);
        if (child == null) {
          return null;
        }
        node.content().add(child);
      } else if (event == XMLStreamConstants.END_ELEMENT) {
        depth--;
        return node;
      } else if (event == XMLStreamConstants.CHARACTERS || event == XMLStreamConstants.CDATA) {
        node.content().add(xml.getText());
      } else if (event == XMLStreamConstants.ENTITY_REFERENCE) {
        String name = "&" + xml.getLocalName() + ";";
        complaints.error(
            text.indexOf(name, tags.start()), "an entity is refused in a frame: " + name);
        return null;
      }
    }
  }

  private Node head(XMLStreamReader xml) {
    int start = tags.start();
    boolean ours = SVG.equals(xml.getNamespaceURI());
    String name = ours ? xml.getLocalName() : "";
    if (name.equals("script") || xml.getLocalName().equalsIgnoreCase("script")) {
      complaints.error(start, "a script is refused in a frame");
    }
    Map<String, Node.Attribute> attributes = new HashMap<>();
    for (int i = 0; i < xml.getAttributeCount(); i++) {
      String local = xml.getAttributeLocalName(i);
      String space = xml.getAttributeNamespace(i);
      String value = xml.getAttributeValue(i);
      int at = tags.attribute(local);
      boolean link = local.equals("href") && (space == null || space.equals(XLINK));
      refuse(local, link, value, at);
      if (ours && (link || space == null || space.isEmpty())) {
        attributes.put(local, new Node.Attribute(value, at));
      }
    }
    return new Node(name, attributes, new ArrayList<>(), start);
  }

  private void refuse(String name, boolean link, String value, int at) {
    String low = value.toLowerCase(Locale.ROOT);
    if (name.toLowerCase(Locale.ROOT).startsWith("on")) {
      complaints.error(at, "a script is refused in a frame: attribute " + name);
    } else if (link && !low.startsWith("data:") && !low.startsWith("#")) {
      complaints.error(
          at,
          "a reference out of the file is refused: " + shown(value),
          "embed the picture: href=\"data:image/png;base64,…\"");
    } else if (name.equals("base")) {
      complaints.error(at, "a base for references is refused in a frame");
    }
    for (int i = low.indexOf("url("); i >= 0; i = low.indexOf("url(", i + 4)) {
      String target = low.substring(i + 4).strip();
      if (!target.startsWith("#") && !target.startsWith("'#") && !target.startsWith("\"#")) {
        complaints.error(at, "a reference out of the file is refused: " + shown(value));
        return;
      }
    }
  }

  private static String shown(String value) {
    return value.length() <= 60 ? value : value.substring(0, 60) + "…";
  }
}
