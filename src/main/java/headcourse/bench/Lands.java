package headcourse.bench;

import headcourse.bench.builds.Tally;
import headcourse.units.Length;
import java.util.Locale;

/**
 * How often a head lands when it is built in numbers: its bearings within their bounds, or its ends
 * closing on their skewbacks, and every joint clear of the jambs, on both sides.
 *
 * @param tally how the builds went
 * @param closes whether both ends close on a skewback
 * @param care the class of care that was assumed, as the job names it
 * @param mover which error spreads the end most, built without checks
 * @param spread by how much: standard deviation at the end of the worse side
 * @param alike how many stones of that side are cut at the setting that counts most
 * @param outwards what dry joints push that end outwards on average; zero in mortar
 */
public record Lands(
    Tally tally,
    boolean closes,
    String care,
    Mover mover,
    Length spread,
    int alike,
    Length outwards) {
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
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** What keeps a build from landing. */
  public enum Fault {
    /** A joint too near a jamb line. */
    JOINT,
    /** An end that bears too little. */
    SHORT,
    /** An end that runs too far onto the wall. */
    FAR,
    /** A gap at a skewback. */
    GAP
  }

  /**
   * The fault that checked builds have most.
   *
   * @param fault which
   * @param builds in how many
   * @param relief by how much its limit would have to give for no more than one build in a hundred
   *     to break it
   */
  public record Miss(Fault fault, int builds, Length relief) {}

  /** How many builds were tried. */
  public int builds() {
    return tally.builds();
  }

  /** How many of them land when they are measured and corrected on the way. */
  public int landedChecked() {
    return tally.checked();
  }

  /** How many of them land without that. */
  public int landedUnchecked() {
    return tally.unchecked();
  }

  /** Share of builds that land when they are measured and corrected on the way. */
  public double checked() {
    return (double) tally.checked() / tally.builds();
  }

  /** Share of builds that land without that. */
  public double unchecked() {
    return (double) tally.unchecked() / tally.builds();
  }

  /** What keeps most builds from landing. */
  public Miss worst() {
    Miss worst = miss(Fault.JOINT, tally.joint());
    Miss inside = miss(closes ? Fault.GAP : Fault.SHORT, tally.inside());
    worst = inside.builds() > worst.builds() ? inside : worst;
    Miss outside = miss(Fault.FAR, tally.outside());
    return outside.builds() > worst.builds() ? outside : worst;
  }

  private static Miss miss(Fault fault, Tally.Miss miss) {
    return new Miss(fault, miss.builds(), Length.mm(miss.relief()));
  }
}
