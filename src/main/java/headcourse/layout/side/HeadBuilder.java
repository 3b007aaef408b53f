package headcourse.layout.side;

import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.job.Fitted;
import headcourse.job.HeadSpec;
import headcourse.layout.HeadLayout;
import headcourse.layout.HeadLayout.Remark;
import headcourse.layout.Jambs;
import headcourse.layout.JointLine;
import headcourse.layout.PlacedStone;
import headcourse.layout.Proof;
import headcourse.layout.Role;
import headcourse.layout.Side;
import headcourse.layout.StoneChange;
import headcourse.units.Grid;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.List;

/** Turns the feet that were chosen into stones and joint lines. */
public final class HeadBuilder {
  private final FlatTerms terms;
  private final Grid grid;
  private final SoffitLine soffit;
  private final boolean fan;
  private final double height;
  private final long tick;

  /** Builds heads that keep to the terms. */
  public HeadBuilder(FlatTerms terms, FlatGeometry geometry) {
    this.terms = terms;
    this.grid = terms.job().grid();
    this.soffit = SoffitLine.of(terms, geometry.camber());
    this.fan = geometry.fanned();
    this.tick = terms.tick();
    this.height = terms.mm(terms.height());
  }

  HeadLayout build(
      Choice left, Choice right, Proof proof, List<Remark> remarks, List<StoneChange> changes) {
    List<PlacedStone> stones = new ArrayList<>();
    for (int i = left.count(); i >= 1; i--) {
      stones.add(stone(Side.LEFT, left, i));
    }
    if (terms.head().key() != null) {
      stones.add(key(left));
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
        fan ? curve(left, right) : null,
        proof,
        remarks,
        new HeadLayout.AsBuilt(
            new Jambs(new Length(terms.left().jamb()), new Length(terms.right().jamb())), changes));
  }

  /** The line of the soffit. */
  public SoffitLine soffit() {
    return soffit;
  }

  /** The key, as drawn or as it was measured. */
  public PlacedStone key(Choice side) {
    HeadSpec.Key spec = terms.head().key();
    CutStones.Stone there = side.cut() == null ? null : side.cut().key();
    EdgeLine right = EdgeLine.inner(terms, side.soffit(0, tick), side.top(0, tick));
    EdgeLine left = right.mirrored();
    double upper = terms.mm(terms.height() + terms.rise());
    if (there != null && there.height() > 0) {
      upper = there.height();
    }
    StoneFace face =
        terms.drop() == 0
            ? StoneFace.on(soffit, left, right, upper)
            : StoneFace.dropped(left, right, 0 - terms.mm(terms.drop()), upper);
    PlacedStone key = placed("K", Role.KEY, Side.CENTRE, 0, face, left, right, spec.proud());
    return there(key, there);
  }

  private PlacedStone stone(Side side, Choice c, int i) {
    boolean last = i == c.count();
    EdgeLine near = EdgeLine.outer(terms, c.soffit(i - 1, tick), c.top(i - 1, tick));
    EdgeLine far =
        last
            ? EdgeLine.end(terms, c.soffit(i, tick), c.top(i, tick))
            : EdgeLine.inner(terms, c.soffit(i, tick), c.top(i, tick));
    EdgeLine left = side == Side.LEFT ? far.mirrored() : near;
    EdgeLine right = side == Side.LEFT ? near.mirrored() : far;
    CutStones.Stone there = i <= c.before() ? c.cut().stone(i) : null;
    double upper = there != null && there.height() > 0 ? there.height() : height;
    StoneFace face = StoneFace.on(soffit, left, right, upper);
    Role role = last ? Role.END : Role.STONE;
    PlacedStone stone = placed(mark(side, i), role, side, i, face, left, right, Length.ZERO);
    return there(stone, there);
  }

  private static PlacedStone there(PlacedStone stone, CutStones.Stone there) {
    if (there == null || there.measured() == null) {
      return stone;
    }
    if (there.drawn()) {
      return stone.asFitted();
    }
    Fitted f = there.measured();
    return stone.measured(
        f.bottom(),
        f.top() == null ? stone.top() : f.top(),
        f.height() == null ? stone.height() : f.height());
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
    boolean exact = left.exact() || right.exact();
    double lowest = Math.min(face.lowerLeft().y(), face.lowerRight().y());
    return new PlacedStone(
        mark,
        role,
        side,
        index,
        face.edges(),
        new PlacedStone.Feet(
            printed(left.foot(), left.exact()),
            printed(right.foot(), right.exact()),
            printed(left.head(), left.exact()),
            printed(right.head(), right.exact())),
        printed(face.lowerLeft().distance(face.lowerRight()), exact),
        printed(face.upperLeft().distance(face.upperRight()), exact),
        grid.snapMm(face.upperLeft().y() - lowest),
        proud,
        0,
        false);
  }

  private JointLine joint(Side side, Choice c, int i) {
    boolean end = i == c.count();
    boolean bare = i == 0 && terms.head().key() == null;
    long s = c.soffit(i, tick);
    long t = c.top(i, tick);
    EdgeLine line = end ? EdgeLine.end(terms, s, t) : EdgeLine.joint(terms, s, t);
    // On the centre line of a keyless head the mark is that of the stones on either side of it.
    EdgeLine edge = end ? line : bare ? EdgeLine.outer(terms, s, t) : EdgeLine.inner(terms, s, t);
    EdgeLine placed = side == Side.LEFT ? line.mirrored() : line;
    return new JointLine(
        side,
        i,
        soffit.meets(placed),
        new Point(placed.head(), height),
        printed(edge.foot(), edge.exact()),
        printed(edge.head(), edge.exact()),
        i > 0 ? mark(side, i) : bare ? "" : "K",
        end ? "" : mark(side, i + 1));
  }

  private EdgeLine end(Choice c) {
    return EdgeLine.end(terms, c.soffit(c.count(), tick), c.top(c.count(), tick));
  }

  /** On the grid; as it is where a stone that was cut decides it. */
  private Length printed(double mm, boolean exact) {
    return exact ? Length.mm(mm) : grid.snapMm(mm);
  }

  private HeadLayout.Curve curve(Choice left, Choice right) {
    double strike = left.lines().striking();
    EdgeLine leftEnd = end(left).mirrored();
    EdgeLine rightEnd = end(right);
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
              new Point(soffit.middle() + soffit.half(), 0).minus(c).angle(),
              new Point(soffit.middle() - soffit.half(), 0).minus(c).angle()));
    }
    return new HeadLayout.Curve(
        new Path(soffit.between(soffit.meets(leftEnd), soffit.meets(rightEnd)), false),
        Path.through(new Point(leftEnd.head(), height), new Point(rightEnd.head(), height)),
        centres,
        radius,
        strike);
  }
}
