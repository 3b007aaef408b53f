package headcourse.layout.curved;

import headcourse.geom.CircleSegment;
import headcourse.geom.Point;
import java.util.List;

/**
 * One arc of less than half a circle: R = (W²/4 + r²)/2r. Given by its rise or its radius; by
 * neither, it rises an eighth of the span (common practice, no source).
 */
public final class SegmentalHead extends CurvedShape {
  /** A soffit that rises less than this part of its span is flat. Common practice, no source. */
  private static final double FLATTEST = 400;

  /** The shape. */
  public SegmentalHead() {
    super(
        "segmental",
        length("rise", "height of the soffit's crown above the springing line"),
        length("radius", "radius of the soffit"));
  }

  @Override
  SoffitCurve strike(CurvedSpec given) throws NoHead {
    double span = 2 * given.halfSpan();
    Double rise = given.length("rise");
    Double radius = given.length("radius");
    if (radius != null && radius < span / 2) {
      throw given.refuse(
          "radius",
          "a radius of "
              + given.say(radius)
              + " does not reach across a span of "
              + given.say(span),
          given.higher("radius", span / 2, "half the span, a semicircle"));
    }
    if (rise != null && (rise <= 0 || rise > span / 2 + 1e-9)) {
      throw given.refuse(
          "rise",
          "a segmental head rises more than nothing and no more than half its span, "
              + given.say(span / 2),
          given.lower("rise", span / 2, "half the span, a semicircle"));
    }
    if (rise == null && radius == null) {
      rise = given.job().grid().snapMm(span / 8).mm();
      given.remark(
          "rise",
          "rise taken as one eighth of the span: " + given.say(rise),
          List.of(given.say(rise), "1/8"));
    }
    Double follows = radius == null ? null : CircleSegment.ofChordAndRadius(span, radius).height();
    if (rise != null && follows != null && Math.abs(follows - rise) > given.tick()) {
      throw given.contradiction(
          "rise", List.of("radius"), "the radius " + given.say(radius), rise, follows);
    }
    boolean byRise = rise != null;
    if ((byRise ? rise : follows) < span / FLATTEST) {
      CircleSegment usual = CircleSegment.ofChordAndHeight(span, span / 8);
      throw given.refuse(
          byRise ? "rise" : "radius",
          "a soffit that rises "
              + given.say(byRise ? rise : follows)
              + " over "
              + given.say(span)
              + " is flat",
          given.near(
              byRise ? "rise" : "radius",
              byRise ? usual.height() : usual.radius(),
              "rises an eighth of the span"));
    }
    return struck(
        byRise
            ? CircleSegment.ofChordAndHeight(span, rise)
            : CircleSegment.ofChordAndRadius(span, radius));
  }

  private static SoffitCurve struck(CircleSegment s) {
    Point centre = new Point(0, s.height() - s.radius());
    return SoffitCurve.of(s.radius(), new ArcRun(centre, s.radius(), Math.PI / 2, s.angle() / 2));
  }
}
