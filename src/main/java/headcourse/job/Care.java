package headcourse.job;

import headcourse.units.Length;

/**
 * How carefully a shop works, for builds tried in numbers. All but {@code opens} are standard
 * deviations. The classes are assumptions of this program: nobody measured them.
 *
 * @param name {@code careful}, {@code ordinary}, {@code rough}, or {@link #OWN}
 * @param cut of a cut, each by itself
 * @param fence of the fence, one error for all stones of one saw setting
 * @param opens what a dry joint opens by on average
 * @param read of a reading of the tape
 * @param key of the key's place
 * @param site of the opening's width
 */
public record Care(
    String name, Length cut, Length fence, Length opens, Length read, Length key, Length site) {
  /** The name of what a job gives in figures of its own. */
  public static final String OWN = "own";

  /** A shop that measures twice. */
  public static final Care CAREFUL = of("careful", 96, 128, 128, 96, 64, 32);

  /** What is assumed where the job does not say. */
  public static final Care ORDINARY = of("ordinary", 64, 64, 64, 64, 32, 16);

  /** Twice ordinary. */
  public static final Care ROUGH = of("rough", 32, 32, 32, 32, 16, 8);

  /** Standard deviation of a mortar joint's width, in any class. */
  public static final Length MORTAR = Length.inches(1 / 32.0);

  /** The most that a mortar joint is off its width. */
  public static final Length MOST_MORTAR = Length.inches(1 / 8.0);

  private static Care of(
      String name, double cut, double fence, double opens, double read, double key, double site) {
    return new Care(
        name,
        Length.inches(1 / cut),
        Length.inches(1 / fence),
        Length.inches(1 / opens),
        Length.inches(1 / read),
        Length.inches(1 / key),
        Length.inches(1 / site));
  }

  /** The same shop with dry joints that open by so much on average. */
  public Care opening(Length mean) {
    return new Care(name, cut, fence, mean, read, key, site);
  }
}
