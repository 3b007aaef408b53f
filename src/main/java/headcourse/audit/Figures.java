package headcourse.audit;

import headcourse.drawing.Mark;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.Page;
import headcourse.geom.Path;
import headcourse.job.Bundle;
import java.util.ArrayList;
import java.util.List;

/**
 * A page's marks, sorted for looking over.
 *
 * @param bundle what the page belongs to
 * @param groups all groups, outer ones first
 */
record Figures(Bundle bundle, List<Mark.Group> groups) {
  Figures(Bundle bundle, Page page) {
    this(bundle, groups(page.marks()));
  }

  private static List<Mark.Group> groups(List<Mark> marks) {
    List<Mark> all = new ArrayList<>();
    Audit.flatten(marks, all);
    return all.stream()
        .filter(Mark.Group.class::isInstance)
        .map(Mark.Group.class::cast)
        .filter(g -> g.role() != Role.FRAME)
        .toList();
  }

  /** The drawings. */
  List<Mark.Group> drawings() {
    return groups.stream().filter(g -> g.role() == Role.FIGURE).toList();
  }

  /** The lines of a group. */
  static List<Path> lines(Mark.Group group) {
    List<Mark> all = new ArrayList<>();
    Audit.flatten(group.marks(), all);
    return all.stream()
        .filter(Mark.Stroke.class::isInstance)
        .map(m -> ((Mark.Stroke) m).path())
        .toList();
  }

  /** The lettering of a group. */
  static List<Mark.Label> labels(Mark.Group group) {
    List<Mark> all = new ArrayList<>();
    Audit.flatten(group.marks(), all);
    return all.stream().filter(Mark.Label.class::isInstance).map(Mark.Label.class::cast).toList();
  }
}
