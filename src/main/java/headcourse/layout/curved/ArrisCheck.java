package headcourse.layout.curved;

import headcourse.geom.Edge;
import headcourse.layout.ArrisLimit;
import headcourse.layout.ChordOffsets;
import headcourse.layout.PlacedStone;
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
    double limit = ArrisLimit.of(given.job(), given.head()).mm();
    if (ArrisLimit.worked(given.head())) {
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
            + wayOut(divider, division, worst.chordDeviation(), limit)
            + "work the arris to the curve by the offsets");
  }

  /** The least number that would do; deviations go about as the square of the stones' width. */
  private static String wayOut(Divider divider, Division division, double worst, double limit) {
    if (division.key()
        && !Double.isNaN(divider.keyHalf())
        && deviation(Struck.mirroredWhole(division.soffit(0)).edges()) > limit) {
      return "";
    }
    int least = division.each() + 1;
    double guess = Math.min(MOST, division.each() * Math.sqrt(worst / limit));
    int n = Math.max(least, (int) guess);
    while (n > least && n <= MOST && within(divider, n - 1, limit)) {
      n--;
    }
    while (n <= MOST && !within(divider, n, limit)) {
      n++;
    }
    if (n > MOST) {
      return "";
    }
    int all = 2 * n + (division.key() ? 1 : 0);
    return all + " stones in all (" + n + " each side) would do, or ";
  }

  private static boolean within(Divider divider, int n, double limit) {
    Division d = divider.divide(n);
    if (d == null) {
      return false;
    }
    for (int i = n; i >= 1; i--) {
      if (deviation(d.soffit(i)) > limit) {
        return false;
      }
    }
    // The key's own width is the job's, unless it is one of the row.
    return !Double.isNaN(divider.keyHalf())
        || deviation(Struck.mirroredWhole(d.soffit(0)).edges()) <= limit;
  }
}
