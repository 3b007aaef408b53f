package headcourse.job;

import headcourse.units.Angle;
import headcourse.units.Length;

/**
 * The mason's tools.
 *
 * @param saw the bench saw
 * @param grinder the angle grinder that cuts the notches
 */
public record Tools(Saw saw, Grinder grinder) {
  /**
   * The bench saw.
   *
   * @param kerf width of its cut
   * @param depthOfCut how deep it cuts
   * @param tiltsTo how far its blade tilts off plumb
   * @param cleanCut what is trimmed off a blank's end to get a true edge
   */
  public record Saw(Length kerf, Length depthOfCut, Angle tiltsTo, Length cleanCut) {}

  /**
   * The angle grinder.
   *
   * @param blade blade diameter
   * @param kerf width of its cut
   */
  public record Grinder(Length blade, Length kerf) {}
}
