package headcourse.layout.curved;

import headcourse.geom.Edge;
import headcourse.layout.ChordOffsets;
import headcourse.layout.PlacedStone;
import headcourse.units.Units;
import java.util.List;

/** Whether straight arrises stand too far off a curved soffit, and how many stones would do. */
final class ArrisCheck {
  private static final int MOST = 600;

  private ArrisCheck() {}

  /** The greatest distance of soffit edges from their chords. */
  static double deviation(List<Edge> soffit) {
    return ChordOffsets.of(soffit).stream().mapToDouble(ChordOffsets::greatest).max().orElse(0);
  }

  /** Says so where an arris stands off by more than the limit and is not to be worked. */
  static void remark(Given given, List<PlacedStone> stones, Divider divider, Division division) {
    Double asked = given.length("arris-limit");
    boolean inch = given.job().units() == Units.INCH;
    double limit = asked != null ? asked : inch ? 25.4 / 8 : 3;
    if (given.word("arris", "straight").equals("worked")) {
      return;
    }
    List<PlacedStone> over =
        stones.stream().filter(s -> s.chordDeviation() > limit + 1e-9).toList();
    if (over.isEmpty()) {
      return;
    }
    PlacedStone worst = over.get(0);
    for (PlacedStone s : over) {
      worst = s.chordDeviation() > worst.chordDeviation() + 1e-9 ? s : worst;
    }
    given.remark(
        "arris",
        "a straight arris stands off the curve by up to "
            + given.say(worst.chordDeviation())
            + " ("
            + worst.mark()
            + "), more than "
            + given.say(limit)
            + ", on "
            + over.size()
            + (over.size() == 1 ? " stone; " : " stones; ")
            + wayOut(divider, division, limit)
            + "work the arris to the curve by the offsets");
  }

  private static String wayOut(Divider divider, Division division, double limit) {
    for (int n = division.each() + 1; n <= MOST; n++) {
      Division d = divider.divide(n);
      if (d == null) {
        return "";
      }
      double most = 0;
      for (int i = 1; i <= n && most <= limit; i++) {
        most = Math.max(most, deviation(d.soffit(i)));
      }
      // The key's own width is the job's, unless it is one of the row.
      if (most <= limit && (!Double.isNaN(divider.keyHalf()) || keyWithin(d, limit))) {
        int all = 2 * n + (d.key() ? 1 : 0);
        return all + " stones in all (" + n + " each side) would do, or ";
      }
    }
    return "";
  }

  private static boolean keyWithin(Division d, double limit) {
    List<Edge> right = d.soffit(0);
    List<Edge> whole = Struck.mirroredWhole(right).edges();
    return deviation(whole) <= limit;
  }
}
