package headcourse.bench;

import headcourse.bench.builds.Tally;
import headcourse.units.Length;

/**
 * How often a head lands when it is built in numbers: its bearings within their bounds and every
 * joint clear of the jambs, on both sides.
 *
 * @param tally how the builds went
 * @param care the class of care that was assumed, as the job names it
 * @param mover which error spreads the end most, built without checks
 * @param spread by how much: standard deviation at the end of the worse side
 * @param alike how many stones of that side are cut at the setting that counts most
 * @param outwards what dry joints push that end outwards on average; zero in mortar
 */
public record Landing(
    Tally tally, String care, Mover mover, Length spread, int alike, Length outwards) {

  /** An error that moves an end. */
  public enum Mover {
    /** The saw's fence. */
    FENCE,
    /** Each cut by itself. */
    CUT,
    /** The joints. */
    JOINT,
    /** The key's place. */
    KEY,
    /** The opening's width. */
    SITE;

    /** The word in keys. */
    public String word() {
      return name().toLowerCase(java.util.Locale.ROOT);
    }
  }

  /** How many builds were tried. */
  public int builds() {
    return tally.builds();
  }

  /** Share of builds that land when they are measured and corrected on the way. */
  public double checked() {
    return (double) tally.checked() / tally.builds();
  }

  /** Share of builds that land without that. */
  public double unchecked() {
    return (double) tally.unchecked() / tally.builds();
  }
}
