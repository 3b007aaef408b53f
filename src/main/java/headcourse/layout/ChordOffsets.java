package headcourse.layout;

import headcourse.geom.Edge;
import headcourse.geom.Point;
import headcourse.geom.Vec;
import java.util.ArrayList;
import java.util.List;

/**
 * How far a curved soffit stands off the straight arris between two of its corners, square to it;
 * millimetres, positive away from the opening. These are what is marked to work an arris to the
 * curve.
 *
 * @param from the arris's left end
 * @param to its right end
 * @param quarter at a quarter of its length from the left
 * @param half at half of it
 * @param threeQuarters at three quarters
 * @param greatest anywhere along it
 */
public record ChordOffsets(
    Point from, Point to, double quarter, double half, double threeQuarters, double greatest) {
  /** Edges whose directions differ by more (radians) meet in a corner. */
  private static final double CORNER = 1e-6;

  private static final int HALVINGS = 60;

  /** The length of the arris. */
  public double chord() {
    return from.distance(to);
  }

  /** Those of a stone: one for each smooth part of its soffit, left to right. */
  public static List<ChordOffsets> of(PlacedStone stone) {
    return of(stone.edges(FaceEdge.Where.SOFFIT));
  }

  /** Those of soffit edges end to end, left to right. */
  public static List<ChordOffsets> of(List<Edge> soffit) {
    List<ChordOffsets> all = new ArrayList<>();
    List<Edge> smooth = new ArrayList<>();
    for (Edge edge : soffit) {
      if (!smooth.isEmpty()
          && Math.abs(smooth.get(smooth.size() - 1).tangent(1).cross(edge.tangent(0))) > CORNER) {
        all.add(ofSmooth(smooth));
        smooth.clear();
      }
      smooth.add(edge);
    }
    if (!smooth.isEmpty()) {
      all.add(ofSmooth(smooth));
    }
    return all;
  }

  private static ChordOffsets ofSmooth(List<Edge> edges) {
    Point from = edges.get(0).from();
    Point to = edges.get(edges.size() - 1).to();
    Vec chord = to.minus(from);
    Vec along = chord.unit();
    double greatest = 0;
    for (Edge e : edges) {
      greatest = Math.max(greatest, Math.abs(off(farthest(e, along), from, along)));
    }
    double l = chord.length();
    return new ChordOffsets(
        from,
        to,
        at(edges, from, along, l / 4),
        at(edges, from, along, l / 2),
        at(edges, from, along, 3 * l / 4),
        greatest);
  }

  private static double off(Point p, Point from, Vec along) {
    return along.cross(p.minus(from));
  }

  /**
   * Where an edge runs parallel to a direction, or the end nearer to that.
   *
   * @param edge an edge that turns one way
   * @param along a unit direction
   */
  public static Point farthest(Edge edge, Vec along) {
    double lo = 0;
    double hi = 1;
    boolean rises = along.cross(edge.tangent(0)) > 0;
    for (int i = 0; i < HALVINGS; i++) {
      double mid = (lo + hi) / 2;
      if (along.cross(edge.tangent(mid)) > 0 == rises) {
        lo = mid;
      } else {
        hi = mid;
      }
    }
    return edge.at(lo);
  }

  private static double at(List<Edge> edges, Point from, Vec along, double run) {
    int k = 0;
    while (k + 1 < edges.size() && along.dot(edges.get(k).to().minus(from)) < run) {
      k++;
    }
    Edge edge = edges.get(k);
    double lo = 0;
    double hi = 1;
    for (int i = 0; i < HALVINGS; i++) {
      double mid = (lo + hi) / 2;
      if (along.dot(edge.at(mid).minus(from)) < run) {
        lo = mid;
      } else {
        hi = mid;
      }
    }
    return off(edge.at(lo), from, along);
  }
}
