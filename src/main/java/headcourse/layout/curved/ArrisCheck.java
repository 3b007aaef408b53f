package headcourse.layout.curved;

import headcourse.geom.Edge;
import headcourse.geom.Point;
import headcourse.geom.Vec;
import headcourse.layout.ArrisLimit;
import headcourse.layout.ChordOffsets;
import headcourse.layout.PlacedStone;
import headcourse.units.Limit;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;

/** Whether straight arrises stand too far off a curved soffit, and how many stones would do. */
final class ArrisCheck {
  private static final int MOST = 600;

  private ArrisCheck() {}

  /** The greatest distance of soffit edges from their chords. */
  static double deviation(List<Edge> soffit) {
    return ChordOffsets.of(soffit).stream().mapToDouble(ChordOffsets::greatest).max().orElse(0);
  }

  /** The greatest distance of soffit edges from the straight line between their ends. */
  static double offLine(List<Edge> soffit) {
    Point from = soffit.get(0).from();
    Vec along = soffit.get(soffit.size() - 1).to().minus(from).unit();
    double most = 0;
    for (Edge e : soffit) {
      for (Point p : List.of(e.from(), ChordOffsets.farthest(e, along))) {
        most = Math.max(most, Math.abs(along.cross(p.minus(from))));
      }
    }
    return most;
  }

  /**
   * Says so where an arris stands off by more than the limit and is not to be worked.
   *
   * @param others the stones of the head set out with another number a side; none where it can't be
   */
  static void remark(
      CurvedSpec given,
      List<PlacedStone> stones,
      Divider divider,
      Division division,
      IntFunction<List<PlacedStone>> others) {
    double limit = ArrisLimit.of(given.job(), given.head()).mm();
    if (ArrisLimit.worked(given.head())) {
      return;
    }
    List<PlacedStone> over =
        stones.stream().filter(s -> s.arrisDeviation() > limit + 1e-9).toList();
    if (over.isEmpty()) {
      return;
    }
    PlacedStone worst = over.get(0);
    for (PlacedStone s : over) {
      worst = s.arrisDeviation() > worst.arrisDeviation() + 1e-9 ? s : worst;
    }
    List<String> values = new ArrayList<>();
    values.add(given.say(Limit.LEAST, worst.arrisDeviation()));
    values.add(worst.mark());
    values.add(given.say(Limit.MOST, limit));
    values.add(Integer.toString(over.size()));
    int each = wayOut(divider, division, worst.arrisDeviation(), limit);
    double least = given.head().stones().min().mm();
    // What the soffit allows need not be what clear, the widths and the wall allow.
    while (each > 0 && !serves(others.apply(each), limit)) {
      Division next = each < MOST ? divider.divide(each + 1) : null;
      each = next == null || DivisionMeasures.of(next, false).mean() < least ? 0 : each + 1;
    }
    String narrower = "";
    if (each > 0) {
      int all = 2 * each + (division.key() ? 1 : 0);
      values.add(Integer.toString(all));
      values.add(Integer.toString(each));
      narrower = all + " stones in all (" + each + " each side) would do, or ";
    }
    given.remark(
        "arris",
        "a straight arris stands off the curve by up to "
            + values.get(0)
            + " ("
            + worst.mark()
            + "), more than "
            + values.get(2)
            + ", on "
            + over.size()
            + (over.size() == 1 ? " stone; " : " stones; ")
            + narrower
            + "work the arris to the curve by the offsets",
        values);
  }

  /**
   * The least number each side that would do, 0 where none does; deviations go about as the square
   * of the stones' width.
   */
  private static int wayOut(Divider divider, Division division, double worst, double limit) {
    if (division.key()
        && !Double.isNaN(divider.keyHalf())
        && deviation(SoffitCurve.mirroredWhole(division.soffit(0)).edges()) > limit) {
      return 0;
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
      return 0;
    }
    return n;
  }

  private static boolean serves(List<PlacedStone> stones, double limit) {
    return !stones.isEmpty() && stones.stream().allMatch(s -> s.arrisDeviation() <= limit + 1e-9);
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
        || deviation(SoffitCurve.mirroredWhole(d.soffit(0)).edges()) <= limit;
  }
}
