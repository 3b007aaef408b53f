package headcourse.statics;

import java.util.Locale;

/**
 * What gives way at a joint when the head fails.
 *
 * @param joint its number from the left, from 0
 * @param how what it does
 * @param share how much of the work of failing it takes part in, 0 … 1; all of a head's sum to one
 */
public record Yield(int joint, How how, double share) {
  /** What a joint does. */
  public enum How {
    /** It turns about its foot, opening at the back. */
    HINGE_FOOT,
    /** It turns about its head, opening at the soffit. */
    HINGE_HEAD,
    /** It slides. */
    SLIDE;

    /** The word in output. */
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }
}
