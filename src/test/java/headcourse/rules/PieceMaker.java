package headcourse.rules;

import headcourse.bench.Anchor;
import headcourse.bench.EdgeName;
import headcourse.bench.Mass;
import headcourse.bench.Measures;
import headcourse.bench.Notch;
import headcourse.bench.Piece;
import headcourse.bench.Rake;
import headcourse.bench.ReturnLeg;
import headcourse.bench.SawPass;
import headcourse.bench.SoffitNotch;
import headcourse.bench.SoffitPiece;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Straight;
import headcourse.job.AnchorKind;
import headcourse.job.Backing;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.FaceEdge;
import headcourse.layout.PlacedStone;
import headcourse.layout.Role;
import headcourse.layout.Side;
import headcourse.units.Angle;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.List;

/** One stone of a {@link Scene}, to be changed before it is made. Places are in millimetres. */
final class PieceMaker {
  final Opening opening;
  final String mark;
  final Side side;
  final int index;
  double x0;
  double x1;
  double h;

  /** How far the right edge leans out over its height. */
  double lean;

  boolean last;

  /** How far its outer end stands from the centre line, or null as it comes out. */
  Length end;

  Length bottom;
  Length top;
  Length thickness;
  Length returnDepth = Length.inches(4);
  Length relief = Length.ZERO;
  Double areaM2;
  Double liftingKg;
  double density;
  double chordDeviation;
  private double vee;
  List<SoffitNotch> soffitNotches = new ArrayList<>();
  List<SoffitPiece> soffitPieces = new ArrayList<>();
  List<Notch> notches = new ArrayList<>();
  List<SawPass> saw = new ArrayList<>();

  PieceMaker(
      Job job, Opening opening, String mark, Side side, int index, double x0, double x1, double h) {
    this.opening = opening;
    this.mark = mark;
    this.side = side;
    this.index = index;
    this.x0 = x0;
    this.x1 = x1;
    this.h = h;
    this.thickness = job.stone().thickness();
    this.density = job.stone().density();
    notches.add(notch(EdgeName.OUTER));
    saw.add(pass(4, 0, true));
  }

  /** A V so deep, in; with one there is no return, and a flat lies behind. */
  void vee(double inches) {
    if (inches > 0) {
      vee = Length.inches(inches).mm();
      returnDepth = Length.ZERO;
      soffit(true);
    }
  }

  /** A soffit piece behind its face, with a screw of its own or without. */
  void soffit(boolean held) {
    if (held) {
      soffitNotches.add(
          new SoffitNotch(
              SoffitNotch.Edge.LEFT,
              Length.inches(1.5),
              Length.inches(0.5),
              Length.inches(0.5),
              Angle.degrees(45),
              Length.inches(0.5),
              Length.inches(0.5),
              notch(EdgeName.OUTER).anchor()));
    }
    soffitPieces.add(soffitPiece(SoffitPiece.Joint.BUTTED));
  }

  /** A soffit piece of 6 × 3 in. */
  SoffitPiece soffitPiece(SoffitPiece.Joint joint) {
    SoffitPiece.End square = new SoffitPiece.End(Angle.degrees(0), Rake.LongPoint.NEITHER);
    Length long6 = Length.inches(6);
    return new SoffitPiece(
        opening.mark() + "-" + mark + "-S",
        joint,
        Path.rect(x0, 0, long6.mm(), thickness.mm()),
        long6,
        long6,
        long6,
        Length.inches(3),
        thickness,
        square,
        square,
        relief,
        false,
        soffitNotches,
        1e-4,
        0.2,
        0.2);
  }

  /** A slot that no rule objects to. */
  static Notch notch(EdgeName edge) {
    return notch(edge, 7, 0.5, 0.5, Length.inches(2.5), 1.25, true, "joint");
  }

  static Notch notch(
      EdgeName edge,
      double height,
      double cover,
      double plunge,
      Length screw,
      double penetration,
      boolean reachable,
      String hiddenBy) {
    return new Notch(
        edge,
        new Point(0, Length.inches(height).mm()),
        Length.inches(height),
        Length.inches(0.75),
        Length.inches(0.75),
        Angle.degrees(45),
        Length.inches(cover),
        Length.inches(plunge),
        anchor(screw, Length.inches(penetration)),
        reachable,
        hiddenBy);
  }

  /** In wood all the way; without a screw one half of what is needed would be left to go. */
  static Anchor anchor(Length screw, Length penetration) {
    Backing wood = new Backing(null, Backing.Kind.WOOD, "", 0.41);
    boolean none = screw == null;
    return new Anchor(
        wood,
        none ? Anchor.Hold.SHORT : Anchor.Hold.HOLDS,
        AnchorKind.WOOD_SCREW,
        screw,
        penetration,
        none ? null : wood.kind(),
        none ? Length.inches(0.5) : penetration,
        Length.inches(5.5));
  }

  /** A slot behind which something does not hold. */
  static Notch loose(Anchor.Hold hold, Backing behind) {
    Notch n = notch(EdgeName.OUTER);
    Anchor none = new Anchor(behind, hold, null, null, Length.ZERO, null, Length.ZERO, null);
    return new Notch(
        n.edge(),
        n.at(),
        n.height(),
        n.mouth(),
        n.run(),
        n.slant(),
        n.cover(),
        n.plunge(),
        none,
        true,
        "joint");
  }

  static SawPass pass(double depth, double tilt, boolean possible) {
    return new SawPass(
        EdgeName.OUTER,
        1,
        SawPass.Lay.FACE_DOWN,
        SawPass.Part.BOTH_LEGS,
        Angle.degrees(0),
        Angle.degrees(tilt),
        Length.inches(depth),
        possible,
        false);
  }

  void only(Notch notch) {
    notches = List.of(notch);
  }

  private PlacedStone.Feet feet() {
    Length right = Length.mm(x1);
    Length left = Length.mm(x0);
    if (end == null) {
      return new PlacedStone.Feet(left, right, left, Length.mm(x1 + lean));
    }
    return side == Side.LEFT
        ? new PlacedStone.Feet(end.negated(), right, end.negated(), right)
        : new PlacedStone.Feet(left, end, left, end);
  }

  Piece make() {
    Point a = new Point(x0, 0);
    Point b = new Point(x1, 0);
    Point apex = new Point((x0 + x1) / 2, vee);
    Point c = new Point(x1 + lean, h);
    Point d = new Point(x0, h);
    Length wide = bottom != null ? bottom : Length.mm(x1 - x0);
    Length high = top != null ? top : Length.mm(x1 + lean - x0);
    double area = areaM2 != null ? areaM2 : (wide.mm() + high.mm()) / 2 * h / 1e6;
    double legs = Math.max(0, returnDepth.minus(thickness).mm()) * thickness.mm() * wide.mm();
    double volume = area * thickness.mm() / 1000 + legs / 1e9;
    double mass = volume * density;
    PlacedStone stone =
        new PlacedStone(
            mark,
            side == Side.CENTRE ? Role.KEY : last ? Role.END : Role.STONE,
            side,
            index,
            List.of(
                new FaceEdge(new Straight(a, apex), FaceEdge.Where.SOFFIT),
                new FaceEdge(new Straight(apex, b), FaceEdge.Where.SOFFIT),
                new FaceEdge(new Straight(b, c), FaceEdge.Where.RIGHT),
                new FaceEdge(new Straight(c, d), FaceEdge.Where.TOP),
                new FaceEdge(new Straight(d, a), FaceEdge.Where.LEFT)),
            feet(),
            wide,
            high,
            Length.mm(h),
            Length.ZERO,
            chordDeviation,
            false);
    Rake square = new Rake(Angle.degrees(0), Length.ZERO, Length.mm(h), Rake.LongPoint.NEITHER);
    return new Piece(
        opening.mark() + "-" + mark,
        stone,
        index + 1,
        1,
        new Measures(
            Length.mm(h),
            Length.mm(Math.hypot(h, lean)),
            Length.mm(a.distance(c)),
            Length.mm(b.distance(d)),
            Length.mm(Math.max(x1, x1 + lean) - x0)),
        square,
        square,
        thickness,
        new ReturnLeg(returnDepth, relief, x1),
        new Mass(
            area,
            volume,
            mass,
            liftingKg != null ? liftingKg : mass,
            new Point((x0 + x1) / 2, h / 2),
            thickness.mm() / 2),
        List.of(),
        saw,
        notches,
        soffitPieces);
  }
}
