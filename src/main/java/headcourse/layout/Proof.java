package headcourse.layout;

import headcourse.units.Length;
import java.util.Locale;

/**
 * How good the arrangement is known to be.
 *
 * @param status proved best, or best found
 * @param cost what was minimised first, in the unit of its rhythm (mm for flat heads)
 * @param bound no arrangement costs less
 * @param steps how many candidates were looked at
 * @param shortfall what the head wants of spare to land at the worst, of which none wants less; the
 *     cost is the least among heads that want no more. Null where nothing was decided by it
 */
public record Proof(Status status, double cost, double bound, long steps, Length shortfall) {
  /** One that has nothing to do with where a head lands. */
  public Proof(Status status, double cost, double bound, long steps) {
    this(status, cost, bound, steps, null);
  }

  /** How good. */
  public enum Status {
    /** Proved best. */
    OPTIMAL,
    /** Best found within the limit. */
    BOUNDED;

    /** The word in output. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }
}
