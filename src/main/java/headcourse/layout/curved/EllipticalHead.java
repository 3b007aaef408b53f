package headcourse.layout.curved;

import headcourse.geom.Point;
import java.util.List;

/**
 * Half a true ellipse on its axis: semi-axes half the span and the rise. Struck with two nails at
 * the foci and a string as long as the greater axis. Without a rise it rises a quarter of the span
 * (common practice, no source).
 */
public final class EllipticalHead extends CurvedShape {
  /** The greatest ratio of the axes: beyond it the springing is a corner, and no curve to cut. */
  private static final double SLIMMEST = 10;

  /** The shape. */
  public EllipticalHead() {
    super("elliptical", length("rise", "height of the soffit's crown above the springing line"));
  }

  @Override
  SoffitCurve strike(CurvedSpec given) throws NoHead {
    double a = given.halfSpan();
    Double rise = given.length("rise");
    if (rise == null) {
      rise = given.job().grid().snapMm(a / 2).mm();
      given.remark(
          "rise",
          "rise taken as a quarter of the span: " + given.say(rise),
          List.of(given.say(rise), "1/4"));
    }
    double b = rise;
    if (!(b >= a / SLIMMEST) || b > a * SLIMMEST) {
      throw given.refuse(
          "rise",
          "an elliptical head rises between a tenth of its half span and ten times it",
          given.near("rise", a / 2, "a quarter of the span"));
    }
    double focus = Math.sqrt(Math.abs(a * a - b * b));
    Point right = a >= b ? new Point(focus, 0) : new Point(0, focus);
    Point left = a >= b ? right.mirrored() : new Point(0, -focus);
    given.remark(
        "string",
        "struck with nails at the foci, "
            + given.say(focus)
            + (a >= b ? " either side of the centre line," : " above and below the springing line,")
            + " and a string of "
            + given.say(2 * Math.max(a, b))
            + " from nail to nail");
    return new SoffitCurve(new Intrados(List.of(new EllipseRun(a, b))), null, List.of(left, right));
  }
}
