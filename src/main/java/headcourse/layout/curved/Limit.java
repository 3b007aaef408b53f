package headcourse.layout.curved;

/** A limit of the job that a number of stones may break. */
enum Limit {
  /** Stones too wide. */
  MAX("stones.max"),
  /** Stones too narrow. */
  MIN("stones.min"),
  /** A joint too near the jamb's corner. */
  CLEAR("clear");

  private final String key;

  Limit(String key) {
    this.key = key;
  }

  /** Where it stands under the head. */
  String key() {
    return key;
  }

  /** By how much a trial breaks it, mm; negative where it does not. */
  double excess(CurvedSpec given, DivisionMeasures t) {
    return switch (this) {
      case MAX -> t.most() - given.head().stones().max().mm();
      case MIN -> given.head().stones().min().mm() - t.least();
      case CLEAR -> given.head().clear().mm() - t.division().clear();
    };
  }

  /** What the trial breaks it by, in words. */
  String complaint(CurvedSpec given, DivisionMeasures t) {
    return switch (this) {
      case MAX ->
          "are up to "
              + given.say(t.most())
              + " wide, more than the "
              + given.say(given.head().stones().max().mm())
              + " allowed";
      case MIN ->
          "are down to "
              + given.say(t.least())
              + " wide, less than the "
              + given.say(given.head().stones().min().mm())
              + " allowed";
      case CLEAR ->
          "put a joint "
              + given.say(t.division().clear())
              + " from the jamb's corner, nearer than "
              + given.say(given.head().clear().mm());
    };
  }
}
