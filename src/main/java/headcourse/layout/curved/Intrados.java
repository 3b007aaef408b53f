package headcourse.layout.curved;

import headcourse.geom.Edge;
import headcourse.geom.Point;
import headcourse.geom.Vec;
import java.util.ArrayList;
import java.util.List;

/**
 * The right half of a soffit curve, measured along itself from the crown (0) to the springing; the
 * left half is its mirror image. It never turns away from the opening.
 */
final class Intrados {
  /** A step of Newton's method after which the next, its square, is lost in rounding; mm. */
  private static final double SETTLED = 1e-8;

  private final List<Run> runs;
  private final double[] starts;

  /**
   * Joins runs, crown first.
   *
   * @param pieces smooth pieces end to end; those of no length are left out
   */
  Intrados(List<Run> pieces) {
    runs = pieces.stream().filter(r -> r.length() > 1e-9).toList();
    starts = new double[runs.size() + 1];
    for (int i = 0; i < runs.size(); i++) {
      starts[i + 1] = starts[i] + runs.get(i).length();
    }
  }

  /** Its length. */
  double length() {
    return starts[runs.size()];
  }

  /** The pieces, crown first. */
  List<Run> runs() {
    return runs;
  }

  /** How far along each piece begins, and the whole length at the end. */
  double[] starts() {
    return starts.clone();
  }

  private int index(double s) {
    int i = 0;
    while (i + 1 < runs.size() && s >= starts[i + 1]) {
      i++;
    }
    return i;
  }

  private Run.Frame frame(double s) {
    int i = index(s);
    return runs.get(i).frame(s - starts[i]);
  }

  /** The place at a length along it. */
  Point at(double s) {
    return frame(s).at();
  }

  /** The place at a distance outside the curve. */
  Point outside(double d, double s) {
    return frame(s).outside(d);
  }

  /** The unit direction of travel, outwards. */
  Vec tangent(double s) {
    return frame(s).along();
  }

  /** The line of a joint, square to the curve. */
  CutLine joint(double s, int joint) {
    Run.Frame frame = frame(s);
    return new CutLine(frame.at(), frame.along().normal(), s, joint);
  }

  /** The curve between two lengths, travelled outwards. */
  List<Edge> between(double s0, double s1) {
    List<Edge> edges = new ArrayList<>();
    for (int i = 0; i < runs.size(); i++) {
      double from = Math.max(s0, starts[i]) - starts[i];
      double to = Math.min(s1, starts[i + 1]) - starts[i];
      if (to > from) {
        edges.add(runs.get(i).between(from, to));
      }
    }
    return edges;
  }

  /** The parallel curve between two lengths; below nought the first piece is carried on. */
  List<Edge> outside(double d, double s0, double s1) {
    List<Edge> edges = new ArrayList<>();
    for (int i = 0; i < runs.size(); i++) {
      double from = (i == 0 ? s0 : Math.max(s0, starts[i])) - starts[i];
      double to = Math.min(s1, starts[i + 1]) - starts[i];
      if (to > from) {
        edges.addAll(runs.get(i).outside(d, from, to));
      }
    }
    return edges;
  }

  /**
   * How far along a line crosses the curve, or its parallel, moved up.
   *
   * @param line the line
   * @param d distance of the parallel curve; 0 for the curve itself
   * @param lift how far the curve is moved up
   */
  double crossing(CutLine line, double d, double lift) {
    Vec up = new Vec(0, lift);
    double s = line.s();
    for (int i = 0; i < 60; i++) {
      Run.Frame frame = frame(s);
      Point p = frame.outside(d).plus(up);
      double speed = 1 + d * frame.curvature();
      double step = line.beyond(p) / (speed * frame.along().dot(line.across()));
      s -= step;
      if (Math.abs(step) <= SETTLED) {
        break;
      }
    }
    return s;
  }
}
