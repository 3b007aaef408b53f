package headcourse.layout.side;

import headcourse.geom.Edge;
import headcourse.geom.Point;
import headcourse.geom.Straight;
import headcourse.layout.FaceEdge;
import headcourse.layout.FaceEdge.Where;
import java.util.ArrayList;
import java.util.List;

/**
 * The face of one stone between two edges.
 *
 * @param lowerLeft lower left corner
 * @param lowerRight lower right corner
 * @param upperRight upper right corner
 * @param upperLeft upper left corner
 * @param soffit the underside, left to right
 */
record StoneFace(
    Point lowerLeft, Point lowerRight, Point upperRight, Point upperLeft, List<Edge> soffit) {

  /** A stone that stands on the soffit and reaches a height. */
  static StoneFace on(SoffitLine soffit, EdgeLine left, EdgeLine right, double upper) {
    Point a = soffit.meets(left);
    Point b = soffit.meets(right);
    return new StoneFace(
        a,
        b,
        new Point(right.x(upper), upper),
        new Point(left.x(upper), upper),
        soffit.between(a, b));
  }

  /** A stone that is cut level at a height below the soffit line. */
  static StoneFace dropped(EdgeLine left, EdgeLine right, double lower, double upper) {
    Point a = new Point(left.x(lower), lower);
    Point b = new Point(right.x(lower), lower);
    return new StoneFace(
        a,
        b,
        new Point(right.x(upper), upper),
        new Point(left.x(upper), upper),
        List.of(new Straight(a, b)));
  }

  /** Its edges, counter-clockwise from the lower left corner. */
  List<FaceEdge> edges() {
    List<FaceEdge> edges = new ArrayList<>();
    for (Edge e : soffit) {
      edges.add(new FaceEdge(e, Where.SOFFIT));
    }
    edges.add(new FaceEdge(new Straight(lowerRight, upperRight), Where.RIGHT));
    edges.add(new FaceEdge(new Straight(upperRight, upperLeft), Where.TOP));
    edges.add(new FaceEdge(new Straight(upperLeft, lowerLeft), Where.LEFT));
    return edges;
  }
}
