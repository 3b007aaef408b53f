package headcourse.layout.curved;

import headcourse.geom.CircleSegment;
import headcourse.geom.Point;

/** A shape of the tests' own: an arc that rises a twelfth of its span. */
public final class ShallowHead extends CurvedShape {
  /** The shape. */
  public ShallowHead() {
    super("shallow");
  }

  @Override
  SoffitCurve strike(CurvedSpec given) {
    double span = 2 * given.halfSpan();
    CircleSegment s = CircleSegment.ofChordAndHeight(span, span / 12);
    Point centre = new Point(0, s.height() - s.radius());
    return SoffitCurve.of(s.radius(), new ArcRun(centre, s.radius(), Math.PI / 2, s.angle() / 2));
  }
}
