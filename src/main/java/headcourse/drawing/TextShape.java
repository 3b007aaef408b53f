package headcourse.drawing;

import headcourse.geom.Box;
import headcourse.geom.Overlap;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Vec;
import java.util.List;

/** The box of a text on a page, turned as the text is. */
final class TextShape extends MarkShape {
  private final List<Point> corners;

  private TextShape(List<Point> corners) {
    super(Box.around(corners));
    this.corners = corners;
  }

  static TextShape of(Mark.Label label) {
    return new TextShape(LabelShape.corners(label));
  }

  @Override
  boolean touches(List<Point> quad, Box around, double margin) {
    return Overlap.deeper(quad, corners, -margin);
  }

  /** Which part 0 … 1 of a segment lies within it and a margin around it; ends alike: none. */
  double[] covers(Point from, Point to, double margin) {
    double turn = Math.signum(Path.polygon(corners).area());
    double low = 0;
    double high = 1;
    for (int i = 0; i < corners.size(); i++) {
      Vec side = corners.get((i + 1) % corners.size()).minus(corners.get(i));
      if (side.length() < 1e-9) {
        continue;
      }
      Vec in = side.normal().unit().times(turn);
      double a = in.dot(from.minus(corners.get(i))) + margin;
      double b = in.dot(to.minus(corners.get(i))) + margin;
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
