package headcourse.bench;

import headcourse.units.Length;
import java.util.List;
import java.util.Optional;

/**
 * How the soffit line lies under the rough head. It is set level, and so high that the bed is just
 * the job's at the lowest point that was measured.
 *
 * @param measured whether levels of the rough head were taken
 * @param lowered how far the soffit line is set below where it is drawn; negative where it is
 *     raised
 * @param under the bed under every stone that has a return, from left to right
 */
public record SoffitBed(boolean measured, Length lowered, List<BedUnder> under) {
  /** A bed of which nothing is known. */
  public static final SoffitBed UNKNOWN = new SoffitBed(false, Length.ZERO, List.of());

  /** Copies the list. */
  public SoffitBed {
    under = List.copyOf(under);
  }

  /** The bed under a stone; empty where it has no return. */
  public Optional<BedUnder> of(String stone) {
    for (BedUnder b : under) {
      if (b.stone().equals(stone)) {
        return Optional.of(b);
      }
    }
    return Optional.empty();
  }

  /** Whether the rough head was found out of level. */
  public boolean outOfLevel() {
    return under.stream().anyMatch(b -> !b.thinnest().equals(b.thickest()))
        || under.stream().map(BedUnder::left).distinct().count() > 1 && measured;
  }
}
