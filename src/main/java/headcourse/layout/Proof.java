package headcourse.layout;

import java.util.Locale;

/**
 * How good the arrangement is known to be.
 *
 * @param status proved best, or best found
 * @param cost what was minimised first, in the unit of its rhythm (mm for flat heads)
 * @param bound no arrangement costs less
 * @param steps how many candidates were looked at
 */
public record Proof(Status status, double cost, double bound, long steps) {
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
