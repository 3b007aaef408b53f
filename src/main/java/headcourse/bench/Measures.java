package headcourse.bench;

import headcourse.geom.Edge;
import headcourse.geom.Extent;
import headcourse.layout.FaceEdge.Where;
import headcourse.units.Length;

/**
 * What a tape checks a cut stone by; all exact.
 *
 * @param leftEdge length of the left edge
 * @param rightEdge length of the right edge
 * @param rising diagonal from the lower left to the upper right corner
 * @param falling diagonal from the upper left to the lower right corner
 * @param extent extent along the stone's own soffit
 */
public record Measures(
    Length leftEdge, Length rightEdge, Length rising, Length falling, Length extent) {
  static Measures of(StoneFrame frame) {
    return new Measures(
        edge(frame, Where.LEFT),
        edge(frame, Where.RIGHT),
        Length.mm(frame.lowerLeft().distance(frame.upperRight())),
        Length.mm(frame.upperLeft().distance(frame.lowerRight())),
        Length.mm(Extent.along(frame.stone().outline(), frame.along()).length()));
  }

  private static Length edge(StoneFrame frame, Where side) {
    return Length.mm(frame.stone().edges(side).stream().mapToDouble(Edge::length).sum());
  }
}
