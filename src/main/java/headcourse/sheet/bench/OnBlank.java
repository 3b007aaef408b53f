package headcourse.sheet.bench;

import headcourse.geom.Box;
import headcourse.geom.Edge;
import headcourse.geom.Point;
import headcourse.geom.Similarity;
import headcourse.layout.FaceEdge.Where;
import headcourse.layout.PlacedStone;
import headcourse.sheet.OwnFrame;
import headcourse.stock.StockPlan;
import headcourse.units.Length;
import java.util.List;

/**
 * Where the corners of a part lie on its blank, from the blank's left end, mm: on the blank's lower
 * edge, which is a corner's arris, and on the part's upper line.
 */
record OnBlank(double lowLeft, double lowRight, double highLeft, double highRight) {
  static OnBlank of(PlacedStone s, StockPlan.Cut cut) {
    double at = cut.at().mm();
    if (cut.part() == StockPlan.Part.SOFFIT) {
      double end = at + cut.extent().mm();
      return new OnBlank(at, end, at, end);
    }
    // As it lies on the blank: along its own soffit.
    Similarity own = OwnFrame.of(s);
    Box b = s.outline().transformed(own).bounds();
    List<Edge> soffit = s.edges(Where.SOFFIT);
    List<Edge> right = s.edges(Where.RIGHT);
    List<Edge> left = s.edges(Where.LEFT);
    Point ll = soffit.get(0).from();
    Point lr = soffit.get(soffit.size() - 1).to();
    double lowLeft = own.apply(ll).x() - b.minX();
    double lowRight = own.apply(lr).x() - b.minX();
    Point ur = right.isEmpty() ? lr : right.get(right.size() - 1).to();
    Point ul = left.isEmpty() ? ll : left.get(0).from();
    double highLeft = own.apply(ul).x() - b.minX();
    double highRight = own.apply(ur).x() - b.minX();
    if (!cut.turned()) {
      return new OnBlank(at + lowLeft, at + lowRight, at + highLeft, at + highRight);
    }
    // Turned end for end in its own plane, what was lower left is upper right.
    double end = at + b.width();
    return new OnBlank(end - highRight, end - highLeft, end - lowRight, end - lowLeft);
  }

  /** Where its left side leaves the blank's lower edge. */
  Length foot() {
    return Length.mm(lowLeft);
  }

  /** Where its left side meets its upper line. */
  Length head() {
    return Length.mm(highLeft);
  }

  /** Whether its left side leans by half a step of the job's grid or more. */
  boolean leans(Length tick) {
    return Math.abs(highLeft - lowLeft) * 2 >= tick.mm() - 1e-6;
  }
}
