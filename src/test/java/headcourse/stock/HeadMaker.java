package headcourse.stock;

import headcourse.bench.HeadWork;
import headcourse.bench.Mass;
import headcourse.bench.Measures;
import headcourse.bench.Piece;
import headcourse.bench.Rake;
import headcourse.bench.ReturnLeg;
import headcourse.bench.SoffitPiece;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Straight;
import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.layout.FaceEdge;
import headcourse.layout.HeadLayout;
import headcourse.layout.PlacedStone;
import headcourse.layout.Proof;
import headcourse.layout.Role;
import headcourse.layout.Side;
import headcourse.units.Angle;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.List;

/** Heads made by hand for the cutting plan: stones as trapezoids, inches. */
final class HeadMaker {
  private final Job job;
  private final List<Piece> pieces = new ArrayList<>();

  HeadMaker(Job job) {
    this.job = job;
  }

  /** A stone by the x of its corners: lower left, lower right, upper right, upper left. */
  HeadMaker stone(String mark, double ll, double lr, double ur, double ul, double h, double back) {
    Point a = point(ll, 0);
    Point b = point(lr, 0);
    Point c = point(ur, h);
    Point d = point(ul, h);
    List<FaceEdge> face =
        List.of(
            new FaceEdge(new Straight(a, b), FaceEdge.Where.SOFFIT),
            new FaceEdge(new Straight(b, c), FaceEdge.Where.RIGHT),
            new FaceEdge(new Straight(c, d), FaceEdge.Where.TOP),
            new FaceEdge(new Straight(d, a), FaceEdge.Where.LEFT));
    Length z = Length.ZERO;
    PlacedStone stone =
        new PlacedStone(
            mark,
            Role.STONE,
            Side.LEFT,
            1,
            face,
            new PlacedStone.Feet(z, z, z, z),
            Length.inches(lr - ll),
            Length.inches(ur - ul),
            Length.inches(h),
            z,
            0,
            false);
    Rake square = new Rake(Angle.ZERO, z, z, Rake.LongPoint.NEITHER);
    pieces.add(
        new Piece(
            "D1-" + mark,
            stone,
            1,
            pieces.size(),
            new Measures(z, z, z, z, Length.inches(Math.max(lr, ur) - Math.min(ll, ul))),
            square,
            square,
            job.stone().thickness(),
            new ReturnLeg(Length.inches(back), z, 0),
            new Mass(0, 0, 0, 0, a, 0),
            List.of(),
            List.of(),
            List.of(),
            soffit(mark, ll, lr, ur, ul, h, back)));
    return this;
  }

  /** The flat behind a stone that is not cut from a corner, as thick as the stone is. */
  private List<SoffitPiece> soffit(
      String mark, double ll, double lr, double ur, double ul, double h, double back) {
    HeadSpec.Soffit kind = job.openings().get(0).head().soffit();
    double t = job.stone().thickness().mm() / 25.4;
    boolean mitred = kind == HeadSpec.Soffit.MITRED;
    double depth = mitred ? back : back - t;
    if (kind == HeadSpec.Soffit.RETURNED || kind == HeadSpec.Soffit.NONE || depth <= 0) {
      return List.of();
    }
    double up = Math.min(t, h) / h;
    double right = Math.max(lr, lr + (ur - lr) * up);
    double left = Math.min(ll, ll + (ul - ll) * up);
    Length length = Length.inches(right - left);
    SoffitPiece.End square = new SoffitPiece.End(Angle.ZERO, Rake.LongPoint.NEITHER);
    return List.of(
        new SoffitPiece(
            "D1-" + mark + "-S",
            mitred ? SoffitPiece.Joint.MITRED : SoffitPiece.Joint.BUTTED,
            Path.rect(left * 25.4, 0, length.mm(), t * 25.4),
            length,
            length,
            length,
            Length.inches(depth),
            job.stone().thickness(),
            square,
            square,
            Length.ZERO,
            false,
            List.of(),
            0,
            0,
            0));
  }

  /** A square stone. */
  HeadMaker soldier(String mark, double width, double height, double back) {
    return stone(mark, 0, width, width, 0, height, back);
  }

  private static Point point(double x, double y) {
    return new Point(x * 25.4, y * 25.4);
  }

  HeadWork make() {
    Length z = Length.ZERO;
    HeadLayout layout =
        new HeadLayout(
            job.openings().get(0),
            z,
            pieces.stream().map(Piece::stone).toList(),
            List.of(),
            null,
            new Proof(Proof.Status.OPTIMAL, 0, 0, 0),
            List.of());
    return new HeadWork(layout, pieces, List.of());
  }
}
