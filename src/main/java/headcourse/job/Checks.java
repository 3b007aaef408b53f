package headcourse.job;

import java.util.List;

/**
 * How findings are judged.
 *
 * @param limits thresholds of rules
 * @param accepted findings that the mason takes on himself
 */
public record Checks(Limits limits, List<Accepted> accepted) {
  /** Copies the list. */
  public Checks {
    accepted = List.copyOf(accepted);
  }

  /** What of it concerns one opening. */
  Checks of(String opening) {
    return new Checks(
        limits,
        accepted.stream()
            .filter(a -> a.opening().isEmpty() || a.opening().equals(opening))
            .toList());
  }
}
