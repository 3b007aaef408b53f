package headcourse.units;

/** The units a job is written and printed in. */
public enum Units {
  /** Feet, inches and fractions of an inch. */
  INCH("in"),
  /** Whole millimetres, or halves. */
  MILLIMETRE("mm");

  private final String word;

  Units(String word) {
    this.word = word;
  }

  /** The word in the job file. */
  public String word() {
    return word;
  }

  /** So many of this unit. */
  public Length of(double value) {
    return this == INCH ? Length.inches(value) : Length.mm(value);
  }
}
