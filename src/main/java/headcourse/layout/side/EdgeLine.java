package headcourse.layout.side;

import headcourse.units.Length;

/**
 * A straight edge across the head, millimetres.
 *
 * @param foot its x on the soffit line
 * @param head its x on the top line
 * @param height height of the top line above the soffit line
 * @param exact whether it follows from a stone that was cut off the grid, so that it is not rounded
 */
public record EdgeLine(double foot, double head, double height, boolean exact) {
  /** The joint line itself: half a joint outside its feet, which are given in pm. */
  static EdgeLine joint(FlatTerms terms, long soffit, long top) {
    double half = terms.mm(terms.joint()) / 2;
    return at(terms, soffit, top, half);
  }

  /** The edge of the stone on the inner side: half a joint back from the line, at right angles. */
  public static EdgeLine inner(FlatTerms terms, long soffit, long top) {
    double more = extra(terms, soffit, top);
    return at(terms, soffit, top, 0 - more);
  }

  /** The edge of the stone on the outer side. */
  public static EdgeLine outer(FlatTerms terms, long soffit, long top) {
    double more = extra(terms, soffit, top);
    long joint = terms.joint() * terms.tick();
    return at(terms, soffit + joint, top + joint, more);
  }

  /** An end: no joint beyond it. */
  public static EdgeLine end(FlatTerms terms, long soffit, long top) {
    return at(terms, soffit, top, 0);
  }

  private static EdgeLine at(FlatTerms terms, long soffit, long top, double more) {
    boolean exact = soffit % terms.tick() != 0 || top % terms.tick() != 0;
    return new EdgeLine(
        new Length(soffit).mm() + more,
        new Length(top).mm() + more,
        terms.mm(terms.height()),
        exact);
  }

  private static double extra(FlatTerms terms, long soffit, long top) {
    return extra(terms, (double) (top - soffit) / (terms.height() * terms.tick()));
  }

  /**
   * What half a joint at right angles takes more along x than along a plumb joint, mm: j/2·(1/cos −
   * 1), for a line that leans so much over its height.
   */
  public static double extra(FlatTerms terms, double slope) {
    return terms.mm(terms.joint()) / 2 * (Math.sqrt(1 + slope * slope) - 1);
  }

  /** Its x at a height. */
  public double x(double y) {
    return y == height ? head : foot + (head - foot) * (y / height);
  }

  EdgeLine mirrored() {
    return new EdgeLine(0 - foot, 0 - head, height, exact);
  }
}
