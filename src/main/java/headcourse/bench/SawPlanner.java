package headcourse.bench;

import headcourse.bench.SawPass.Lay;
import headcourse.bench.SawPass.Part;
import headcourse.geom.Edge;
import headcourse.geom.Straight;
import headcourse.geom.Vec;
import headcourse.job.HeadSpec.Soffit;
import headcourse.job.Tools.Saw;
import headcourse.layout.FaceEdge.Where;
import headcourse.units.Angle;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * Plans the passes of the saw for one stone. Own frame: x along the soffit, y square to it, z out
 * of the face. The planes of the joints hold the wall's normal, so every side cut is plumb through
 * a piece that lies on its face, and tilted by the rake through one that lies on its soffit. A
 * curved top is sawn clear and worked to the template; a curved soffit has no pass; a relief is cut
 * before the end beside it.
 */
final class SawPlanner {
  private static final Direction SOFFIT_LINE = new Direction(1, 0, 0);
  private static final Direction SQUARE_LINE = new Direction(0, 1, 0);
  private static final Direction FACE = new Direction(0, 0, 1);
  private static final Direction UNDERSIDE = new Direction(0, 1, 0);
  private static final Direction DEEP_LINE = new Direction(0, 0, 1);

  /** Halves the square corner between face and soffit. */
  private static final Direction ARRIS_MITRE = new Direction(0, 1, 1);

  /** A blade that lies flatter goes through no stone; no saw tilts so far, radians. */
  private static final double FLAT = Math.toRadians(89);

  private final StoneFrame frame;
  private final Saw saw;
  private final Length thickness;
  private final ReturnLeg leg;
  private final List<SawPass> passes = new ArrayList<>();

  private SawPlanner(StoneFrame frame, Saw saw, Length thickness, ReturnLeg leg) {
    this.frame = frame;
    this.saw = saw;
    this.thickness = thickness;
    this.leg = leg;
  }

  /** The passes in cutting order: sides from the key's outwards, then the top. */
  static List<SawPass> plan(
      StoneFrame frame, Saw saw, Length thickness, ReturnLeg leg, Soffit soffit) {
    SawPlanner p = new SawPlanner(frame, saw, thickness, leg);
    if (soffit == Soffit.RETURNED) {
      p.cornerSide(frame.inner());
      p.cornerSide(frame.outer());
      p.top(Lay.FACE_DOWN);
    } else {
      p.flats(soffit == Soffit.MITRED && leg.present());
    }
    return p.passes;
  }

  /** One pass through both legs where the saw is deep enough, else the face leg and the return. */
  private void cornerSide(Where side) {
    boolean both = leg.reaches(frame, side);
    boolean oneGo = !both || leg.depth().compareTo(saw.depthOfCut()) <= 0;
    EdgeName name = frame.name(side);
    CompoundCut flat = CompoundCut.of(plane(side), FACE, SOFFIT_LINE);
    if (oneGo) {
      Length deep = both ? leg.depth() : thickness;
      add(name, Lay.FACE_DOWN, both ? Part.BOTH_LEGS : Part.FACE_LEG, flat, deep);
    } else {
      add(name, Lay.FACE_DOWN, Part.FACE_LEG, flat, thickness);
      CompoundCut under = CompoundCut.of(plane(side), UNDERSIDE, SOFFIT_LINE);
      add(name, Lay.RETURN_DOWN, Part.RETURN_LEG, under, thickness);
    }
  }

  /** The face, and where there is one the soffit piece, each from a flat of its own. */
  private void flats(boolean mitred) {
    Direction lower = mitred ? ARRIS_MITRE : UNDERSIDE;
    if (straightSoffit()) {
      CompoundCut cut = CompoundCut.of(lower, FACE, SQUARE_LINE);
      add(EdgeName.SOFFIT, Lay.FACE_UP, Part.FACE_LEG, cut, thickness);
    }
    faceSide(frame.inner());
    faceSide(frame.outer());
    top(Lay.FACE_UP);
    if (!leg.present()) {
      return;
    }
    if (mitred) {
      CompoundCut cut = CompoundCut.of(ARRIS_MITRE, UNDERSIDE, DEEP_LINE);
      add(EdgeName.SOFFIT, Lay.FACE_UP, Part.SOFFIT_PIECE, cut, thickness);
    }
    soffitSide(frame.inner());
    soffitSide(frame.outer());
  }

  private void faceSide(Where side) {
    CompoundCut cut = CompoundCut.of(plane(side), FACE, SOFFIT_LINE);
    add(frame.name(side), Lay.FACE_UP, Part.FACE_LEG, cut, thickness);
  }

  private void soffitSide(Where side) {
    // Where it ends on the seat it ends plumb, whatever the rake of the stone above.
    Direction plane = leg.reaches(frame, side) ? plane(side) : seatPlane();
    CompoundCut cut = CompoundCut.of(plane, UNDERSIDE, SOFFIT_LINE);
    add(frame.name(side), Lay.FACE_UP, Part.SOFFIT_PIECE, cut, thickness);
  }

  private void top(Lay lay) {
    for (Edge edge : frame.stone().edges(Where.TOP)) {
      if (edge instanceof Straight) {
        Vec t = frame.own(edge.tangent(0));
        // Along the soffit a cut is measured off the fence; up the stone off its square.
        boolean across = Math.abs(t.x()) >= Math.abs(t.y());
        Direction plane = new Direction(t.y(), -t.x(), 0);
        CompoundCut cut = CompoundCut.of(plane, FACE, across ? SQUARE_LINE : SOFFIT_LINE);
        add(EdgeName.TOP, lay, Part.FACE_LEG, cut, thickness);
      }
    }
    if (frame.stone().edges(Where.TOP).stream().anyMatch(e -> !(e instanceof Straight))) {
      boolean deep = thickness.compareTo(saw.depthOfCut()) <= 0;
      passes.add(
          new SawPass(
              EdgeName.TOP,
              passes.size() + 1,
              lay,
              Part.FACE_LEG,
              Angle.ZERO,
              Angle.ZERO,
              thickness,
              deep,
              true));
    }
  }

  private boolean straightSoffit() {
    List<Edge> edges = frame.stone().edges(Where.SOFFIT);
    return edges.size() == 1 && edges.get(0) instanceof Straight;
  }

  private Direction plane(Where side) {
    Vec n = frame.own(frame.outward(side));
    return new Direction(n.x(), n.y(), 0);
  }

  private Direction seatPlane() {
    Vec n = frame.own(new Vec(1, 0));
    return new Direction(n.x(), n.y(), 0);
  }

  /** A tilted blade goes through {@code through / cos tilt} of stone. */
  private void add(EdgeName edge, Lay lay, Part part, CompoundCut cut, Length through) {
    double tilt = Math.min(cut.tilt().radians(), FLAT);
    Length deep = tilt == 0 ? through : Length.mm(through.mm() / Math.cos(tilt));
    boolean possible =
        deep.compareTo(saw.depthOfCut()) <= 0
            // Half a thousandth of a degree: 45° by way of plane normals is 45° on the scale.
            && cut.tilt().degrees() <= saw.tiltsTo().degrees() + 5e-4;
    passes.add(
        new SawPass(
            edge, passes.size() + 1, lay, part, cut.mitre(), cut.tilt(), deep, possible, false));
  }
}
