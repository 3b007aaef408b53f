package headcourse.cure;

import headcourse.job.Change;
import java.util.List;

/**
 * What makes a head possible.
 *
 * @param changes to be written into the job file, all of them
 * @param words the same as it is said among the hints
 */
public record Cure(List<Change> changes, String words) {
  /** Copies the changes. */
  public Cure {
    changes = List.copyOf(changes);
  }
}
