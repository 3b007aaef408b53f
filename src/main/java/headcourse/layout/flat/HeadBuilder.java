package headcourse.layout.flat;

import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.job.HeadSpec;
import headcourse.layout.HeadLayout;
import headcourse.layout.HeadLayout.Remark;
import headcourse.layout.JointLine;
import headcourse.layout.PlacedStone;
import headcourse.layout.Proof;
import headcourse.layout.Role;
import headcourse.layout.Side;
import headcourse.units.Grid;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.List;

/** Turns the feet that were chosen into stones and joint lines. */
final class HeadBuilder {
  private final FlatTerms terms;
  private final Grid grid;
  private final SoffitLine soffit;
  private final boolean fan;
  private final double height;

  HeadBuilder(FlatTerms terms, FlatGeometry geometry) {
    this.terms = terms;
    this.grid = terms.job().grid();
    this.soffit = new SoffitLine(new Length(terms.half()).mm(), geometry.camber());
    this.fan = geometry.fanned();
    this.height = terms.mm(terms.height());
  }

  HeadLayout build(Choice left, Choice right, Proof proof, List<Remark> remarks) {
    List<PlacedStone> stones = new ArrayList<>();
    for (int i = left.count(); i >= 1; i--) {
      stones.add(stone(Side.LEFT, left, i));
    }
    if (terms.head().key() != null) {
      stones.add(key(left.lines()));
    }
    for (int i = 1; i <= right.count(); i++) {
      stones.add(stone(Side.RIGHT, right, i));
    }
    List<JointLine> joints = new ArrayList<>();
    for (int i = 0; i <= left.count(); i++) {
      joints.add(joint(Side.LEFT, left, i));
    }
    for (int i = 0; i <= right.count(); i++) {
      joints.add(joint(Side.RIGHT, right, i));
    }
    return new HeadLayout(
        terms.opening(),
        new Length(terms.half()),
        stones,
        joints,
        new Length(left.end().bearing()),
        new Length(right.end().bearing()),
        new Length(terms.past(left.end().top())),
        new Length(terms.past(right.end().top())),
        fan ? curve(left, right) : null,
        proof,
        remarks);
  }

  PlacedStone key(Lines lines) {
    HeadSpec.Key spec = terms.head().key();
    EdgeLine right = EdgeLine.inner(terms, lines.startSoffit(), lines.startTop());
    EdgeLine left = right.mirrored();
    double upper = terms.mm(terms.height() + terms.rise());
    StoneFace face =
        terms.drop() == 0
            ? StoneFace.on(soffit, left, right, upper)
            : StoneFace.dropped(left, right, 0 - terms.mm(terms.drop()), upper);
    return placed("K", Role.KEY, Side.CENTRE, 0, face, left, right, spec.proud());
  }

  private PlacedStone stone(Side side, Choice c, int i) {
    boolean last = i == c.count();
    EdgeLine near = EdgeLine.outer(terms, c.soffit(i - 1), c.top(i - 1));
    EdgeLine far =
        last
            ? EdgeLine.end(terms, c.soffit(i), c.top(i))
            : EdgeLine.inner(terms, c.soffit(i), c.top(i));
    EdgeLine left = side == Side.LEFT ? far.mirrored() : near;
    EdgeLine right = side == Side.LEFT ? near.mirrored() : far;
    StoneFace face = StoneFace.on(soffit, left, right, height);
    Role role = last ? Role.END : Role.STONE;
    return placed(mark(side, i), role, side, i, face, left, right, Length.ZERO);
  }

  private static String mark(Side side, int i) {
    return (side == Side.LEFT ? "L" : "R") + i;
  }

  private PlacedStone placed(
      String mark,
      Role role,
      Side side,
      int index,
      StoneFace face,
      EdgeLine left,
      EdgeLine right,
      Length proud) {
    double lowest = Math.min(face.lowerLeft().y(), face.lowerRight().y());
    return new PlacedStone(
        mark,
        role,
        side,
        index,
        face.edges(),
        new PlacedStone.Feet(
            grid.snapMm(left.foot()),
            grid.snapMm(right.foot()),
            grid.snapMm(left.head()),
            grid.snapMm(right.head())),
        grid.snapMm(face.lowerLeft().distance(face.lowerRight())),
        grid.snapMm(face.upperLeft().distance(face.upperRight())),
        grid.snapMm(face.upperLeft().y() - lowest),
        proud,
        0,
        false);
  }

  private JointLine joint(Side side, Choice c, int i) {
    boolean end = i == c.count();
    boolean bare = i == 0 && terms.head().key() == null;
    long s = c.soffit(i);
    long t = c.top(i);
    EdgeLine line = end ? EdgeLine.end(terms, s, t) : EdgeLine.joint(terms, s, t);
    // On the centre line of a keyless head the mark is that of the stones on either side of it.
    EdgeLine edge = end ? line : bare ? EdgeLine.outer(terms, s, t) : EdgeLine.inner(terms, s, t);
    EdgeLine placed = side == Side.LEFT ? line.mirrored() : line;
    return new JointLine(
        side,
        i,
        soffit.meets(placed),
        new Point(placed.head(), height),
        grid.snapMm(edge.foot()),
        grid.snapMm(edge.head()),
        i > 0 ? mark(side, i) : bare ? "" : "K",
        end ? "" : mark(side, i + 1));
  }

  private HeadLayout.Curve curve(Choice left, Choice right) {
    double strike = left.lines().striking();
    EdgeLine leftEnd = EdgeLine.end(terms, left.end().soffit(), left.end().top()).mirrored();
    EdgeLine rightEnd = EdgeLine.end(terms, right.end().soffit(), right.end().top());
    Point at = new Point(0, -strike);
    List<HeadLayout.Centre> centres = new ArrayList<>();
    centres.add(
        new HeadLayout.Centre(
            "striking point",
            at,
            strike,
            new Point(rightEnd.foot(), 0).minus(at).angle(),
            new Point(leftEnd.foot(), 0).minus(at).angle()));
    Double radius = null;
    if (!soffit.level()) {
      radius = soffit.radius();
      Point c = soffit.centre();
      centres.add(
          new HeadLayout.Centre(
              "camber",
              c,
              radius,
              new Point(soffit.half(), 0).minus(c).angle(),
              new Point(-soffit.half(), 0).minus(c).angle()));
    }
    return new HeadLayout.Curve(
        new Path(soffit.between(soffit.meets(leftEnd), soffit.meets(rightEnd)), false),
        Path.through(new Point(leftEnd.head(), height), new Point(rightEnd.head(), height)),
        centres,
        radius,
        strike);
  }
}
