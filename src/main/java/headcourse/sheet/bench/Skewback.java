package headcourse.sheet.bench;

import headcourse.geom.Edge;
import headcourse.geom.Point;
import headcourse.geom.Vec;
import headcourse.job.Job;
import headcourse.layout.FaceEdge.Where;
import headcourse.layout.HeadLayout;
import headcourse.layout.PlacedStone;
import headcourse.layout.Side;
import headcourse.units.Angle;
import headcourse.units.Length;
import java.util.List;

/**
 * The line that the wall stones are cut to at one end of a head: parallel to the end stone's edge
 * and a whole joint outside it, for the head's own line at the end is the middle of that joint.
 * Points as if the end were the right one, x from the centre line, model space.
 *
 * @param side which end
 * @param jamb where the jamb line stands, mm
 * @param from where the cut begins: on the soffit line in a jack arch, on the jamb line in an arch
 * @param to where it ends: on the top line, or at the back of the arch
 * @param plumb how far the end stands plumb above that, mm; nought where the back is a curve
 * @param ring whether the wall stones above are cut to a curved back
 */
record Skewback(Side side, double jamb, Point from, Point to, double plumb, boolean ring) {
  private static final double SOME = 0.05;

  static Skewback of(Job job, HeadLayout layout, Side side) {
    PlacedStone end = layout.end(side);
    List<Edge> edge = end.edges(side == Side.LEFT ? Where.LEFT : Where.RIGHT);
    Point first = edge.get(0).from();
    Point last = edge.get(edge.size() - 1).to();
    Point foot = side == Side.LEFT ? last.mirrored() : first;
    Point head = side == Side.LEFT ? first.mirrored() : last;
    double joint = job.setting().joint().mm();
    double jamb = layout.jamb(side).mm();
    Vec along = head.minus(foot).unit();
    // To the right of the way up, away from the end stone.
    Vec out = along.normal().times(-joint);
    Point on = foot.plus(out);
    Point from =
        layout.fanned() ? at(on, along, -on.y() / along.y()) : at(on, along, back(on, along, jamb));
    Point to = head.plus(out);
    boolean ring =
        layout.curved()
            && layout
                .opening()
                .head()
                .params()
                .word("extrados")
                .orElse("concentric")
                .equals("concentric");
    double plumb = 0;
    if (!ring) {
      double high = plumbTop(layout, side, head);
      if (high - head.y() > SOME) {
        to = at(to, along, (head.x() + joint - to.x()) / along.x());
        plumb = high - to.y();
      } else {
        to = at(to, along, (head.y() - to.y()) / along.y());
      }
    }
    return new Skewback(side, jamb, from, to, plumb, ring);
  }

  private static Point at(Point on, Vec along, double far) {
    return on.plus(along.times(far));
  }

  private static double back(Point on, Vec along, double jamb) {
    return along.x() > 1e-6 ? (jamb - on.x()) / along.x() : 0;
  }

  // The highest corner over the end of the line.
  private static double plumbTop(HeadLayout layout, Side side, Point head) {
    return layout.stones().stream()
        .filter(s -> s.side() == side)
        .flatMap(s -> s.outline().edges().stream())
        .map(e -> side == Side.LEFT ? e.from().mirrored() : e.from())
        .filter(p -> Math.abs(p.x() - head.x()) < SOME)
        .mapToDouble(Point::y)
        .max()
        .orElse(head.y());
  }

  /** How far it runs out, level. */
  Length out() {
    return Length.mm(to.x() - from.x());
  }

  /** How far it rises, plumb. */
  Length up() {
    return Length.mm(to.y() - from.y());
  }

  /** How long it is, along itself. */
  Length along() {
    return Length.mm(to.distance(from));
  }

  /** From horizontal; 90° is plumb. */
  Angle fromHorizontal() {
    return Angle.degrees(Math.toDegrees(Math.atan2(to.y() - from.y(), to.x() - from.x())));
  }

  /** Whether it is a level bed. */
  boolean level() {
    return to.y() - from.y() < SOME;
  }

  /** Whether another end is cut alike, as its mirror image. */
  boolean alike(Skewback o) {
    return Math.abs(jamb - o.jamb) < SOME
        && from.distance(o.from) < SOME
        && to.distance(o.to) < SOME
        && Math.abs(plumb - o.plumb) < SOME;
  }
}
