package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.bench.Piece;
import headcourse.geom.Edge;
import headcourse.geom.Point;
import headcourse.job.Job;
import headcourse.layout.FaceEdge;
import headcourse.layout.Side;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds what the wall's stones beside the ends of a head are cut to. */
public final class CourseClosers {
  private CourseClosers() {}

  /**
   * The closers of a head, left end first, from below upwards; none where the job gives fewer than
   * two bed joints, and none for curved heads, whose wall stones are cut to the ring. The end's
   * outer edge is followed from the soffit to its top.
   */
  public static List<Closer> of(Job job, HeadWork head) {
    List<Closer> closers = new ArrayList<>();
    if (Shape.of(head) == Shape.CURVED) {
      return closers;
    }
    List<Length> courses = job.wall().courses();
    for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
      Ends.of(head, side)
          .ifPresent(
              end -> {
                for (int i = 0; i + 1 < courses.size(); i++) {
                  closer(head, end, side, i, courses).ifPresent(closers::add);
                }
              });
    }
    return closers;
  }

  private static Optional<Closer> closer(
      HeadWork head, Piece end, Side side, int i, List<Length> courses) {
    List<Edge> outer =
        end.stone().edges(side == Side.LEFT ? FaceEdge.Where.LEFT : FaceEdge.Where.RIGHT);
    Point a = outer.get(0).from();
    Point b = outer.get(outer.size() - 1).to();
    Point foot = a.y() <= b.y() ? a : b;
    Point top = a.y() <= b.y() ? b : a;
    Length low = Length.mm(foot.y());
    Length high = Length.mm(top.y());
    Length from = courses.get(i);
    Length to = courses.get(i + 1);
    if (from.compareTo(high) >= 0 || to.compareTo(low) <= 0) {
      return Optional.empty();
    }
    Length begins = from.max(low);
    Length stops = to.min(high);
    double jamb = head.layout().jamb(side).mm();
    return Optional.of(
        new Closer(
            side,
            i + 1,
            from,
            to,
            beyond(foot, top, begins, side, jamb),
            beyond(foot, top, stops, side, jamb),
            begins.minus(from),
            to.minus(stops)));
  }

  private static Length beyond(Point foot, Point top, Length level, Side side, double jamb) {
    double share = top.y() == foot.y() ? 0 : (level.mm() - foot.y()) / (top.y() - foot.y());
    return Length.mm(side.sign() * foot.towards(top, share).x() - jamb);
  }
}
