package headcourse.layout.curved;

import headcourse.geom.Point;
import java.util.List;

/**
 * Half a circle, R = W/2, that may stand on plumb stilts. The impost line is y = 0; the centre lies
 * a stilt above it.
 */
public final class SemicircularHead extends CurvedShape {
  /** The shape. */
  public SemicircularHead() {
    super(
        "semicircular",
        length("radius", "radius of the soffit: half the span"),
        length("rise", "height of the soffit's crown above the impost line: radius and stilt"),
        length("stilt", "height of the plumb part below the half circle; default 0"));
  }

  @Override
  SoffitCurve strike(CurvedSpec given) throws NoHead {
    double r = given.halfSpan();
    Double radius = given.length("radius");
    Double rise = given.length("rise");
    Double stilt = given.length("stilt");
    if (radius != null && Math.abs(radius - r) > given.tick()) {
      throw given.contradiction("radius", List.of(), "half the span", radius, r);
    }
    double up = stilt != null ? stilt : rise != null ? rise - r : 0;
    if (rise != null && Math.abs(rise - r - up) > given.tick()) {
      throw given.contradiction(
          "rise", List.of("stilt"), "half the span and the stilt", rise, r + up);
    }
    if (up < -given.tick()) {
      throw given.refuse(
          rise != null ? "rise" : "stilt",
          "a half circle over this span rises " + given.say(r) + "; less is a segmental head",
          given.higher(rise != null ? "rise" : "stilt", rise != null ? r : 0, "no stilt"),
          given.change("shape", "segmental", "strikes a lower arc"));
    }
    up = Math.max(0, up);
    return SoffitCurve.of(
        r,
        new ArcRun(new Point(0, up), r, Math.PI / 2, Math.PI / 2),
        new StraightRun(new Point(r, up), new Point(r, 0)));
  }
}
