package headcourse.sheet.elevation;

import headcourse.drawing.Board;
import headcourse.drawing.LabelSize;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Pen;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Region;
import headcourse.geom.Similarity;
import headcourse.geom.Vec;
import headcourse.layout.PlacedStone;
import java.util.List;

/**
 * Marks of stones too small on paper to bear them: outside the head, along the stone, each at the
 * end of a leader. Where stones are narrower than letters are high, marks stand in rows.
 */
final class OuterMarks {
  private static final Lettering LETTERS = new Lettering(2.5, true);

  /** From the stone to the first row of marks, mm. */
  private static final double REACH = 2.5;

  /** From one row to the next, mm, besides the marks' own length. */
  private static final double ROW = 1.5;

  private static final int ROWS = 6;
  private static final double MARGIN = 0.5;

  /** A leader begins this far inside the stone's end, mm. */
  private static final double INSIDE = 0.8;

  private final HeadFigures figures;
  private final Similarity view;
  private final Board taken = new Board();

  OuterMarks(HeadFigures figures, Similarity view) {
    this.figures = figures;
    this.view = view;
  }

  /** Takes note of a stone and of what is written on it. */
  void taken(Path outline, List<Mark> marks) {
    taken.stroke(outline, Pen.OUTLINE);
    taken.addAll(marks);
  }

  /** A mark with its leader, in the nearest row that has room; nothing where none has. */
  List<Mark> mark(PlacedStone stone) {
    Point middle = Region.within(stone.outline()).centroid();
    Vec up = outward(middle);
    double end = 0;
    for (Point p : stone.outline().vertices(0.1)) {
      end = Math.max(end, p.minus(middle).dot(up));
    }
    Point foot = view.apply(middle.plus(up.times(end)));
    Vec way = view.apply(up).unit();
    double degrees = -Math.toDegrees(way.angle());
    boolean reversed = degrees > 90 + 1e-6 || degrees <= -90 + 1e-6;
    LabelSize size = LabelSize.of(stone.mark(), LETTERS);
    Vec text = reversed ? way.times(-1) : way;
    Vec below = new Vec(-text.y(), text.x()).times(LETTERS.height() / 2);
    for (int row = 0; row < ROWS; row++) {
      double from = REACH + row * (size.width() + ROW);
      Point at = foot.plus(way.times(from + size.width() / 2)).plus(below);
      double turn = reversed ? degrees - Math.copySign(180, degrees) : degrees;
      Mark.Label label = new Mark.Label(at, stone.mark(), LETTERS, Align.MIDDLE, turn);
      Path leader =
          Path.through(
              foot.plus(way.times(-Math.min(INSIDE, end * view.scale()))),
              foot.plus(way.times(from - MARGIN - 0.1)));
      if (taken.ink().free(size.corners(at, Align.MIDDLE, turn), MARGIN)
          && clear(foot, way, from)) {
        List<Mark> marks = List.of(new Mark.Stroke(leader, Pen.FINE), label);
        taken.addAll(marks);
        return marks;
      }
    }
    return List.of();
  }

  // Whether a leader reaches so far without touching another stone or mark.
  private boolean clear(Point foot, Vec way, double from) {
    Vec aside = new Vec(-way.y(), way.x()).times(0.1);
    Point a = foot.plus(way.times(0.6));
    Point b = foot.plus(way.times(from - 0.1));
    return taken
        .ink()
        .free(
            List.of(a.plus(aside), b.plus(aside), b.plus(aside.times(-1)), a.plus(aside.times(-1))),
            0.2);
  }

  // Away from the opening: up, in an arch square to its back.
  private Vec outward(Point middle) {
    if (!figures.curved()) {
      return new Vec(0, 1);
    }
    var curve = figures.layout().curve();
    Vec way = nearest(curve.extrados(), middle).minus(nearest(curve.intrados(), middle));
    return way.length() < 1e-6 ? new Vec(0, 1) : way.unit();
  }

  private static Point nearest(Path path, Point to) {
    List<Point> points = path.vertices(0.05);
    Point best = points.get(0);
    for (int i = 1; i < points.size(); i++) {
      Point a = points.get(i - 1);
      Vec along = points.get(i).minus(a);
      double t = to.minus(a).dot(along) / Math.max(1e-12, along.dot(along));
      Point p = a.plus(along.times(Math.max(0, Math.min(1, t))));
      best = p.distance(to) < best.distance(to) ? p : best;
    }
    return best;
  }
}
