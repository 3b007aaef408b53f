package headcourse.sheet.bench;

import headcourse.geom.Box;
import headcourse.geom.Edge;
import headcourse.geom.Point;
import headcourse.geom.Similarity;
import headcourse.geom.Tolerance;
import headcourse.layout.FaceEdge.Where;
import headcourse.layout.PlacedStone;
import headcourse.sheet.OwnFrame;
import headcourse.stock.StockPlan;
import headcourse.units.Length;
import java.util.List;
import java.util.Optional;

/**
 * Where the left side of a part lies on its blank, from the blank's left end and lower edge, mm.
 * Its ends lie on that edge, which is a corner's arris, and on the part's upper line; but a side
 * beside a step, or one under a top that is not level, ends short of them.
 *
 * @param low its lower end
 * @param high its upper end
 * @param top the part's upper line
 */
record OnBlank(Point low, Point high, double top) {
  static OnBlank of(PlacedStone s, StockPlan.Cut cut) {
    double at = cut.at().mm();
    if (cut.part() == StockPlan.Part.SOFFIT) {
      double up = cut.up().mm();
      double top = up + cut.high().mm();
      return new OnBlank(new Point(at, up), new Point(at, top), top);
    }
    // As it lies on the blank: along its own soffit.
    Similarity own = OwnFrame.of(s);
    Box b = s.outline().transformed(own).bounds();
    List<Edge> soffit = s.edges(Where.SOFFIT);
    List<Edge> right = s.edges(Where.RIGHT);
    List<Edge> left = s.edges(Where.LEFT);
    Point ll = soffit.get(0).from();
    Point lr = soffit.get(soffit.size() - 1).to();
    Point ur = right.isEmpty() ? lr : right.get(right.size() - 1).to();
    Point ul = left.isEmpty() ? ll : left.get(0).from();
    Point low = own.apply(cut.turned() ? ur : ll);
    Point high = own.apply(cut.turned() ? lr : ul);
    return new OnBlank(on(b, at, cut.turned(), low), on(b, at, cut.turned(), high), b.height());
  }

  // Turned end for end in its own plane, what was lower left is upper right.
  private static Point on(Box b, double at, boolean turned, Point p) {
    return turned
        ? new Point(at + b.maxX() - p.x(), b.maxY() - p.y())
        : new Point(at + p.x() - b.minX(), p.y() - b.minY());
  }

  /** Where its left side leaves the blank's lower edge. */
  Length foot() {
    return Length.mm(low.x());
  }

  /** Where its left side meets its upper line. */
  Length head() {
    return Length.mm(high.x());
  }

  /** How high over the lower edge its left side begins, where that tells on the grid. */
  Optional<Length> footUp(Length tick) {
    return told(low.y(), low.y(), tick);
  }

  /** How high over the lower edge its left side ends, where that is not on its upper line. */
  Optional<Length> headUp(Length tick) {
    return told(top - high.y(), high.y(), tick);
  }

  // Run on by what it ends short, a side comes out at another figure.
  private Optional<Length> told(double shortBy, double up, Length tick) {
    double lean = Math.abs(high.x() - low.x()) / Math.max(Tolerance.SAME, high.y() - low.y());
    return shortBy * lean * 2 >= tick.mm() ? Optional.of(Length.mm(up)) : Optional.empty();
  }

  /** Whether its left side leans by half a step of the job's grid or more. */
  boolean leans(Length tick) {
    return Math.abs(high.x() - low.x()) * 2 >= tick.mm() - 1e-6;
  }
}
