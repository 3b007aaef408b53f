package headcourse.job.yaml;

import headcourse.job.Change;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.yaml.snakeyaml.DumperOptions.FlowStyle;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;

/**
 * A file's nodes with a value written in. What lies on the way to it is copied, the rest is shared;
 * what is new stands where that stood which it takes the place of.
 */
final class Rewritten {
  private Rewritten() {}

  static Node with(Node root, Change change) {
    return with(root, JobOutline.steps(change.path()), change.value());
  }

  /** With a value at the end of some steps; without the last where it is null. */
  static Node with(Node root, List<String> steps, String value) {
    return put(root, steps, value);
  }

  private static Node put(Node node, List<String> keys, String value) {
    if (keys.isEmpty()) {
      return value(node, value);
    }
    String key = keys.get(0);
    List<String> rest = keys.subList(1, keys.size());
    if (key.startsWith("[")) {
      SequenceNode list = (SequenceNode) node;
      List<Node> items = new ArrayList<>(list.getValue());
      int at = Integer.parseInt(key.substring(1));
      items.set(at, put(items.get(at), rest, value));
      return new SequenceNode(
          Tag.SEQ, true, items, node.getStartMark(), node.getEndMark(), list.getFlowStyle());
    }
    // A key alone, as in "key: none", gives way to a mapping.
    List<NodeTuple> tuples =
        new ArrayList<>(node instanceof MappingNode m ? m.getValue() : List.of());
    int at = 0;
    while (at < tuples.size() && !names(tuples.get(at), key)) {
      at++;
    }
    boolean there = at < tuples.size();
    if (value == null && rest.isEmpty()) {
      if (there) {
        tuples.remove(at);
      }
    } else {
      Node name = there ? tuples.get(at).getKeyNode() : scalar(node, key);
      Node old = there ? tuples.get(at).getValueNode() : node(node, List.of());
      NodeTuple tuple = new NodeTuple(name, put(old, rest, value));
      if (there) {
        tuples.set(at, tuple);
      } else {
        tuples.add(tuple);
      }
    }
    return node(node, tuples);
  }

  private static boolean names(NodeTuple tuple, String key) {
    return tuple.getKeyNode() instanceof ScalarNode s && s.getValue().equals(key);
  }

  private static Node node(Node where, List<NodeTuple> tuples) {
    return new MappingNode(
        Tag.MAP, true, tuples, where.getStartMark(), where.getEndMark(), FlowStyle.BLOCK);
  }

  private static Node scalar(Node where, String text) {
    return new ScalarNode(
        Tag.STR, true, text, where.getStartMark(), where.getEndMark(), ScalarStyle.PLAIN);
  }

  private static Node value(Node where, String text) {
    if (!text.startsWith("{") && !text.startsWith("[")) {
      return scalar(where, text);
    }
    Problems problems = new Problems();
    String line = "value: " + text;
    Optional<MappingNode> read =
        JobText.decode("", line.getBytes(StandardCharsets.UTF_8), problems)
            .flatMap(t -> YamlGraph.of(t, problems));
    return at(where, read.orElseThrow().getValue().get(0).getValueNode());
  }

  /** A copy that stands elsewhere. */
  private static Node at(Node where, Node node) {
    if (node instanceof SequenceNode list) {
      List<Node> items = list.getValue().stream().map(n -> at(where, n)).toList();
      return new SequenceNode(
          Tag.SEQ, true, items, where.getStartMark(), where.getEndMark(), FlowStyle.FLOW);
    }
    if (node instanceof MappingNode map) {
      return node(
          where,
          map.getValue().stream()
              .map(t -> new NodeTuple(at(where, t.getKeyNode()), at(where, t.getValueNode())))
              .toList());
    }
    return scalar(where, ((ScalarNode) node).getValue());
  }
}
