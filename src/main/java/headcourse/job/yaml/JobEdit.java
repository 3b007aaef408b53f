package headcourse.job.yaml;

import headcourse.diag.Diagnostic;
import headcourse.diag.Outcome;
import headcourse.job.Change;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/**
 * Writes values into the text of a job file as a careful hand would: comments, order and all other
 * lines stay. A key that is written anew takes the place of a line that has it as a comment, or
 * stands in the order of the table; one that is left out becomes a comment. Each edit is read back:
 * what would change anything else is refused.
 */
public final class JobEdit {
  /** A longer value helps nobody. */
  private static final int LONGEST = 4000;

  private final KeyTable keys;

  /** Edits by the order of a table. */
  public JobEdit(KeyTable keys) {
    this.keys = keys;
  }

  /**
   * The file with all changes in it.
   *
   * @param name the file's name as the user gave it
   * @param bytes its content
   * @param changes what is written, one after another; a value of null or blank leaves the key out
   * @return the new content; or why it can't be written so, and then nothing is
   */
  public Outcome<byte[]> of(String name, byte[] bytes, List<Change> changes) {
    byte[] now = bytes;
    for (Change c : changes) {
      Outcome<JobOutline> read = JobOutline.of(name, now);
      if (read.value().isEmpty()) {
        return Outcome.failed(read.diagnostics());
      }
      JobOutline outline = read.value().get();
      Optional<String> text = one(outline, c);
      if (text.isEmpty()) {
        return Outcome.failed(
            List.of(
                Diagnostic.error(
                    outline.text().of(nearest(outline, c.path())),
                    "can't write " + c.path() + " here without touching other lines",
                    "write it into the file itself")));
      }
      now = (bom(now) ? "\uFEFF" + text.get() : text.get()).getBytes(StandardCharsets.UTF_8);
    }
    return Outcome.of(now, List.of());
  }

  private static boolean bom(byte[] bytes) {
    return bytes.length > 2
        && bytes[0] == (byte) 0xEF
        && bytes[1] == (byte) 0xBB
        && bytes[2] == (byte) 0xBF;
  }

  private static Node nearest(JobOutline outline, String path) {
    List<String> steps = JobOutline.steps(path);
    for (int n = steps.size(); n > 0; n--) {
      Node node = outline.node(steps.subList(0, n));
      if (node != null) {
        return node;
      }
    }
    return outline.root();
  }

  /** The text with one change in it; empty where there is no safe way. */
  private Optional<String> one(JobOutline outline, Change change) {
    String value = change.value() == null ? "" : change.value().strip();
    if (value.length() > LONGEST || value.chars().anyMatch(Character::isISOControl)) {
      return Optional.empty();
    }
    if (outline.value(change.path()).orElse("").equals(value)) {
      return Optional.of(outline.text().text());
    }
    List<String> steps = JobOutline.steps(change.path());
    if (value.isEmpty()) {
      List<String> whole = emptied(outline, steps);
      return Optional.of(new JobLines(outline.text()).without(outline, whole))
          .filter(t -> holds(outline, t, whole, null));
    }
    return candidates(outline, steps, value).stream()
        .filter(t -> holds(outline, t, steps, value))
        .findFirst();
  }

  private List<String> candidates(JobOutline outline, List<String> steps, String value) {
    int known = steps.size();
    while (known > 0 && outline.node(steps.subList(0, known)) == null) {
      known--;
    }
    JobLines lines = new JobLines(outline.text());
    Node node = outline.node(steps.subList(0, known));
    if (known == steps.size()) {
      return List.of(lines.replaced(outline, steps, node, value));
    }
    List<String> rest = steps.subList(known, steps.size());
    if (rest.stream().anyMatch(s -> s.startsWith("["))) {
      return List.of();
    }
    String nested = FlowText.written(value, rest.size() > 1 || JobOutline.flow(node));
    for (int i = rest.size() - 1; i > 0; i--) {
      nested = "{" + rest.get(i) + ": " + nested + "}";
    }
    if (node instanceof ScalarNode) {
      String all = "{" + rest.get(0) + ": " + FlowText.written(nested, true) + "}";
      return List.of(lines.replaced(outline, steps.subList(0, known), node, all));
    }
    if (!(node instanceof MappingNode map)) {
      return List.of();
    }
    String general = String.join(".", steps.subList(0, known)).replaceAll("\\.\\[[0-9]+", "[]");
    return lines.with(map, rest.get(0), nested, keys.under(general));
  }

  /** The steps to what is left out: with a mapping's only key the mapping goes. */
  private static List<String> emptied(JobOutline outline, List<String> steps) {
    List<String> whole = steps;
    while (whole.size() > 1) {
      List<String> around = whole.subList(0, whole.size() - 1);
      boolean only = outline.node(around) instanceof MappingNode m && m.getValue().size() == 1;
      if (!only || around.get(around.size() - 1).startsWith("[")) {
        break;
      }
      whole = around;
    }
    return whole;
  }

  /** Whether a text has the value in its place and is otherwise as before. */
  private static boolean holds(JobOutline before, String text, List<String> steps, String value) {
    Outcome<JobOutline> read =
        JobOutline.of(before.text().start().source().name(), text.getBytes(StandardCharsets.UTF_8));
    if (read.value().isEmpty()) {
      return false;
    }
    JobOutline after = read.value().get();
    Node written = after.node(steps);
    if (value == null) {
      return written == null && same(cut(before.root(), steps), cut(after.root(), steps));
    }
    Optional<Node> collection = FlowText.collection(value);
    boolean there =
        collection.isPresent()
            ? written != null && same(collection.get(), written)
            : written instanceof ScalarNode s && s.getValue().equals(value);
    return there && same(set(before.root(), steps), set(after.root(), steps));
  }

  private static Node cut(Node root, List<String> steps) {
    return Rewritten.with(root, steps, null);
  }

  private static Node set(Node root, List<String> steps) {
    return Rewritten.with(root, steps, "x");
  }

  /** Whether two nodes say the same; the order of keys says nothing. */
  private static boolean same(Node a, Node b) {
    if (a instanceof ScalarNode s) {
      return b instanceof ScalarNode t && s.getValue().equals(t.getValue());
    }
    if (a instanceof SequenceNode l) {
      List<Node> mine = l.getValue();
      List<Node> its = b instanceof SequenceNode m ? m.getValue() : List.of();
      boolean alike = b instanceof SequenceNode && mine.size() == its.size();
      for (int i = 0; alike && i < mine.size(); i++) {
        alike = same(mine.get(i), its.get(i));
      }
      return alike;
    }
    MappingNode map = (MappingNode) a;
    if (!(b instanceof MappingNode other) || map.getValue().size() != other.getValue().size()) {
      return false;
    }
    for (NodeTuple t : map.getValue()) {
      Node its = Nodes.value(other, Nodes.name(t));
      if (its == null || !same(t.getValueNode(), its)) {
        return false;
      }
    }
    return true;
  }
}
