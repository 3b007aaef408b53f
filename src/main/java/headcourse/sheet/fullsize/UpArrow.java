package headcourse.sheet.fullsize;

import headcourse.drawing.Board;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.Pen;
import headcourse.geom.Box;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Vec;
import java.util.List;

/** Shows on an outline that lies askew which way its stone stands. */
final class UpArrow {
  private static final double[] LENGTHS = {24, 16, 10};
  private static final double BARB = 2.5;
  private static final double CLEAR = 1.2;

  private UpArrow() {}

  /**
   * Draws it where it lies within the outline and on nothing else.
   *
   * @param alt what it says
   * @param path the outline on paper
   * @param seen what of its box lies on the page
   * @param up the way that the stone's own up points on paper, of length 1
   * @return whether there was room
   */
  static boolean draw(Board b, String alt, Path path, Box seen, Vec up) {
    List<Point> corners = path.vertices(0.5);
    Vec side = new Vec(-up.y(), up.x());
    for (double length : LENGTHS) {
      for (double fy = 0.1; fy < 0.95; fy += 0.05) {
        for (double fx : new double[] {0.5, 0.35, 0.65, 0.2, 0.8, 0.1, 0.9}) {
          Point middle =
              new Point(seen.minX() + fx * seen.width(), seen.minY() + fy * seen.height());
          Point tip = middle.plus(up.times(length / 2));
          Point tail = middle.plus(up.times(-length / 2));
          Point left = tip.plus(up.times(-BARB)).plus(side.times(BARB / 2));
          Point right = tip.plus(up.times(-BARB)).plus(side.times(-BARB / 2));
          Vec wide = side.times(BARB / 2);
          List<Point> box =
              List.of(
                  tail.plus(wide),
                  tip.plus(wide),
                  tip.plus(wide.times(-1)),
                  tail.plus(wide.times(-1)));
          if (box.stream().allMatch(p -> within(seen, p) && within(corners, p))
              && b.ink().free(box, CLEAR)) {
            Path arrow = Path.through(tail, tip, left, tip, right);
            b.group(Role.FIGURE, "", alt, g -> g.stroke(arrow, Pen.EDGE));
            return true;
          }
        }
      }
    }
    return false;
  }

  private static boolean within(Box box, Point p) {
    return p.x() > box.minX() && p.x() < box.maxX() && p.y() > box.minY() && p.y() < box.maxY();
  }

  // Whether a ray to the right crosses the polygon an odd number of times.
  private static boolean within(List<Point> polygon, Point p) {
    boolean in = false;
    for (int i = 0; i < polygon.size(); i++) {
      Point a = polygon.get(i);
      Point b = polygon.get((i + 1) % polygon.size());
      if (a.y() > p.y() != b.y() > p.y()
          && p.x() < a.x() + (b.x() - a.x()) * (p.y() - a.y()) / (b.y() - a.y())) {
        in = !in;
      }
    }
    return in;
  }
}
