package headcourse.layout;

import headcourse.diag.Diagnostic;
import java.util.List;

/** What setting out one opening gives. */
public sealed interface Solution {
  /**
   * It can be done.
   *
   * @param head the head
   */
  record Solved(HeadLayout head) implements Solution {}

  /**
   * It can't be done as asked.
   *
   * @param problems which constraints collide and by how much; each with its place in the job file
   * @param changes the smallest changes, each of which alone makes it possible
   * @param together where none does, sets of changes each of which makes it possible when all of it
   *     is written
   */
  record Refused(List<Diagnostic> problems, List<Change> changes, List<List<Change>> together)
      implements Solution {
    /** Copies the lists. */
    public Refused {
      problems = List.copyOf(problems);
      changes = List.copyOf(changes);
      together = together.stream().map(List::copyOf).toList();
    }

    /** A refusal with changes that help alone, or none. */
    public Refused(List<Diagnostic> problems, List<Change> changes) {
      this(problems, changes, List.of());
    }
  }
}
