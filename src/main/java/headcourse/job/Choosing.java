package headcourse.job;

/**
 * What a job says of choosing an opening's head among all that are possible.
 *
 * @param vary what may vary besides the number of stones and their widths
 * @param letter the letter of the head that was chosen; empty where none was
 * @param settings whether the settings of the choice are spelt out beside the letter
 */
public record Choosing(Vary vary, String letter, boolean settings) {
  /** Nothing varies, nothing is chosen. */
  public static final Choosing NONE = new Choosing(Vary.NOTHING, "", false);

  /** Whether a head was chosen. */
  public boolean chosen() {
    return !letter.isEmpty();
  }
}
