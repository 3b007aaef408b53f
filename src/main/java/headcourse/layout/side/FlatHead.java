package headcourse.layout.side;

import headcourse.geom.Point;
import headcourse.geom.Tolerance;
import headcourse.job.HeadSpec;
import headcourse.layout.HeadLayout;
import headcourse.layout.HeadLayout.Remark;
import headcourse.layout.PlacedStone;
import headcourse.layout.Proof;
import headcourse.layout.Side;
import headcourse.layout.StoneChange;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
import java.util.ArrayList;
import java.util.List;

/**
 * A flat head before its stones are chosen. A chooser that works from something else than a rhythm
 * (the pieces in the yard, for all openings of a job) takes the cases and checks of each side from
 * here, and gives back feet.
 */
public final class FlatHead {
  private final FlatTerms terms;
  private final FlatGeometry geometry;
  private final List<Remark> remarks;

  /** A head to be solved, and what was changed of the terms while they were read. */
  public FlatHead(FlatTerms terms, FlatGeometry geometry, List<Remark> remarks) {
    this.terms = terms;
    this.geometry = geometry;
    this.remarks = List.copyOf(remarks);
  }

  /** What the head keeps to. */
  public FlatTerms terms() {
    return terms;
  }

  /** How its joint lines stand. */
  public FlatGeometry geometry() {
    return geometry;
  }

  /**
   * The joint lines and ends open to one side.
   *
   * @param striking depth of the striking point where the other side has settled it, else NaN
   */
  public List<SideCase> cases(FlatTerms.SideTerms side, double striking) {
    return geometry.cases(side, striking);
  }

  /** The same head as one side sees it, whose own jamb line alone counts. */
  public FlatHead alone(FlatTerms.SideTerms side) {
    return terms.lopsided() ? over(terms.alone(side)) : this;
  }

  /** The same stones on other terms. */
  public FlatHead over(FlatTerms other) {
    return new FlatHead(other, geometry.over(other), remarks);
  }

  /** The hard constraints for a set of joint lines. */
  public SideCheck check(Lines lines) {
    return new SideCheck(terms, lines, geometry.fanned());
  }

  /** How long the stones of a side's joint lines are along their blanks. */
  public StoneExtents extents(Lines lines, Side side) {
    return new StoneExtents(terms, geometry, lines, side);
  }

  /** How long the key is along its blank, ticks rounded up; 0 where there is none. */
  public long keyExtent(Lines lines) {
    if (terms.head().key() == null) {
      return 0;
    }
    double most = 0;
    for (Point p : key(lines).outline().vertices(Tolerance.VERTEX)) {
      most = Math.max(most, Math.abs(p.x()));
    }
    return (long) Math.ceil(2 * most / terms.mm(1) - 1e-6);
  }

  /** The key between a set of joint lines. */
  public PlacedStone key(Lines lines) {
    return new HeadBuilder(terms, geometry).key(Choice.whole(lines, null));
  }

  /**
   * How much higher than the head a blank must be: a stone lies on it with the chord of its
   * cambered soffit along the arris, so one that leans reaches up by sin(slope at the jamb) of its
   * lean.
   */
  public Length moreHeight(End end) {
    double rise = geometry.camber();
    SoffitLine soffit = SoffitLine.of(terms, rise);
    double slope = soffit.level() ? 0 : soffit.half() / soffit.radius();
    return Length.mm(Math.max(0, terms.mm(end.top() - end.soffit())) * slope);
  }

  /** Whether the joints fan out from a striking point. */
  public boolean fanned() {
    return geometry.fanned();
  }

  /** Whether where the joints are struck from depends on where the head ends. */
  public boolean struckFromEnd() {
    return geometry instanceof FanGeometry g && g.fan().followsEnd();
  }

  /** The head with its stones; both sides have joint lines of one striking point. */
  public HeadLayout build(Choice left, Choice right, Proof proof, List<Remark> more) {
    return build(left, right, proof, more, List.of());
  }

  public HeadLayout build(
      Choice left, Choice right, Proof proof, List<Remark> more, List<StoneChange> changes) {
    List<Remark> all = new ArrayList<>(remarks);
    all.addAll(more);
    HeadBuilder builder = new HeadBuilder(terms, geometry);
    HeadSpec.Key asked = terms.head().key();
    if (asked != null && (left.cut() == null || left.cut().key() == null)) {
      PlacedStone key = builder.key(left);
      rounded("bottom", asked.bottom(), key.bottom(), all);
      rounded("top", asked.top(), key.top(), all);
    }
    return builder.build(left, right, proof, all, changes);
  }

  /** A key is twice its half, and its half is cut to the grid where it crosses the two lines. */
  private void rounded(String end, Length asked, Length made, List<Remark> all) {
    if (asked != null && !asked.equals(made)) {
      LengthFormat format = new LengthFormat(terms.job().units(), terms.job().grid());
      String is = format.plainWithUnit(made);
      all.add(
          new Remark(
              "key-" + end,
              "the key's "
                  + end
                  + " is made "
                  + is
                  + ", so that its sides cross the lines on the grid",
              List.of(is)));
    }
  }
}
