package headcourse.sheet.frame;

import headcourse.drawing.Mark;
import headcourse.drawing.Pen;
import headcourse.geom.Box;
import headcourse.geom.Path;
import headcourse.geom.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * Centring marks: at both ends of the two axes of the trimmed page, 0.7 mm wide (ISO 5457; from
 * memory). They end at the border, where the standard lets them run 5 mm into the drawing, because
 * sheets this small have no room to lose there.
 */
final class CentringMarks {
  /** What an office printer leaves blank, mm. */
  private static final double UNPRINTED = 6.35;

  /** A shorter mark cannot be told from dirt, mm. */
  private static final double SHORTEST = 1;

  private CentringMarks() {}

  static List<Mark> of(double width, double height, Box border) {
    double x = width / 2;
    double y = height / 2;
    double e = UNPRINTED;
    List<Mark> marks = new ArrayList<>();
    add(marks, new Point(x, e), new Point(x, border.minY()));
    add(marks, new Point(x, border.maxY()), new Point(x, height - e));
    add(marks, new Point(e, y), new Point(border.minX(), y));
    add(marks, new Point(border.maxX(), y), new Point(width - e, y));
    return marks;
  }

  private static void add(List<Mark> marks, Point from, Point to) {
    if (to.x() - from.x() >= SHORTEST || to.y() - from.y() >= SHORTEST) {
      marks.add(new Mark.Stroke(Path.through(from, to), new Pen(0.7, Pen.Pattern.SOLID)));
    }
  }
}
