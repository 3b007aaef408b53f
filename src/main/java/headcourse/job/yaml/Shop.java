package headcourse.job.yaml;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.yaml.snakeyaml.DumperOptions.FlowStyle;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;

/**
 * What is the same in every job of a shop, in a file of its own that is laid under the job: a key
 * that the job gives goes before it. Every value keeps its place in its own file.
 */
final class Shop {
  /** The file beside a job that is taken where the job names none. */
  static final String USUAL = "shop.yaml";

  /** What a shop may say; all else is this job's alone. */
  static final List<String> KEYS =
      List.of(
          "units",
          "grid",
          "paper",
          "language",
          "pictures",
          "frame",
          "job",
          "stone",
          "wall",
          "setting",
          "tools",
          "fastener",
          "props",
          "limits");

  /** Of the title block. */
  private static final List<String> OF_JOB = List.of("mason", "mason-address", "drawn-by");

  private Shop() {}

  /**
   * The nodes of a job laid over its shop's.
   *
   * @param job where the job was read; told of the shop's text
   */
  static MappingNode under(JobSource source, MappingNode job, Problems problems) {
    ScalarNode named = Nodes.value(job, "shop") instanceof ScalarNode s ? s : null;
    String path = named == null ? USUAL : named.getValue().strip();
    if (named == null && (Nodes.value(job, "shop") != null || itself(source.name()))) {
      return job;
    }
    boolean beside =
        !path.isEmpty()
            && !path.startsWith("/")
            && !path.matches("(?s)[A-Za-z]:.*|.*\\\\.*|.*\0.*")
            && !List.of(path.split("/")).contains("..");
    Optional<byte[]> bytes = beside ? source.files().bytes(path) : Optional.empty();
    if (bytes.isEmpty()) {
      if (named != null) {
        problems.error(
            source.text().of(named),
            "there is no file " + Reading.quoted(path) + "; expected a shop's file beside the job");
      }
      return job;
    }
    Optional<JobText> text = JobText.decode(path, bytes.get(), problems);
    Optional<MappingNode> root = text.flatMap(t -> YamlGraph.of(t, problems));
    if (root.isEmpty()) {
      return job;
    }
    source.text().beside(text.get());
    MappingNode shop = (MappingNode) marked(root.get(), path);
    strange(shop, text.get(), problems);
    units(source, job, shop, text.get(), problems);
    problems.note(text.get().start(), "what this file says is taken where the job says nothing");
    return over(job, shop);
  }

  private static boolean itself(String name) {
    return name.replace('\\', '/').replaceAll(".*/", "").equals(USUAL);
  }

  private static void strange(MappingNode shop, JobText text, Problems problems) {
    for (NodeTuple t : shop.getValue()) {
      if (!KEYS.contains(Nodes.name(t))) {
        problems.error(
            text.of(t.getKeyNode()),
            Reading.quoted(Nodes.name(t))
                + " is for a job; a shop's file has "
                + String.join(", ", KEYS));
      }
    }
    if (Nodes.value(shop, "job") instanceof MappingNode job) {
      for (NodeTuple t : job.getValue()) {
        if (!OF_JOB.contains(Nodes.name(t))) {
          problems.error(
              text.of(t.getKeyNode()),
              Reading.quoted(Nodes.name(t))
                  + " is of one job; expected "
                  + String.join(", ", OF_JOB));
        }
      }
    }
  }

  /** Bare numbers are in the units of the file that they stand in; two kinds would be mixed up. */
  private static void units(
      JobSource source, MappingNode job, MappingNode shop, JobText text, Problems problems) {
    String own = units(job);
    String its = units(shop);
    if (own != null && !own.equals(its == null ? "in" : its)) {
      Node at = Nodes.value(shop, "units");
      problems.error(
          at == null ? text.start() : text.of(at),
          "the shop's lengths are in " + (its == null ? "in" : its) + ", the job's in " + own,
          "keep a second file for jobs in " + own + ", and name it in them under shop:");
    }
  }

  private static String units(MappingNode file) {
    return Nodes.value(file, "units") instanceof ScalarNode s
        ? Spelling.of(s.getValue().strip(), List.of("in", "mm")).orElse(s.getValue())
        : null;
  }

  private static MappingNode over(MappingNode job, MappingNode shop) {
    List<NodeTuple> all = new ArrayList<>();
    for (NodeTuple t : job.getValue()) {
      Node its = Nodes.value(shop, Nodes.name(t));
      boolean both = its instanceof MappingNode && t.getValueNode() instanceof MappingNode;
      all.add(
          both
              ? new NodeTuple(
                  t.getKeyNode(), over((MappingNode) t.getValueNode(), (MappingNode) its))
              : t);
    }
    for (NodeTuple t : shop.getValue()) {
      if (Nodes.value(job, Nodes.name(t)) == null) {
        all.add(t);
      }
    }
    return new MappingNode(
        Tag.MAP, true, all, job.getStartMark(), job.getEndMark(), FlowStyle.BLOCK);
  }

  /** The same nodes, their places marked with the file's name. */
  private static Node marked(Node node, String file) {
    Mark from = marked(node.getStartMark(), file);
    Mark to = marked(node.getEndMark(), file);
    if (node instanceof MappingNode map) {
      List<NodeTuple> tuples = new ArrayList<>();
      for (NodeTuple t : map.getValue()) {
        tuples.add(new NodeTuple(marked(t.getKeyNode(), file), marked(t.getValueNode(), file)));
      }
      return new MappingNode(Tag.MAP, true, tuples, from, to, map.getFlowStyle());
    }
    if (node instanceof SequenceNode list) {
      List<Node> items = list.getValue().stream().map(n -> marked(n, file)).toList();
      return new SequenceNode(Tag.SEQ, true, new ArrayList<>(items), from, to, list.getFlowStyle());
    }
    ScalarNode s = (ScalarNode) node;
    return new ScalarNode(s.getTag(), true, s.getValue(), from, to, s.getScalarStyle());
  }

  private static Mark marked(Mark mark, String file) {
    int[] nothing = {'\n'};
    return new Mark(file, mark.getIndex(), mark.getLine(), mark.getColumn(), nothing, 0);
  }
}
