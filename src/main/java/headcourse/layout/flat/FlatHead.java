package headcourse.layout.flat;

import headcourse.job.HeadSpec;
import headcourse.layout.HeadLayout;
import headcourse.layout.HeadLayout.Remark;
import headcourse.layout.PlacedStone;
import headcourse.layout.Proof;
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

  FlatHead(FlatTerms terms, FlatGeometry geometry, List<Remark> remarks) {
    this.terms = terms;
    this.geometry = geometry;
    this.remarks = List.copyOf(remarks);
  }

  /** What the head keeps to. */
  public FlatTerms terms() {
    return terms;
  }

  FlatGeometry geometry() {
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
  FlatHead alone(FlatTerms.SideTerms side) {
    return terms.lopsided() ? over(terms.alone(side)) : this;
  }

  /** The same stones on other terms. */
  FlatHead over(FlatTerms other) {
    return new FlatHead(other, geometry.over(other), remarks);
  }

  /** The hard constraints for a set of joint lines. */
  public SideCheck check(Lines lines) {
    return new SideCheck(terms, lines, geometry.fanned());
  }

  /** The head with its stones; both sides have joint lines of one striking point. */
  public HeadLayout build(Choice left, Choice right, Proof proof, List<Remark> more) {
    return build(left, right, proof, more, List.of());
  }

  HeadLayout build(
      Choice left, Choice right, Proof proof, List<Remark> more, List<StoneChange> changes) {
    List<Remark> all = new ArrayList<>(remarks);
    all.addAll(more);
    HeadBuilder builder = new HeadBuilder(terms, geometry);
    HeadSpec.Key asked = terms.head().key();
    if (asked != null && (left.cut() == null || left.cut().key() == null)) {
      PlacedStone key = builder.key(left);
      rounded("lower", asked.bottom(), key.bottom(), all);
      rounded("upper", asked.top(), key.top(), all);
    }
    return builder.build(left, right, proof, all, changes);
  }

  /** A key is twice its half, and its half is cut to the grid where it crosses the two lines. */
  private void rounded(String end, Length asked, Length made, List<Remark> all) {
    if (asked != null && !asked.equals(made)) {
      LengthFormat format = new LengthFormat(terms.job().units(), terms.job().grid());
      all.add(
          new Remark(
              "rounded",
              "the "
                  + end
                  + " end of the key measures "
                  + format.plainWithUnit(made)
                  + ", so that its sides cross the soffit line and the top line on the grid"));
    }
  }
}
