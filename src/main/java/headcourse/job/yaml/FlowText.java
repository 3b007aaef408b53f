package headcourse.job.yaml;

import java.util.List;
import java.util.Optional;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/** Values as one line of a job file has them. */
final class FlowText {
  private static final String FIRST = "!&*|>@`\"'%#{}[],";
  private static final String INSIDE = ",[]{}";

  private FlowText() {}

  /** A node in one line. */
  static String of(Node node) {
    if (node instanceof SequenceNode list) {
      return "[" + String.join(", ", list.getValue().stream().map(FlowText::of).toList()) + "]";
    }
    if (node instanceof MappingNode map) {
      List<String> parts =
          map.getValue().stream()
              .map(t -> of(t.getKeyNode()) + ": " + of(t.getValueNode()))
              .toList();
      return "{" + String.join(", ", parts) + "}";
    }
    return scalar(((ScalarNode) node).getValue(), true);
  }

  /**
   * What to write for a value: a list or a mapping as it is, else a text, in quotes where it would
   * be read as something else.
   *
   * @param value one line
   * @param inside whether it stands between braces or brackets
   */
  static String written(String value, boolean inside) {
    return collection(value).isPresent() ? value : scalar(value, inside);
  }

  /** The list or mapping that a value is; none where it is a text. */
  static Optional<Node> collection(String value) {
    boolean opens = value.startsWith("{") || value.startsWith("[");
    if (!opens || !(value.endsWith("}") || value.endsWith("]"))) {
      return Optional.empty();
    }
    Problems problems = new Problems();
    return YamlGraph.of(new JobText("", "value: " + value), problems)
        .filter(m -> m.getValue().size() == 1 && !problems.any())
        .map(m -> m.getValue().get(0).getValueNode())
        .filter(n -> !(n instanceof ScalarNode));
  }

  private static String scalar(String text, boolean inside) {
    return plain(text, inside) ? text : "'" + text.replace("'", "''") + "'";
  }

  private static boolean plain(String text, boolean inside) {
    if (text.isEmpty() || !text.equals(text.strip()) || FIRST.indexOf(text.charAt(0)) >= 0) {
      return false;
    }
    boolean item = text.charAt(0) == '-' && (text.length() == 1 || text.charAt(1) == ' ');
    if (item || text.charAt(0) == '?' || text.charAt(0) == ':') {
      return false;
    }
    boolean parts = text.contains(": ") || text.contains(" #") || text.endsWith(":");
    boolean dashes = text.startsWith("---") || text.startsWith("...");
    return !parts
        && !dashes
        && !(inside && text.chars().anyMatch(c -> INSIDE.indexOf(c) >= 0 || c == ':'));
  }
}
