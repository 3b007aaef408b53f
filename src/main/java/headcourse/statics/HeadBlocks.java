package headcourse.statics;

import headcourse.geom.Point;
import headcourse.geom.Region;
import headcourse.job.Above;
import headcourse.layout.HeadLayout;
import headcourse.layout.JointLine;
import headcourse.layout.PlacedStone;
import headcourse.layout.Side;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * A head as solid blocks, at its own depth or another. The soffit stays where it is and every joint
 * keeps its foot and its line; all of them are shortened or lengthened by the same share, and the
 * blocks between them weigh accordingly. What stands out of the row of blocks, a key's rise and
 * drop, and the wall above weigh what they do. Blocks meet in the middle of a mortar joint.
 */
final class HeadBlocks {
  /** Parts that a block under a curve is weighed in. */
  private static final int PARTS = 16;

  /** What a stone has more than its block, by its area: less is mortar, or the parts' chords. */
  private static final double MORE = 0.02;

  private final HeadLayout head;
  private final double friction;
  private final List<Joint> joints;
  private final List<Strip> strips = new ArrayList<>();
  private final List<Load> fixed = new ArrayList<>();

  HeadBlocks(HeadLayout head, double friction, Above above) {
    this.head = head;
    this.friction = friction;
    this.joints = joints(head);
    if (joints.size() != head.stones().size() + 1) {
      throw new IllegalArgumentException(
          joints.size() + " joints for " + head.stones().size() + " stones");
    }
    boolean straight = head.curve() == null;
    Along soffit = straight ? null : new Along(head.curve().intrados());
    Along back = straight ? null : new Along(head.curve().extrados());
    double top = joints.stream().mapToDouble(j -> j.head().y()).max().orElseThrow();
    WallAbove wall = new WallAbove(above, head.halfWidth().mm(), top);
    for (int i = 0; i + 1 < joints.size(); i++) {
      Joint a = joints.get(i);
      Joint b = joints.get(i + 1);
      Strip strip =
          straight
              ? new Strip(List.of(a.foot(), b.foot()), List.of(a.head(), b.head()))
              : new Strip(between(soffit, a.foot(), b.foot()), between(back, a.head(), b.head()));
      strips.add(strip);
      fixed.add(beyond(head.stones().get(i), strip).plus(wall.on(strip.back())));
    }
  }

  private static List<Joint> joints(HeadLayout head) {
    List<JointLine> left = new ArrayList<>(side(head, Side.LEFT).toList());
    List<JointLine> right = side(head, Side.RIGHT).toList();
    // Without a key both sides begin with the joint on the centre line.
    boolean shared = left.get(0).foot().distance(right.get(0).foot()) < 1e-6;
    left.sort(Comparator.comparingInt(JointLine::index).reversed());
    return Stream.concat(left.stream(), right.stream().skip(shared ? 1 : 0))
        .map(j -> new Joint(j.foot(), j.head()))
        .toList();
  }

  private static Stream<JointLine> side(HeadLayout head, Side side) {
    return head.joints().stream()
        .filter(j -> j.side() == side)
        .sorted(Comparator.comparingInt(JointLine::index));
  }

  private static List<Point> between(Along line, Point from, Point to) {
    double a = line.nearest(from);
    double b = line.nearest(to);
    List<Point> points = new ArrayList<>();
    points.add(from);
    for (int k = 1; k < PARTS; k++) {
      points.add(line.at(a + (b - a) * k / PARTS));
    }
    points.add(to);
    return points;
  }

  /** What the stone has beyond the joints' ends. */
  private static Load beyond(PlacedStone stone, Strip strip) {
    Region face = Region.within(stone.outline());
    Load own = strip.at(1);
    double more = face.area() - own.weight();
    return more < MORE * own.weight()
        ? Load.NONE
        : new Load(more, (face.area() * face.centroid().x() - own.weight() * own.x()) / more);
  }

  /**
   * The blocks.
   *
   * @param share of every joint's length, over 0; 1 as drawn
   */
  Blocks at(double share) {
    List<Load> loads = new ArrayList<>();
    for (int i = 0; i < strips.size(); i++) {
      loads.add(strips.get(i).at(share).plus(fixed.get(i)));
    }
    return new Blocks(
        joints.stream().map(j -> j.shortened(share)).toList(),
        loads,
        seats(Side.LEFT),
        seats(Side.RIGHT),
        friction);
  }

  /** In flat heads stones past the jamb lie on it; a curved one stands on its skewback alone. */
  private List<Seat> seats(Side side) {
    List<Seat> seats = new ArrayList<>();
    double jamb = head.jamb(side).mm();
    int last = joints.size() - 1;
    for (int k = 0; k < last && !head.curved(); k++) {
      Point outer = joints.get(side == Side.LEFT ? k : last - k).foot();
      Point inner = joints.get(side == Side.LEFT ? k + 1 : last - k - 1).foot();
      if (side.sign() * outer.x() - jamb < 1e-6) {
        break;
      }
      double from = Math.max(jamb, side.sign() * inner.x());
      seats.add(new Seat(new Point(side.sign() * from, outer.y()), outer));
    }
    return seats;
  }

  /**
   * The face of a block between its joints.
   *
   * @param soffit from left to right
   * @param back from left to right, as many places
   */
  private record Strip(List<Point> soffit, List<Point> back) {
    /** What it weighs at a share of its depth. */
    Load at(double share) {
      double area = 0;
      double moment = 0;
      Point[] low = new Point[2];
      Point[] high = new Point[2];
      for (int k = 0; k < soffit.size(); k++) {
        low[1] = soffit.get(k);
        high[1] = low[1].towards(back.get(k), share);
        if (k > 0) {
          for (Point[] t : new Point[][] {{low[0], low[1], high[1]}, {low[0], high[1], high[0]}}) {
            double part = t[1].minus(t[0]).cross(t[2].minus(t[0])) / 2;
            area += part;
            moment += part * (t[0].x() + t[1].x() + t[2].x()) / 3;
          }
        }
        low[0] = low[1];
        high[0] = high[1];
      }
      return new Load(area, moment / area);
    }
  }
}
