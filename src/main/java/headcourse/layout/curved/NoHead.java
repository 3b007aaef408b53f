package headcourse.layout.curved;

import headcourse.layout.Solution;

/** Ends the setting out of a head that cannot be as asked; carries what to say. */
final class NoHead extends Exception {
  private static final long serialVersionUID = 1L;

  private final transient Solution.Refused refused;

  NoHead(Solution.Refused refused) {
    super(null, null, false, false);
    this.refused = refused;
  }

  Solution.Refused refused() {
    return refused;
  }
}
