package headcourse.layout.curved;

import headcourse.geom.Edge;
import headcourse.geom.Point;
import headcourse.geom.Similarity;
import headcourse.geom.Vec;
import java.util.List;

/**
 * An extrados at one depth outside the soffit, square to it. Over a pointed crown its two sides run
 * on until they meet on the centre line.
 *
 * @param intrados the soffit
 * @param depth depth of the ring
 * @param lift how far it is moved up, for a key that stands up
 */
record ConcentricExtrados(Intrados intrados, double depth, double lift) implements Extrados {
  @Override
  public Point head(CutLine line) {
    double s = intrados.crossing(line, depth, lift);
    return intrados.outside(depth, s).plus(new Vec(0, lift));
  }

  @Override
  public List<Edge> top(int stone, CutLine inner, CutLine outer) {
    double s0 = intrados.crossing(inner, depth, lift);
    double s1 = intrados.crossing(outer, depth, lift);
    Similarity up = Similarity.move(0, lift);
    return intrados.outside(depth, s0, s1).stream().map(e -> e.transformed(up)).toList();
  }

  @Override
  public Extrados raised(double rise) {
    return new ConcentricExtrados(intrados, depth, lift + rise);
  }

  @Override
  public double sliver(List<CutLine> joints) {
    return Double.POSITIVE_INFINITY;
  }

  @Override
  public List<Edge> half() {
    double s0 = intrados.crossing(CutLine.CENTRE, depth, 0);
    return intrados.outside(depth, s0, intrados.length());
  }
}
