package headcourse.layout.curved;

import headcourse.geom.Edge;
import headcourse.geom.Point;
import headcourse.geom.Straight;
import headcourse.job.HeadSpec;
import headcourse.layout.FaceEdge;
import headcourse.layout.FaceEdge.Where;
import headcourse.layout.PlacedStone;
import headcourse.layout.Role;
import headcourse.layout.Side;
import headcourse.layout.StoneSize;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * Cuts the stones of a division. Each stone of the right half is cut once; the left half is its
 * mirror image. Printed widths are straight distances between corners, the height the greatest
 * extent square to the soffit's chord; each is rounded to the grid once, from the exact value.
 */
final class StoneComposer {
  private final CurvedSpec given;
  private final Division division;
  private final Extrados extrados;

  StoneComposer(CurvedSpec given, Division division, Extrados extrados) {
    this.given = given;
    this.division = division;
    this.extrados = extrados;
  }

  /** The stones from left to right. */
  List<PlacedStone> stones() {
    List<PlacedStone> stones = new ArrayList<>();
    int n = division.each();
    for (int i = n; i >= 1; i--) {
      stones.add(placed(mirrored(face(i)), Side.LEFT, i));
    }
    if (division.key()) {
      stones.add(key());
    }
    for (int i = 1; i <= n; i++) {
      stones.add(placed(face(i), Side.RIGHT, i));
    }
    return stones;
  }

  private List<FaceEdge> face(int i) {
    CutLine inner = division.inner(i);
    CutLine outer = division.outer(i);
    List<Edge> soffit = division.soffit(i);
    return face(soffit, extrados.top(i, inner, outer));
  }

  /** Closes a face over its soffit and top, both from left to right. */
  private static List<FaceEdge> face(List<Edge> soffit, List<Edge> top) {
    Point lowerRight = soffit.get(soffit.size() - 1).to();
    Point upperLeft = top.get(0).from();
    List<FaceEdge> face = new ArrayList<>();
    soffit.forEach(e -> face.add(new FaceEdge(e, Where.SOFFIT)));
    face.add(new FaceEdge(new Straight(lowerRight, top.get(top.size() - 1).to()), Where.RIGHT));
    for (int k = top.size() - 1; k >= 0; k--) {
      face.add(new FaceEdge(top.get(k).reversed(), Where.TOP));
    }
    face.add(new FaceEdge(new Straight(upperLeft, soffit.get(0).from()), Where.LEFT));
    return face;
  }

  /** The mirror image, counter-clockwise again from its lower left corner. */
  private static List<FaceEdge> mirrored(List<FaceEdge> face) {
    List<FaceEdge> turned = new ArrayList<>();
    for (Where where : Where.values()) {
      Where from = where == Where.LEFT ? Where.RIGHT : where == Where.RIGHT ? Where.LEFT : where;
      for (int k = face.size() - 1; k >= 0; k--) {
        if (face.get(k).where() == from) {
          turned.add(new FaceEdge(SoffitCurve.mirrored(face.get(k).edge()), where));
        }
      }
    }
    return turned;
  }

  private PlacedStone key() {
    HeadSpec.Key key = given.head().key();
    CrownKey crown = new CrownKey(division.intrados(), division.joint(), key.drop().mm());
    CutLine edge = division.outer(0);
    List<Edge> soffit = SoffitCurve.mirroredWhole(crown.soffit(edge)).edges();
    List<Edge> top =
        SoffitCurve.mirroredWhole(extrados.raised(key.rise().mm()).top(0, CutLine.CENTRE, edge))
            .edges();
    return placed(face(soffit, top), Side.CENTRE, 0);
  }

  private PlacedStone placed(List<FaceEdge> face, Side side, int index) {
    List<Edge> soffit = edges(face, Where.SOFFIT);
    Edge right = edges(face, Where.RIGHT).get(0);
    Edge left = edges(face, Where.LEFT).get(0);
    Role role = index == 0 ? Role.KEY : index == division.each() ? Role.END : Role.STONE;
    return new PlacedStone(
        index == 0 ? "K" : (side == Side.LEFT ? "L" : "R") + index,
        role,
        side,
        index,
        face,
        new PlacedStone.Feet(
            Length.mm(left.to().x()),
            Length.mm(right.from().x()),
            Length.mm(left.from().x()),
            Length.mm(right.to().x())),
        snap(left.to().distance(right.from())),
        snap(left.from().distance(right.to())),
        snap(StoneSize.above(edges(face, Where.TOP), left.to(), right.from())),
        index == 0 ? given.head().key().proud() : Length.ZERO,
        ArrisCheck.offLine(soffit),
        false);
  }

  private static List<Edge> edges(List<FaceEdge> face, Where where) {
    return face.stream().filter(e -> e.where() == where).map(FaceEdge::edge).toList();
  }

  private Length snap(double mm) {
    return given.job().grid().snapMm(mm);
  }
}
