package headcourse.layout.curved;

import headcourse.geom.Edge;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Similarity;
import headcourse.layout.HeadLayout.Centre;
import headcourse.layout.HeadLayout.Place;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A soffit struck out.
 *
 * @param intrados its right half
 * @param radius the one radius of its arcs, or null where it has several or none
 * @param foci of an ellipse, else empty
 */
record SoffitCurve(Intrados intrados, Double radius, List<Point> foci) {
  private static final double ON_AXIS = 1e-9;

  /** A soffit of arcs and straights, or an ellipse, crown first. */
  static SoffitCurve of(Double radius, Run... runs) {
    return new SoffitCurve(new Intrados(List.of(runs)), radius, List.of());
  }

  /** The centres with the rods that strike the arcs, highest and leftmost first: A, B, … */
  List<Centre> centres() {
    List<Centre> found = new ArrayList<>();
    for (Run run : intrados.runs()) {
      if (run instanceof ArcRun arc) {
        double to = arc.start();
        double from = to - arc.angle();
        if (Math.abs(arc.centre().x()) < ON_AXIS) {
          found.add(new Centre("", arc.centre(), arc.radius(), from, Math.PI - from));
        } else {
          found.add(new Centre("", arc.centre(), arc.radius(), from, to));
          found.add(
              new Centre("", arc.centre().mirrored(), arc.radius(), Math.PI - to, Math.PI - from));
        }
      }
    }
    found.sort(
        Comparator.comparingDouble((Centre c) -> -Math.rint(c.at().y() * 1e6))
            .thenComparingDouble(c -> c.at().x()));
    List<Centre> named = new ArrayList<>();
    for (Centre c : found) {
      String name = String.valueOf((char) ('A' + named.size()));
      named.add(new Centre(name, c.at(), c.trammel(), c.fromAngle(), c.toAngle()));
    }
    return named;
  }

  /** What else is marked on the wall to strike it, from left to right. */
  List<Place> places() {
    List<Place> places = new ArrayList<>();
    double[] starts = intrados.starts();
    places.add(new Place("crown", intrados.at(0)));
    for (int i = 1; i < starts.length; i++) {
      Point p = intrados.at(starts[i]);
      String name = i == starts.length - 1 ? "springing" : "meeting";
      places.add(new Place(name, p));
      places.add(new Place(name, p.mirrored()));
    }
    foci.forEach(f -> places.add(new Place("focus", f)));
    places.sort(Comparator.comparingDouble(p -> p.at().x()));
    return places;
  }

  /** The whole curve from left to right. */
  Path whole() {
    return mirroredWhole(intrados.between(0, intrados.length()));
  }

  /** A right half and its mirror image as one path from left to right. */
  static Path mirroredWhole(List<Edge> half) {
    List<Edge> edges = new ArrayList<>();
    for (int i = half.size() - 1; i >= 0; i--) {
      edges.add(mirrored(half.get(i)));
    }
    edges.addAll(half);
    return new Path(edges, false);
  }

  /** The mirror image in the centre line, travelled the other way. */
  static Edge mirrored(Edge edge) {
    return edge.transformed(Similarity.mirrorX()).reversed();
  }
}
