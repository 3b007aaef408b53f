package headcourse.sheet.bench;

import headcourse.geom.Point;
import headcourse.geom.Vec;
import headcourse.job.Job;
import headcourse.layout.HeadLayout;
import headcourse.layout.JointLine;
import headcourse.layout.PlacedStone;
import headcourse.layout.Side;
import headcourse.units.Angle;
import headcourse.units.Length;
import java.util.Comparator;

/**
 * The line that the wall stones are cut to at one end of a head, half a joint outside the end's
 * joint line; points as if the end were the right one, x from the centre line, model space.
 *
 * @param side which end
 * @param jamb where the jamb line stands, mm
 * @param from where the cut begins: on the jamb line, or on the soffit line past it
 * @param to where it ends, at the back of the head
 * @param plumb how far the end stands plumb above that, mm; nought where the back is a curve
 * @param ring whether the wall stones above are cut to a curved back
 */
record Skewback(Side side, double jamb, Point from, Point to, double plumb, boolean ring) {
  private static final double SOME = 0.05;

  static Skewback of(Job job, HeadLayout layout, Side side) {
    JointLine end =
        layout.joints().stream()
            .filter(j -> j.side() == side)
            .max(Comparator.comparingInt(JointLine::index))
            .orElseThrow();
    Point foot = side == Side.LEFT ? end.foot().mirrored() : end.foot();
    Point head = side == Side.LEFT ? end.head().mirrored() : end.head();
    double jamb = layout.jamb(side).mm();
    Vec along = head.minus(foot).unit();
    // To the right of the way up, away from the end stone.
    Vec out = along.normal().times(-job.setting().joint().mm() / 2);
    Point from = foot.plus(out);
    boolean rests = foot.x() > jamb + SOME;
    if (rests && along.y() > SOME) {
      from = from.plus(along.times((foot.y() - from.y()) / along.y()));
    } else if (!rests && along.x() > SOME) {
      from = from.plus(along.times((foot.x() - from.x()) / along.x()));
    }
    Point to = head.plus(out);
    String extrados = layout.opening().head().params().word("extrados").orElse("concentric");
    boolean curved = layout.curve().striking() == null;
    double plumb = 0;
    if (curved && !extrados.equals("concentric")) {
      plumb = plumbTop(layout, side, head) - to.y();
    }
    return new Skewback(side, jamb, from, to, plumb, curved && extrados.equals("concentric"));
  }

  // The highest corner over the end of the line.
  private static double plumbTop(HeadLayout layout, Side side, Point head) {
    return layout.stones().stream()
        .filter(s -> s.side() == side)
        .map(PlacedStone::outline)
        .flatMap(p -> p.edges().stream())
        .map(e -> side == Side.LEFT ? e.from().mirrored() : e.from())
        .filter(p -> Math.abs(p.x() - head.x()) < SOME)
        .mapToDouble(Point::y)
        .max()
        .orElse(head.y());
  }

  /** How far it runs out. */
  Length out() {
    return Length.mm(to.x() - from.x());
  }

  /** How far it rises. */
  Length up() {
    return Length.mm(to.y() - from.y());
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
