package headcourse.job.yaml;

import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;

/** Keys and values of mappings that were not read yet. */
final class Nodes {
  private Nodes() {}

  /** A key, or nothing where it is no text. */
  static String name(NodeTuple t) {
    return t.getKeyNode() instanceof ScalarNode s ? s.getValue() : "";
  }

  /** The first value of a key, or null. */
  static Node value(MappingNode node, String key) {
    for (NodeTuple t : node.getValue()) {
      if (name(t).equals(key)) {
        return t.getValueNode();
      }
    }
    return null;
  }
}
