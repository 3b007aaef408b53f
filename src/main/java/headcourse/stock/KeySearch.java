package headcourse.stock;

import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.flat.FlatReading;
import headcourse.units.Length;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * Settles the keys of heads that are set from a pile, then their stones. A key whose width is left
 * open is as wide as one of the pieces; one whose width is given takes the shortest piece that
 * holds it, if any does.
 */
final class KeySearch {
  private final Job job;
  private final List<Opening> openings;
  private final Function<Opening, FlatReading> read;
  private boolean ruledOut = true;

  KeySearch(Job job, List<Opening> openings, Function<Opening, FlatReading> read) {
    this.job = job;
    this.openings = openings;
    this.read = read;
  }

  static boolean open(Opening o) {
    HeadSpec.Key key = o.head().key();
    return key != null && key.bottom() == null && key.top() == null;
  }

  static Opening keyed(Opening o, Length width) {
    return KeyWidths.of(o, width, width);
  }

  /** The best choice without the pieces that are gone, or none. */
  Optional<KeyedPile> best(Set<String> gone) {
    if (openings.stream().map(read).anyMatch(r -> r.head() != null && r.head().fanned())) {
      FanKeySearch fans = new FanKeySearch(job, openings, read);
      Optional<KeyedPile> found = fans.best(gone);
      ruledOut = fans.ruledOut();
      return found;
    }
    UprightKeySearch upright = new UprightKeySearch(job, openings, read);
    Optional<KeyedPile> found = upright.best(gone);
    ruledOut = upright.ruledOut();
    return found;
  }

  /** Whether all was looked at, so that no choice means that there is none. */
  boolean ruledOut() {
    return ruledOut;
  }
}
