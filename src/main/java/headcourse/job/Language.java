package headcourse.job;

/**
 * What the words on the sheets are written in.
 *
 * @param word as in the job file: a BCP 47 tag, or two with {@code +} between for both, the first
 *     first
 */
public record Language(String word) {
  /** English. */
  public static final Language EN = new Language("en");

  /** Spanish, as masons in the Americas speak it. */
  public static final Language ES = new Language("es");

  /** Both, English first. */
  public static final Language EN_ES = new Language("en+es");
}
