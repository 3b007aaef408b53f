package headcourse.job.yaml;

import headcourse.diag.Span;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.composer.Composer;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;
import org.yaml.snakeyaml.resolver.Resolver;

/** Turns a text into a graph of nodes that is safe to walk: no cycles, no tags, no doubled keys. */
final class YamlGraph {
  private static final Set<Tag> PLAIN =
      Set.of(
          Tag.STR,
          Tag.INT,
          Tag.FLOAT,
          Tag.BOOL,
          Tag.NULL,
          Tag.TIMESTAMP,
          Tag.MERGE,
          Tag.SEQ,
          Tag.MAP);

  private final JobText text;
  private final Problems problems;
  private final Set<Node> done = Collections.newSetFromMap(new IdentityHashMap<>());
  private final Set<Node> open = Collections.newSetFromMap(new IdentityHashMap<>());

  private YamlGraph(JobText text, Problems problems) {
    this.text = text;
    this.problems = problems;
  }

  /** Takes every scalar for a text: what it means is for our own readers to say. */
  private static final class AsText extends Resolver {
    @Override
    protected void addImplicitResolvers() {
      // None, and so none of their patterns has to be put together.
    }
  }

  /** The root mapping, or none where a problem forbids to read on. */
  static Optional<MappingNode> of(JobText text, Problems problems) {
    YamlGraph graph = new YamlGraph(text, problems);
    Node root = graph.compose();
    if (root == null) {
      return Optional.empty();
    }
    if (!(root instanceof MappingNode map)) {
      if (!new Slips(text, problems).tell(1, "")) {
        problems.error(
            text.of(root), "a job file is keys with values; begin it with units: and openings:");
      }
      return Optional.empty();
    }
    return graph.walk(root) ? Optional.of(map) : Optional.empty();
  }

  private Node compose() {
    LoaderOptions options = new LoaderOptions();
    options.setAllowDuplicateKeys(false);
    options.setAllowRecursiveKeys(false);
    options.setMaxAliasesForCollections(20);
    options.setNestingDepthLimit(30);
    options.setCodePointLimit(JobText.MOST_BYTES + 1);
    ParserImpl parser = new ParserImpl(new StreamReader(text.text()), options);
    try {
      Node root = new Composer(parser, new AsText(), options).getSingleNode();
      if (root == null) {
        problems.error(
            text.start(),
            "the file is empty; a job has at least stone: and openings:",
            "headcourse new writes one to start from");
      }
      return root;
    } catch (MarkedYAMLException e) {
      Span span = text.of(e.getProblemMark());
      String problem = e.getProblem() == null ? "" : e.getProblem();
      if (!new Slips(text, problems).tell(span.line(), problem)) {
        problems.error(span, said(problem));
      }
    } catch (YAMLException e) {
      problems.error(reached(parser), said(e.getMessage()));
    } catch (RuntimeException e) {
      // The library lets bare exceptions through for some broken escapes.
      problems.error(reached(parser), "not YAML: a broken escape or character");
    }
    return null;
  }

  private static String said(String message) {
    String m = message == null ? "unreadable" : message.lines().findFirst().orElse("unreadable");
    if (m.startsWith("Nesting Depth")) {
      return "nested too deep; a job needs no more than 30 levels";
    }
    if (m.startsWith("Number of aliases")) {
      return "too many aliases (*name); write the values out";
    }
    if (m.contains("single document") || m.contains("another document")) {
      return "a second document (---) in the file; a job file holds one";
    }
    return "not YAML: " + m;
  }

  private Span reached(ParserImpl parser) {
    try {
      return text.of(parser.peekEvent().getStartMark());
    } catch (RuntimeException e) {
      return text.start();
    }
  }

  private boolean walk(Node node) {
    if (open.contains(node)) {
      problems.error(text.of(node), "this anchor holds itself; write the value out");
      return false;
    }
    if (!done.add(node)) {
      return true;
    }
    boolean good = tag(node);
    if (node instanceof ScalarNode scalar && runsOn(scalar)) {
      // Where the quotes around a length are also its marks, they close in another line.
      good &= !new Slips(text, problems).quotes(text.of(node).line());
    }
    open.add(node);
    if (node instanceof SequenceNode list) {
      for (Node n : list.getValue()) {
        good &= walk(n);
      }
    } else if (node instanceof MappingNode map) {
      good &= mapping(map);
    }
    open.remove(node);
    return good;
  }

  private static boolean runsOn(ScalarNode scalar) {
    boolean quoted =
        scalar.getScalarStyle() == ScalarStyle.SINGLE_QUOTED
            || scalar.getScalarStyle() == ScalarStyle.DOUBLE_QUOTED;
    return quoted
        && scalar.getStartMark().getLine() < scalar.getEndMark().getLine()
        && scalar.getValue().matches("(?s)[0-9].*");
  }

  private boolean tag(Node node) {
    if (PLAIN.contains(node.getTag())
        || node.getTag().getValue().equals("tag:yaml.org,2002:value")) {
      return true;
    }
    problems.error(text.of(node), "a tag (!...) has no meaning in a job; leave it out");
    return false;
  }

  private boolean mapping(MappingNode map) {
    boolean good = true;
    Map<String, Span> seen = new LinkedHashMap<>();
    int doubled = 0;
    for (NodeTuple t : map.getValue()) {
      if (doubled > 100) {
        return false;
      }
      good &= walk(t.getKeyNode());
      good &= walk(t.getValueNode());
      if (!(t.getKeyNode() instanceof ScalarNode key)) {
        problems.error(text.of(t.getKeyNode()), "a key must be a word");
        continue;
      }
      Span before = seen.putIfAbsent(key.getValue(), text.of(key));
      if (before != null) {
        doubled++;
        problems.error(
            text.of(key),
            "key " + Reading.quoted(key.getValue()) + " stands here a second time; keep one",
            "the first is in line " + before.line());
      }
    }
    return good;
  }
}
