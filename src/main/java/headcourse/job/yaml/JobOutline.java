package headcourse.job.yaml;

import headcourse.diag.Outcome;
import headcourse.diag.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/** What a job file says at which place, whether or not it makes a job. */
public final class JobOutline {
  private final JobText text;
  private final MappingNode root;

  private JobOutline(JobText text, MappingNode root) {
    this.text = text;
    this.root = root;
  }

  /**
   * The outline of a file.
   *
   * @param name the file's name as the user gave it
   * @param bytes its content
   * @return the outline, or why the file can't be read as YAML at all
   */
  public static Outcome<JobOutline> of(String name, byte[] bytes) {
    Problems problems = new Problems();
    Optional<JobText> text = JobText.decode(name, bytes, problems);
    Optional<MappingNode> root = text.flatMap(t -> YamlGraph.of(t, problems));
    return root.isEmpty() || problems.any()
        ? Outcome.failed(problems.inOrder(name))
        : Outcome.of(new JobOutline(text.get(), root.get()), List.of());
  }

  JobText text() {
    return text;
  }

  MappingNode root() {
    return root;
  }

  /**
   * What stands at a place, lists and mappings in one line.
   *
   * @param path as in {@code openings[0].head.stones.max}
   * @return the value; empty where there is none
   */
  public Optional<String> value(String path) {
    return Optional.ofNullable(node(steps(path)))
        .map(n -> n instanceof ScalarNode s ? s.getValue() : FlowText.of(n))
        .filter(v -> !v.isEmpty());
  }

  /** How many items a list has; 0 where there is none. */
  public int size(String path) {
    return node(steps(path)) instanceof SequenceNode list ? list.getValue().size() : 0;
  }

  /** The keys that stand directly under a place, in the file's order. */
  public List<String> keys(String path) {
    return node(steps(path)) instanceof MappingNode m
        ? m.getValue().stream().map(Nodes::name).toList()
        : List.of();
  }

  /** The path of the innermost key or value that stands where a message points; empty for none. */
  public String at(Span span) {
    if (span == null || !span.source().name().equals(text.start().source().name())) {
      return "";
    }
    return at(root, "", text.index(span.line(), span.column()));
  }

  private static String at(Node node, String path, int index) {
    if (node instanceof MappingNode map) {
      for (NodeTuple t : map.getValue()) {
        Node value = t.getValueNode();
        int from = t.getKeyNode().getStartMark().getIndex();
        if (index >= from && index < Math.max(end(value), t.getKeyNode().getEndMark().getIndex())) {
          return at(value, path.isEmpty() ? Nodes.name(t) : path + "." + Nodes.name(t), index);
        }
      }
    } else if (node instanceof SequenceNode list) {
      for (int i = 0; i < list.getValue().size(); i++) {
        Node item = list.getValue().get(i);
        if (index >= item.getStartMark().getIndex() && index < end(item)) {
          return at(item, path + "[" + i + "]", index);
        }
      }
    }
    return path;
  }

  /** Where what a node says ends, comments after it left out. */
  static int end(Node node) {
    int end = node.getStartMark().getIndex();
    if (node instanceof ScalarNode || flow(node)) {
      return Math.max(end, node.getEndMark().getIndex());
    }
    if (node instanceof SequenceNode list) {
      for (Node n : list.getValue()) {
        end = Math.max(end, end(n));
      }
    } else if (node instanceof MappingNode map) {
      for (NodeTuple t : map.getValue()) {
        end =
            Math.max(end, Math.max(t.getKeyNode().getEndMark().getIndex(), end(t.getValueNode())));
      }
    }
    return end;
  }

  static boolean flow(Node node) {
    return node instanceof org.yaml.snakeyaml.nodes.CollectionNode<?> c
        && c.getFlowStyle() == org.yaml.snakeyaml.DumperOptions.FlowStyle.FLOW;
  }

  /** The node at the end of some steps, or null. */
  Node node(List<String> steps) {
    Node at = root;
    for (String step : steps) {
      if (step.startsWith("[") && at instanceof SequenceNode list) {
        int i = Integer.parseInt(step.substring(1));
        at = i < list.getValue().size() ? list.getValue().get(i) : null;
      } else {
        at = at instanceof MappingNode map ? Nodes.value(map, step) : null;
      }
    }
    return at;
  }

  /** {@code openings[0].width} as {@code openings}, {@code [0}, {@code width}. */
  static List<String> steps(String path) {
    List<String> steps = new ArrayList<>();
    for (String part : path.isEmpty() ? new String[0] : path.split("\\.")) {
      int bracket = part.indexOf('[');
      steps.add(bracket < 0 ? part : part.substring(0, bracket));
      while (bracket >= 0) {
        int close = part.indexOf(']', bracket);
        steps.add(part.substring(bracket, close));
        bracket = part.indexOf('[', close);
      }
    }
    return steps;
  }
}
