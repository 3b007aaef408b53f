package headcourse.job;

/** What the words on the sheets are written in. */
public enum Language {
  /** English. */
  EN("en"),
  /** Spanish, as masons in the Americas speak it. */
  ES("es"),
  /** Both, English first. */
  EN_ES("en+es");

  private final String word;

  Language(String word) {
    this.word = word;
  }

  /** The word in the job file. */
  public String word() {
    return word;
  }
}
