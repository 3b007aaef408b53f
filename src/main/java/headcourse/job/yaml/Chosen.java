package headcourse.job.yaml;

import java.util.ArrayList;
import java.util.List;
import org.yaml.snakeyaml.DumperOptions.FlowStyle;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;

/**
 * The nodes of a job with the settings of a choice, {@code chosen:} beside {@code choose:}, laid
 * over the head that they belong to, and its joints over the job's setting. Every value keeps its
 * place in the file. What else the file says of the head stays, so that what was to choose from can
 * be found again by leaving the choice out.
 */
final class Chosen {
  /** The keys that set the joints of all heads. */
  static final List<String> JOINTS = List.of("joints", "joint");

  /** Keys of a head that are not one shape's own. */
  private static final List<String> ANY =
      List.of("shape", "height", "key", "stones", "bearing", "clear", "soffit", "seat");

  private Chosen() {}

  /** The root with the settings of every choice laid over it. */
  static MappingNode over(MappingNode root) {
    if (!(Nodes.value(root, "openings") instanceof SequenceNode list)
        || list.getValue().stream().noneMatch(o -> settings(o) != null)) {
      return root;
    }
    MappingNode setting = Nodes.value(root, "setting") instanceof MappingNode m ? m : null;
    List<Node> openings = new ArrayList<>();
    for (Node o : list.getValue()) {
      MappingNode chosen = settings(o);
      openings.add(chosen == null ? o : opening((MappingNode) o, chosen));
      for (NodeTuple t : chosen == null ? List.<NodeTuple>of() : chosen.getValue()) {
        if (JOINTS.contains(Nodes.name(t))
            && (setting != null || Nodes.value(root, "setting") == null)) {
          setting = put(setting == null ? empty(chosen) : setting, t);
        }
      }
    }
    MappingNode with =
        put(
            root,
            tuple(
                root,
                "openings",
                new SequenceNode(
                    Tag.SEQ,
                    true,
                    openings,
                    list.getStartMark(),
                    list.getEndMark(),
                    list.getFlowStyle())));
    return setting == null ? with : put(with, tuple(with, "setting", setting));
  }

  private static MappingNode opening(MappingNode opening, MappingNode chosen) {
    Node was = Nodes.value(opening, "head");
    if (was != null && !(was instanceof MappingNode)) {
      return opening;
    }
    MappingNode head = was == null ? empty(chosen) : (MappingNode) was;
    if (other(head, chosen)) {
      List<NodeTuple> kept =
          head.getValue().stream().filter(t -> ANY.contains(Nodes.name(t))).toList();
      head = mapping(head, kept);
    }
    for (NodeTuple t : chosen.getValue()) {
      if (JOINTS.contains(Nodes.name(t))) {
        continue;
      }
      boolean stones =
          Nodes.name(t).equals("stones")
              && t.getValueNode() instanceof MappingNode
              && Nodes.value(head, "stones") instanceof MappingNode;
      head = put(head, stones ? new NodeTuple(t.getKeyNode(), stones(head, t)) : t);
    }
    return put(opening, tuple(opening, "head", head));
  }

  private static MappingNode stones(MappingNode head, NodeTuple chosen) {
    MappingNode stones = (MappingNode) Nodes.value(head, "stones");
    for (NodeTuple t : ((MappingNode) chosen.getValueNode()).getValue()) {
      stones = put(stones, t);
    }
    return stones;
  }

  /** Whether the choice is of another shape than the head, whose own keys then don't count. */
  private static boolean other(MappingNode head, MappingNode chosen) {
    Node now = Nodes.value(chosen, "shape");
    Node was = Nodes.value(head, "shape");
    return now instanceof ScalarNode n
        && !n.getValue().equals(was instanceof ScalarNode w ? w.getValue() : "soldier");
  }

  /** The settings of an opening's choice, or null. */
  private static MappingNode settings(Node opening) {
    return opening instanceof MappingNode o && Nodes.value(o, "chosen") instanceof MappingNode m
        ? m
        : null;
  }

  private static NodeTuple tuple(MappingNode around, String key, Node value) {
    for (NodeTuple t : around.getValue()) {
      if (Nodes.name(t).equals(key)) {
        return new NodeTuple(t.getKeyNode(), value);
      }
    }
    return new NodeTuple(
        new ScalarNode(
            Tag.STR,
            true,
            key,
            value.getStartMark(),
            value.getEndMark(),
            org.yaml.snakeyaml.DumperOptions.ScalarStyle.PLAIN),
        value);
  }

  private static MappingNode put(MappingNode node, NodeTuple tuple) {
    List<NodeTuple> tuples = new ArrayList<>();
    boolean there = false;
    for (NodeTuple t : node.getValue()) {
      boolean same = Nodes.name(t).equals(Nodes.name(tuple));
      tuples.add(same ? tuple : t);
      there |= same;
    }
    if (!there) {
      tuples.add(tuple);
    }
    return mapping(node, tuples);
  }

  private static MappingNode empty(Node where) {
    return mapping(where, List.of());
  }

  private static MappingNode mapping(Node where, List<NodeTuple> tuples) {
    return new MappingNode(
        Tag.MAP, true, tuples, where.getStartMark(), where.getEndMark(), FlowStyle.BLOCK);
  }
}
