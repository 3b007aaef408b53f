package headcourse.layout.side;

/**
 * What the job says of a fan.
 *
 * @param skewback tangent of the end joint's angle off horizontal, or NaN
 * @param depth depth of the striking point, mm, where the skewback is not given
 * @param divide what the stones are divided on
 * @param bottom width of the key at its lower end, mm, or NaN
 * @param top width of the key at its upper end, mm, or NaN
 */
public record Fan(double skewback, double depth, Divide divide, double bottom, double top) {
  /** What the stones are divided on. */
  public enum Divide {
    TOP,
    SOFFIT,
    ANGLE
  }

  /** Whether the striking point depends on where the head ends. */
  boolean followsEnd() {
    return !Double.isNaN(skewback);
  }

  boolean byAngle() {
    return divide == Divide.ANGLE;
  }

  /** Depth of the striking point in mm for a head that ends at a tick. */
  public double striking(FlatTerms terms, long end) {
    return followsEnd() ? terms.mm(end) * skewback : depth;
  }

  /** The joint lines for a depth of the striking point in mm. */
  public FanLines lines(FlatTerms terms, double striking) {
    double growth = (striking + terms.mm(terms.height())) / striking;
    double half = terms.joint() / 2.0;
    KeySize key = KeySize.none(terms);
    if (!Double.isNaN(bottom) || !Double.isNaN(top)) {
      double line = keyLine(terms, striking) / terms.mm(1);
      long foot = FanLines.nearest(line - half);
      key = new KeySize(foot, FanLines.nearest((foot + half) * growth - half));
    }
    return new FanLines(
        key.soffit(), key.top(), divide == Divide.TOP, terms.joint(), growth, striking);
  }

  /** Where the key's joint line crosses the soffit line, mm, before it is snapped. */
  public double keyLine(FlatTerms terms, double striking) {
    double half = terms.mm(terms.joint()) / 2;
    return Double.isNaN(bottom)
        ? (top / 2 + half) * striking / (striking + terms.mm(terms.height() + terms.rise()))
        : (bottom / 2 + half) * striking / (striking - terms.mm(terms.drop()));
  }

  /** What the key's upper end would measure in this fan, mm, where its lower end is given. */
  public double impliedTop(FlatTerms terms, double striking) {
    double up = striking + terms.mm(terms.height() + terms.rise());
    return 2 * keyLine(terms, striking) * up / striking - terms.mm(terms.joint());
  }
}
