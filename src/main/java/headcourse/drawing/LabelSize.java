package headcourse.drawing;

import headcourse.drawing.Mark.Align;
import headcourse.geom.Point;
import java.util.List;

/**
 * How much paper a line of text takes, mm, wherever it is put.
 *
 * @param width of the text
 * @param above how far the ink reaches above the base line
 * @param below how far it reaches below
 */
public record LabelSize(double width, double above, double below) {
  /** The size of a text, from the font's own measures. */
  public static LabelSize of(String text, Lettering lettering) {
    return new LabelSize(
        LabelShape.width(text, lettering),
        LabelShape.above(text, lettering),
        LabelShape.below(text, lettering));
  }

  /** The four corners of the ink's box on paper, in order around it; see {@link Mark.Label}. */
  public List<Point> corners(Point at, Align align, double degrees) {
    double x0 =
        switch (align) {
          case START -> 0;
          case MIDDLE -> -width / 2;
          case END -> -width;
        };
    double c = degrees == 0 ? 1 : Math.cos(Math.toRadians(degrees));
    double s = degrees == 0 ? 0 : Math.sin(Math.toRadians(degrees));
    return List.of(
        corner(at, x0, below, c, s),
        corner(at, x0 + width, below, c, s),
        corner(at, x0 + width, -above, c, s),
        corner(at, x0, -above, c, s));
  }

  // Paper's y runs down, and the label turns counter-clockwise as seen: (x, y) ↦ (xc + ys, yc −
  // xs).
  private static Point corner(Point at, double x, double y, double c, double s) {
    return new Point(at.x() + x * c + y * s, at.y() + y * c - x * s);
  }
}
