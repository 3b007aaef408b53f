package headcourse.job.yaml;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;

/** The lines of a job file while a value is written into them. Places are code points. */
final class JobLines {
  private static final Pattern BLANK = Pattern.compile("[ \\t]*");

  private final String text;
  private final String end;

  JobLines(JobText text) {
    this.text = text.text();
    this.end = this.text.contains("\r\n") ? "\r\n" : "\n";
  }

  private int at(int point) {
    return text.offsetByCodePoints(0, point);
  }

  private int from(Node node) {
    return at(node.getStartMark().getIndex());
  }

  private int lineStart(int at) {
    int i = at;
    while (i > 0 && text.charAt(i - 1) != '\n' && text.charAt(i - 1) != '\r') {
      i--;
    }
    return i;
  }

  private int lineEnd(int at) {
    int i = at;
    while (i < text.length() && text.charAt(i) != '\n' && text.charAt(i) != '\r') {
      i++;
    }
    return i;
  }

  private int nextLine(int at) {
    int i = lineEnd(at);
    return i >= text.length() ? i : text.startsWith("\r\n", i) ? i + 2 : i + 1;
  }

  /** With another value in the place of a node. */
  String replaced(JobOutline outline, List<String> steps, Node node, String value) {
    List<String> around = steps.subList(0, steps.size() - 1);
    boolean inside = JobOutline.flow(outline.node(around));
    String written = FlowText.written(value, inside);
    int from = from(node);
    int to = at(JobOutline.end(node));
    boolean block =
        !(node instanceof org.yaml.snakeyaml.nodes.ScalarNode) && !JobOutline.flow(node);
    if (block) {
      // A list over several lines: its lines stay as comments below the new one.
      NodeTuple tuple = tuple(outline.node(around), steps.get(steps.size() - 1));
      int colon = text.indexOf(':', at(tuple.getKeyNode().getEndMark().getIndex())) + 1;
      int below = nextLine(colon);
      return text.substring(0, colon)
          + " "
          + written
          + text.substring(colon, below)
          + commented(below, to, column(from(tuple.getKeyNode())))
          + text.substring(to);
    }
    String gap = from > 0 && " \t".indexOf(text.charAt(from - 1)) < 0 ? " " : "";
    return text.substring(0, from)
        + gap
        + written
        + aligned(to, gap.length() + written.length() - (to - from));
  }

  /** What follows a value that has grown: a comment after it keeps its column where it can. */
  private String aligned(int to, int more) {
    Matcher blank = BLANK.matcher(text);
    blank.region(to, text.length());
    blank.lookingAt();
    int rest = blank.end();
    boolean comment = rest > to && rest < text.length() && text.charAt(rest) == '#';
    return comment
        ? " ".repeat(Math.max(1, rest - to - more)) + text.substring(rest)
        : text.substring(to);
  }

  /** Without a key of a mapping; its lines become comments. */
  String without(JobOutline outline, List<String> steps) {
    String key = steps.get(steps.size() - 1);
    Node around = outline.node(steps.subList(0, steps.size() - 1));
    NodeTuple tuple = around instanceof MappingNode m ? tuple(m, key) : null;
    if (tuple == null) {
      return text;
    }
    int from = from(tuple.getKeyNode());
    int to =
        at(
            Math.max(
                JobOutline.end(tuple.getValueNode()), tuple.getKeyNode().getEndMark().getIndex()));
    if (!JobOutline.flow(around)) {
      to = Math.max(to, text.indexOf(':', from) + 1);
      return text.substring(0, from) + commented(from, to, column(from)) + text.substring(to);
    }
    List<NodeTuple> all = ((MappingNode) around).getValue();
    int place = all.indexOf(tuple);
    if (place + 1 < all.size()) {
      to = from(all.get(place + 1).getKeyNode());
    } else if (place > 0) {
      from = at(JobOutline.end(all.get(place - 1).getValueNode()));
    }
    return text.substring(0, from) + text.substring(to);
  }

  private static NodeTuple tuple(Node around, String key) {
    return ((MappingNode) around)
        .getValue().stream().filter(t -> Nodes.name(t).equals(key)).findFirst().orElse(null);
  }

  private int column(int at) {
    return at - lineStart(at);
  }

  /** Lines as comments, each from a column on. */
  private String commented(int from, int to, int column) {
    StringBuilder s = new StringBuilder();
    for (int i = from; i < to; ) {
      int next = Math.min(to, nextLine(i));
      String line = text.substring(i, next);
      int blank = 0;
      while (blank < line.length() && " \t".indexOf(line.charAt(blank)) >= 0) {
        blank++;
      }
      int in = Math.min(i == lineStart(i) ? column : 0, blank);
      boolean empty = line.isBlank();
      s.append(line, 0, in).append(empty ? "" : "# ").append(line.substring(in));
      i = next;
    }
    return s.toString();
  }

  /** The ways to write a key into a mapping that has it not, the best first. */
  List<String> with(MappingNode map, String key, String value, List<String> order) {
    List<NodeTuple> all = map.getValue();
    if (JobOutline.flow(map)) {
      int last =
          all.isEmpty()
              ? from(map) + 1
              : at(JobOutline.end(all.get(all.size() - 1).getValueNode()));
      String entry = (all.isEmpty() ? "" : ", ") + key + ": " + value;
      return List.of(text.substring(0, last) + entry + text.substring(last));
    }
    String entry = key + ": " + value;
    int column = column(from(all.get(0).getKeyNode()));
    List<String> ways = new ArrayList<>();
    uncommented(map, key, entry, column).forEach(ways::add);
    NodeTuple before = null;
    int rank = order.indexOf(key);
    for (NodeTuple t : all) {
      int other = order.indexOf(Nodes.name(t));
      if (rank < 0 || other >= 0 && other < rank) {
        before = t;
      }
    }
    ways.add(before == null ? above(all.get(0), entry, column) : below(before, entry, column));
    ways.add(below(all.get(all.size() - 1), entry, column));
    return ways;
  }

  private String above(NodeTuple first, String entry, int column) {
    int at = from(first.getKeyNode());
    return text.substring(0, at) + entry + end + " ".repeat(column) + text.substring(at);
  }

  private String below(NodeTuple before, String entry, int column) {
    int last =
        Math.max(
            JobOutline.end(before.getValueNode()), before.getKeyNode().getEndMark().getIndex());
    int next = nextLine(at(last));
    String head = text.substring(0, next);
    boolean open = next == lineEnd(at(last));
    return head
        + (open ? end : "")
        + " ".repeat(column)
        + entry
        + (open ? "" : end)
        + text.substring(next);
  }

  /** With the key in a line that has it as a comment; what the comment says after it stays. */
  private List<String> uncommented(MappingNode map, String key, String entry, int column) {
    List<String> ways = new ArrayList<>();
    int stop = at(map.getEndMark().getIndex());
    Pattern line = Pattern.compile("([ \\-]*)# ?" + Pattern.quote(key) + ":(?: .*?)??( +#.*)?");
    for (int i = lineStart(from(map)); i < stop; i = nextLine(i)) {
      Matcher m = line.matcher(text.substring(i, lineEnd(i)));
      if (m.matches() && m.group(1).length() == column) {
        String after = m.group(2) == null ? "" : m.group(2).strip();
        int place = m.group(2) == null ? 0 : m.end() - after.length() - column;
        String comment =
            after.isEmpty() ? "" : " ".repeat(Math.max(1, place - entry.length())) + after;
        ways.add(text.substring(0, i) + m.group(1) + entry + comment + text.substring(lineEnd(i)));
      }
      if (nextLine(i) == i) {
        break;
      }
    }
    return ways;
  }
}
