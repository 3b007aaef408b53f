package headcourse.statics;

import headcourse.job.Change;
import java.util.List;

/**
 * How a head reads.
 *
 * @param standing what it would do if it were solid
 * @param cures where it would not stand as the job wants: changes to the job file that each cure
 *     it, all of one list together, the smallest first; each was tried
 */
public record AsSolid(Standing standing, List<List<Change>> cures) {
  /** Copies the lists. */
  public AsSolid {
    cures = cures.stream().map(List::copyOf).toList();
  }
}
