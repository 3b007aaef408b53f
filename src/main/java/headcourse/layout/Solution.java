package headcourse.layout;

import headcourse.diag.Diagnostic;
import headcourse.job.Change;
import java.util.List;

/** What setting out one opening gives. */
public sealed interface Solution {
  /** What it took, in steps. */
  long effort();

  /**
   * It can be done.
   *
   * @param head the head
   * @param effort what it took, in steps
   */
  record Solved(HeadLayout head, long effort) implements Solution {
    /** A head whose proof says what it took. */
    public Solved(HeadLayout head) {
      this(head, head.proof().steps());
    }
  }

  /**
   * It can't be done as asked.
   *
   * @param problems which constraints collide and by how much; each with its place in the job file
   * @param proposals what might be written instead, each to be tried
   * @param effort what it took to find out, in steps
   */
  record Refused(List<Diagnostic> problems, List<List<Change>> proposals, long effort)
      implements Solution {
    /** Copies the lists. */
    public Refused {
      problems = List.copyOf(problems);
      proposals = proposals.stream().map(List::copyOf).toList();
    }

    /** A refusal that was seen at once. */
    public Refused(List<Diagnostic> problems, List<Change> proposals) {
      this(problems, proposals.stream().map(List::of).toList(), 1);
    }
  }
}
