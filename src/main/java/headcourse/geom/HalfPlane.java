package headcourse.geom;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * All places on one side of a line.
 *
 * @param on a place on the line
 * @param inward unit direction into the half plane, square to the line
 */
public record HalfPlane(Point on, Vec inward) {
  /** Closer to an edge's end than this, a crossing is at the end. */
  private static final double AT_END = 1e-12;

  /** How far inside a place lies; negative outside. */
  public double depth(Point p) {
    return p.minus(on).dot(inward);
  }

  /**
   * The part of a closed path inside; arcs stay arcs. Where the line cuts a hollow path into
   * several parts they are joined along the line, which leaves areas and moments right.
   */
  public Optional<Path> clip(Path path) {
    List<Edge> kept = new ArrayList<>();
    for (Edge edge : path.edges()) {
      for (Edge part : parts(edge)) {
        if (depth(part.at(0.5)) >= 0) {
          join(kept, part.from());
          kept.add(part);
        }
      }
    }
    if (kept.isEmpty()) {
      return Optional.empty();
    }
    join(kept, kept.get(0).from());
    return Optional.of(new Path(kept, true));
  }

  private static void join(List<Edge> kept, Point next) {
    if (!kept.isEmpty()) {
      Point last = kept.get(kept.size() - 1).to();
      if (last.distance(next) > Tolerance.SAME) {
        kept.add(new Straight(last, next));
      }
    }
  }

  private List<Edge> parts(Edge edge) {
    double level = on.x() * inward.x() + on.y() * inward.y();
    List<Double> cuts = new ArrayList<>();
    Harmonic arc = Harmonic.of(edge, inward);
    if (arc != null) {
      cuts.addAll(arc.reaching(level));
    } else if (edge instanceof Straight s) {
      double a = depth(s.from());
      double b = depth(s.to());
      if (a * b < 0) {
        cuts.add(a / (a - b));
      }
    } else {
      List<Edge> chords = new ArrayList<>();
      Point last = edge.from();
      for (Point p : edge.flattened(Tolerance.PAPER)) {
        chords.addAll(parts(new Straight(last, p)));
        last = p;
      }
      return chords;
    }
    cuts.removeIf(t -> t < AT_END || t > 1 - AT_END);
    cuts.sort(null);
    List<Edge> parts = new ArrayList<>();
    double from = 0;
    for (double t : cuts) {
      parts.add(part(edge, from, t));
      from = t;
    }
    parts.add(part(edge, from, 1));
    return parts;
  }

  private static Edge part(Edge edge, double t0, double t1) {
    if (t0 == 0 && t1 == 1) {
      return edge;
    }
    if (edge instanceof Arc a) {
      return new Arc(a.centre(), a.radius(), a.start() + a.sweep() * t0, a.sweep() * (t1 - t0));
    }
    if (edge instanceof EllipticArc e) {
      return new EllipticArc(
          e.centre(), e.rx(), e.ry(), e.turn(), e.start() + e.sweep() * t0, e.sweep() * (t1 - t0));
    }
    return new Straight(edge.at(t0), edge.at(t1));
  }
}
