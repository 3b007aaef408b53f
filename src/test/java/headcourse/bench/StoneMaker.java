package headcourse.bench;

import headcourse.geom.Edge;
import headcourse.geom.Point;
import headcourse.geom.Straight;
import headcourse.job.Job;
import headcourse.layout.FaceEdge;
import headcourse.layout.FaceEdge.Where;
import headcourse.layout.HeadLayout;
import headcourse.layout.PlacedStone;
import headcourse.layout.Proof;
import headcourse.layout.Role;
import headcourse.layout.Side;
import headcourse.units.Length;
import java.util.List;

/** Stones and heads made by hand, in inches. */
final class StoneMaker {
  static final double INCH = 25.4;

  private StoneMaker() {}

  static Point at(double x, double y) {
    return new Point(x * INCH, y * INCH);
  }

  /** A four-sided stone from its corners, counter-clockwise from the lower left. */
  static PlacedStone quad(String mark, Point a, Point b, Point c, Point d) {
    return faced(
        mark,
        List.of(
            new FaceEdge(new Straight(a, b), Where.SOFFIT),
            new FaceEdge(new Straight(b, c), Where.RIGHT),
            new FaceEdge(new Straight(c, d), Where.TOP),
            new FaceEdge(new Straight(d, a), Where.LEFT)));
  }

  /** A stone with edges of its own; K is the key, a mark with E at its end an end stone. */
  static PlacedStone faced(String mark, List<FaceEdge> face) {
    char first = mark.charAt(0);
    Side side = first == 'K' ? Side.CENTRE : first == 'L' ? Side.LEFT : Side.RIGHT;
    Role role = first == 'K' ? Role.KEY : mark.endsWith("E") ? Role.END : Role.STONE;
    int index = first == 'K' ? 0 : mark.charAt(1) - '0';
    Edge soffit = face.get(0).edge();
    return new PlacedStone(
        mark,
        role,
        side,
        index,
        face,
        new PlacedStone.Feet(Length.ZERO, Length.ZERO, Length.ZERO, Length.ZERO),
        Length.mm(soffit.length()),
        Length.mm(soffit.length()),
        Length.mm(12 * INCH),
        Length.ZERO,
        0,
        false);
  }

  /** A head of stones given from left to right. */
  static HeadLayout head(Job job, PlacedStone... stones) {
    return new HeadLayout(
        job.openings().get(0),
        job.openings().get(0).width().half(),
        List.of(stones),
        List.of(),
        null,
        new Proof(Proof.Status.OPTIMAL, 0, 0, 1),
        List.of());
  }
}
