package headcourse.job.yaml;

import headcourse.units.Length;
import headcourse.units.LengthParser;
import headcourse.units.NotationException;

/** Reads a length and holds it against its range and the grid. */
final class Lengths {
  private Lengths() {}

  /** Where a refusal goes. */
  interface Refusal {
    void error(String message, String... hints);
  }

  static Length read(String text, Range range, Reading in, Refusal refusal) {
    Length v;
    try {
      v = LengthParser.parse(text, in.units);
    } catch (NotationException e) {
      refusal.error(Reading.quoted(text) + ": " + e.getMessage());
      return null;
    }
    String q = Reading.quoted(text);
    if (v.compareTo(range.min()) < 0) {
      boolean nought = range.min().picometres() == 1;
      refusal.error(
          nought
              ? q + " is too little; expected more than 0"
              : q + " is too little; expected at least " + in.say(range.min()));
      return null;
    }
    if (v.compareTo(range.max()) > 0) {
      refusal.error(q + " is too much; expected at most " + in.say(range.max()));
      return null;
    }
    if (range.onGrid() && !in.grid.holds(v)) {
      Length low = in.grid.ticks(in.grid.floor(v));
      Length high = in.grid.ticks(in.grid.ceil(v));
      refusal.error(
          q + " is off the grid; expected a whole number of " + in.say(in.grid.tick()),
          "nearest are " + in.say(low) + " and " + in.say(high));
      return null;
    }
    return v;
  }
}
