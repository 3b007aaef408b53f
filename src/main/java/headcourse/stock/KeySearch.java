package headcourse.stock;

import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.flat.FlatReading;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
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
  private long steps;

  KeySearch(Job job, List<Opening> openings, Function<Opening, FlatReading> read) {
    this.job = job;
    this.openings = openings;
    this.read = read;
  }

  static boolean open(Opening o) {
    HeadSpec.Key key = o.head().key();
    return key != null && key.bottom() == null && key.top() == null;
  }

  /**
   * In which order keys take their pieces: those whose widths are given first, so that none of them
   * must be ordered for the sake of one that is left open.
   */
  static List<Integer> order(List<Opening> openings) {
    List<Integer> order = new ArrayList<>();
    for (int h = 0; h < openings.size(); h++) {
      order.add(h);
    }
    order.sort(Comparator.comparing((Integer h) -> open(openings.get(h))));
    return order;
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
      steps = fans.steps();
      return found;
    }
    UprightKeySearch upright = new UprightKeySearch(job, openings, read);
    Optional<KeyedPile> found = upright.best(gone);
    ruledOut = upright.ruledOut();
    steps = upright.steps();
    return found;
  }

  /** Some choice soon found, the best or not, or none. */
  Optional<KeyedPile> any(Set<String> gone) {
    if (openings.stream().map(read).anyMatch(r -> r.head() != null && r.head().fanned())) {
      return new FanKeySearch(job, openings, read).any(gone);
    }
    return new UprightKeySearch(job, openings, read).any(gone);
  }

  /** How many steps it took. */
  long steps() {
    return steps;
  }

  /** Whether all was looked at, so that no choice means that there is none. */
  boolean ruledOut() {
    return ruledOut;
  }
}
