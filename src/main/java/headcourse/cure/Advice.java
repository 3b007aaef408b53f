package headcourse.cure;

import headcourse.diag.Diagnostic;
import java.util.List;

/**
 * What is said of a head that can't be set out.
 *
 * @param problems why not, with the cures as hints
 * @param cures what each by itself makes it possible, the best first
 * @param effort what finding them took, in steps
 */
public record Advice(List<Diagnostic> problems, List<Cure> cures, long effort) {
  /** Copies the lists. */
  public Advice {
    problems = List.copyOf(problems);
    cures = List.copyOf(cures);
  }
}
