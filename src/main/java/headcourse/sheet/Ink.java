package headcourse.sheet;

import headcourse.drawing.LabelShape;
import headcourse.drawing.Mark;
import headcourse.geom.Box;
import headcourse.geom.Overlap;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Tolerance;
import headcourse.geom.Vec;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Where ink lies on a page: the boxes of texts, and the lines. Fills do not count. */
public final class Ink {
  private record Text(Box bounds, List<Point> corners) {}

  private record Line(Box bounds, Point from, Point to, double half) {}

  private final List<Text> texts = new ArrayList<>();
  private final List<Line> lines = new ArrayList<>();

  /** An empty page. */
  public Ink() {}

  void learn(Mark mark) {
    if (mark instanceof Mark.Label label) {
      List<Point> corners = LabelShape.corners(label);
      texts.add(new Text(Box.around(corners), corners));
    } else if (mark instanceof Mark.Stroke stroke) {
      Point last = stroke.path().start();
      double half = stroke.pen().width() / 2;
      for (var edge : stroke.path().edges()) {
        for (Point p : edge.flattened(Tolerance.PAPER)) {
          lines.add(new Line(Box.around(List.of(last, p)), last, p, half));
          last = p;
        }
      }
    } else if (mark instanceof Mark.Group group) {
      group.marks().forEach(this::learn);
    } else if (mark instanceof Mark.Coloured coloured) {
      learn(coloured.mark());
    }
  }

  /** Whether a convex quadrilateral and a margin around it hold neither text nor line. */
  public boolean free(List<Point> quad, double margin) {
    Box box = Box.around(quad).grown(margin);
    for (Text t : texts) {
      if (t.bounds.overlaps(box) && Overlap.depth(quad, t.corners) > -margin) {
        return false;
      }
    }
    for (Line l : lines) {
      if (l.bounds.grown(l.half + 1e-9).overlaps(box)
          && Overlap.depth(quad, l.from, l.to) > -margin - l.half) {
        return false;
      }
    }
    return true;
  }

  /**
   * The parts of a segment that run clear of text.
   *
   * @param margin air that is kept around each text, mm
   * @return pairs of ends, from the segment's start on
   */
  List<Point[]> clearOfText(Point from, Point to, double margin) {
    List<double[]> taken = new ArrayList<>();
    Box box = Box.around(List.of(from, to)).grown(margin + 1e-9);
    for (Text t : texts) {
      if (t.bounds.overlaps(box)) {
        double[] part = inside(t.corners, from, to, margin);
        if (part[1] > part[0]) {
          taken.add(part);
        }
      }
    }
    taken.sort(Comparator.comparingDouble(p -> p[0]));
    List<Point[]> parts = new ArrayList<>();
    double at = 0;
    for (double[] part : taken) {
      if (part[0] > at) {
        parts.add(new Point[] {from.towards(to, at), from.towards(to, part[0])});
      }
      at = Math.max(at, part[1]);
    }
    if (at < 1) {
      parts.add(new Point[] {from.towards(to, at), to});
    }
    return parts;
  }

  // Which part 0 … 1 of a segment lies in a convex quadrilateral grown by a margin.
  private static double[] inside(List<Point> quad, Point from, Point to, double margin) {
    double turn = Math.signum(Path.polygon(quad).area());
    double low = 0;
    double high = 1;
    for (int i = 0; i < quad.size(); i++) {
      Vec side = quad.get((i + 1) % quad.size()).minus(quad.get(i));
      if (side.length() < 1e-9) {
        continue;
      }
      Vec in = side.normal().unit().times(turn);
      double a = in.dot(from.minus(quad.get(i))) + margin;
      double b = in.dot(to.minus(quad.get(i))) + margin;
      if (a < 0 && b < 0) {
        return new double[] {0, 0};
      }
      if (a < 0) {
        low = Math.max(low, a / (a - b));
      } else if (b < 0) {
        high = Math.min(high, a / (a - b));
      }
    }
    return new double[] {low, high};
  }
}
