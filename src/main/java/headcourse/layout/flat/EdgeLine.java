package headcourse.layout.flat;

/**
 * A straight edge across the head, millimetres.
 *
 * @param foot its x on the soffit line
 * @param head its x on the top line
 * @param height height of the top line above the soffit line
 */
record EdgeLine(double foot, double head, double height) {
  /** The joint line itself: half a joint outside its feet. */
  static EdgeLine joint(FlatTerms terms, long soffit, long top) {
    double half = terms.mm(terms.joint()) / 2;
    return new EdgeLine(terms.mm(soffit) + half, terms.mm(top) + half, terms.mm(terms.height()));
  }

  /** The edge of the stone on the inner side: half a joint back from the line, at right angles. */
  static EdgeLine inner(FlatTerms terms, long soffit, long top) {
    double more = extra(terms, soffit, top);
    return new EdgeLine(terms.mm(soffit) - more, terms.mm(top) - more, terms.mm(terms.height()));
  }

  /** The edge of the stone on the outer side. */
  static EdgeLine outer(FlatTerms terms, long soffit, long top) {
    double more = extra(terms, soffit, top);
    return new EdgeLine(
        terms.mm(soffit + terms.joint()) + more,
        terms.mm(top + terms.joint()) + more,
        terms.mm(terms.height()));
  }

  /** An end: no joint beyond it. */
  static EdgeLine end(FlatTerms terms, long soffit, long top) {
    return new EdgeLine(terms.mm(soffit), terms.mm(top), terms.mm(terms.height()));
  }

  /**
   * What half a joint at right angles takes more along x than along a plumb joint: j/2·(1/cos − 1).
   */
  private static double extra(FlatTerms terms, long soffit, long top) {
    double slope = (double) (top - soffit) / terms.height();
    return terms.mm(terms.joint()) / 2 * (Math.sqrt(1 + slope * slope) - 1);
  }

  /** Its x at a height. */
  double x(double y) {
    return y == height ? head : foot + (head - foot) * (y / height);
  }

  EdgeLine mirrored() {
    return new EdgeLine(0 - foot, 0 - head, height);
  }
}
