package headcourse.layout.flat;

import headcourse.layout.HeadLayout;
import headcourse.layout.HeadLayout.Remark;
import headcourse.layout.Proof;
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

  /** The hard constraints for a set of joint lines. */
  public SideCheck check(Lines lines) {
    return new SideCheck(terms, lines, geometry.fanned());
  }

  /** The head with its stones; both sides have joint lines of one striking point. */
  public HeadLayout build(Choice left, Choice right, Proof proof, List<Remark> more) {
    List<Remark> all = new ArrayList<>(remarks);
    all.addAll(more);
    return new HeadBuilder(terms, geometry).build(left, right, proof, all);
  }
}
