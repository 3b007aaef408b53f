package headcourse.job.yaml;

import headcourse.diag.Outcome;
import headcourse.job.Change;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.job.Rewriting;
import java.util.ArrayList;
import java.util.List;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;

/** Reads the nodes of a job file again with other values written in. */
final class Rereading implements Rewriting {
  private final JobSource source;
  private final MappingNode root;
  private Job plain;

  Rereading(JobSource source, MappingNode root) {
    this.source = source;
    this.root = root;
  }

  @Override
  public Outcome<Job> with(List<Change> changes) {
    Node edited = root;
    for (Change change : changes) {
      edited = Rewritten.with(edited, change);
    }
    MappingNode nodes = (MappingNode) edited;
    int opening = opening(changes);
    return opening < 0
        ? JobReader.read(source, nodes, new Problems())
        : withOpening(nodes, opening);
  }

  /** The number of the opening that alone is changed, or −1. */
  private static int opening(List<Change> changes) {
    String first = changes.isEmpty() ? "" : changes.get(0).path();
    if (!first.startsWith("openings[")) {
      return -1;
    }
    String own = first.substring(0, first.indexOf(']') + 1);
    boolean alone = changes.stream().allMatch(c -> c.path().startsWith(own) && !setsJoints(c, own));
    return alone ? Integer.parseInt(own.substring("openings[".length(), own.length() - 1)) : -1;
  }

  /** A choice may set the joints of the whole job, or have set them. */
  private static boolean setsJoints(Change change, String opening) {
    boolean chosen = change.path().equals(opening + ".chosen");
    return chosen && (change.value() == null || change.value().contains("joint"));
  }

  /** Only what is changed is read again: the rest of a job says nothing of an opening's values. */
  private Outcome<Job> withOpening(MappingNode nodes, int number) {
    if (plain == null) {
      plain = JobReader.read(source, root, new Problems()).value().orElseThrow();
    }
    Problems problems = new Problems();
    Reading in = new Reading(source.text(), problems, source.files());
    in.units = plain.units();
    in.grid = plain.grid();
    Item item = new Section(in, "", Chosen.over(nodes)).item("openings").at(number);
    Opening opening = OpeningReader.opening(item, number + 1, source.shapes());
    if (problems.any()) {
      return Outcome.failed(problems.inOrder(source.name()));
    }
    List<Opening> all = new ArrayList<>(plain.openings());
    all.set(number, opening);
    return Outcome.of(plain.withOpenings(all), List.of());
  }
}
