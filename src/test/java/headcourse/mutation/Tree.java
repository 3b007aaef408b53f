package headcourse.mutation;

import java.util.ArrayList;
import java.util.List;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.composer.Composer;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;
import org.yaml.snakeyaml.resolver.Resolver;

/** A job file as values that can be changed and written again; keys may stand twice. */
sealed interface Tree {
  /** A copy. */
  Tree copy();

  /** A text. */
  final class Leaf implements Tree {
    String text;

    Leaf(String text) {
      this.text = text;
    }

    @Override
    public Leaf copy() {
      return new Leaf(text);
    }
  }

  /** A list. */
  final class Items implements Tree {
    final List<Tree> items = new ArrayList<>();

    @Override
    public Items copy() {
      Items c = new Items();
      items.forEach(i -> c.items.add(i.copy()));
      return c;
    }
  }

  /** Keys with values. */
  final class Fields implements Tree {
    final List<String> keys = new ArrayList<>();
    final List<Tree> values = new ArrayList<>();

    @Override
    public Fields copy() {
      Fields c = new Fields();
      c.keys.addAll(keys);
      values.forEach(v -> c.values.add(v.copy()));
      return c;
    }

    void put(String key, Tree value) {
      int i = keys.indexOf(key);
      if (i < 0) {
        keys.add(key);
        values.add(value);
      } else {
        values.set(i, value);
      }
    }
  }

  /** Reads a file, or gives null where it is none. */
  static Fields read(String text) {
    try {
      LoaderOptions options = new LoaderOptions();
      Node root =
          new Composer(new ParserImpl(new StreamReader(text), options), new Resolver(), options)
              .getSingleNode();
      return root != null && of(root, 0) instanceof Fields f ? f : null;
    } catch (RuntimeException e) {
      return null;
    }
  }

  private static Tree of(Node node, int deep) {
    if (deep > 30) {
      return new Leaf("");
    }
    if (node instanceof MappingNode m) {
      Fields f = new Fields();
      for (NodeTuple t : m.getValue()) {
        f.keys.add(t.getKeyNode() instanceof ScalarNode k ? k.getValue() : "?");
        f.values.add(of(t.getValueNode(), deep + 1));
      }
      return f;
    }
    if (node instanceof SequenceNode s) {
      Items l = new Items();
      s.getValue().forEach(n -> l.items.add(of(n, deep + 1)));
      return l;
    }
    return new Leaf(((ScalarNode) node).getValue());
  }

  /** The file's text. */
  static String write(Fields root) {
    StringBuilder out = new StringBuilder();
    block(root, 0, out);
    return out.toString();
  }

  private static void block(Fields f, int in, StringBuilder out) {
    for (int i = 0; i < f.keys.size(); i++) {
      out.append("  ".repeat(in)).append(scalar(f.keys.get(i))).append(':');
      if (f.values.get(i) instanceof Fields g && !g.keys.isEmpty() && in < 3) {
        out.append('\n');
        block(g, in + 1, out);
      } else if (f.values.get(i) instanceof Items l && !l.items.isEmpty() && in < 3) {
        out.append('\n');
        for (Tree t : l.items) {
          out.append("  ".repeat(in + 1)).append("- ");
          flow(t, out);
          out.append('\n');
        }
      } else {
        out.append(' ');
        flow(f.values.get(i), out);
        out.append('\n');
      }
    }
  }

  private static void flow(Tree t, StringBuilder out) {
    if (t instanceof Leaf l) {
      out.append(scalar(l.text));
    } else if (t instanceof Items l) {
      out.append('[');
      for (int i = 0; i < l.items.size(); i++) {
        out.append(i > 0 ? ", " : "");
        flow(l.items.get(i), out);
      }
      out.append(']');
    } else if (t instanceof Fields f) {
      out.append('{');
      for (int i = 0; i < f.keys.size(); i++) {
        out.append(i > 0 ? ", " : "").append(scalar(f.keys.get(i))).append(": ");
        flow(f.values.get(i), out);
      }
      out.append('}');
    }
  }

  private static String scalar(String s) {
    if (s.matches("[\\p{L}\\p{N}°½][\\p{L}\\p{N} ./+'\"°½_-]*") && !s.endsWith(" ")) {
      return s;
    }
    StringBuilder q = new StringBuilder("\"");
    for (char c : s.toCharArray()) {
      if (c == '"' || c == '\\') {
        q.append('\\').append(c);
      } else if (c < 0x20 || c >= 0x7f && c < 0xa0) {
        q.append(String.format("\\x%02x", (int) c));
      } else {
        q.append(c);
      }
    }
    return q.append('"').toString();
  }
}
