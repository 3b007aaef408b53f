package headcourse.sheet;

import headcourse.drawing.LabelShape;
import headcourse.drawing.Mark;
import headcourse.geom.Box;
import headcourse.geom.Overlap;
import headcourse.geom.Point;
import headcourse.geom.Tolerance;
import java.util.ArrayList;
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
}
