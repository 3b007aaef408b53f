package headcourse.audit;

import headcourse.units.LengthParser;
import headcourse.units.NotationException;
import headcourse.units.Units;

/** Lengths as they are lettered. */
final class LetteredLengths {
  private LetteredLengths() {}

  /** A length, mm; NaN where a text is none. Numbers without a mark are no inches. */
  static double mm(String text, Units units) {
    boolean bare = units == Units.INCH && text.indexOf('"') < 0;
    if (text.isEmpty() || bare || Character.isLetter(text.charAt(0))) {
      return Double.NaN;
    }
    try {
      return LengthParser.parse(text, units).mm();
    } catch (NotationException e) {
      return Double.NaN;
    }
  }
}
