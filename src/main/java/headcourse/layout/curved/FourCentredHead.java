package headcourse.layout.curved;

import headcourse.geom.Point;
import headcourse.geom.Vec;
import headcourse.job.Change;
import headcourse.units.Limit;
import java.util.List;

/**
 * Two haunch arcs of radius r, centred on the springing line, and two crown arcs of radius R that
 * meet them without a corner and each other in a low point. The centres of an arc and its haunch
 * lie on a line at α to the springing line: the upper centre is {@code (H − r, 0) − (R − r)(cos α,
 * sin α)}.
 *
 * <p>Rise, radius and haunch radius determine it. What is left open follows the common setting-out
 * (from memory of a pattern book): haunch centres at the quarter points of the span, α = 45°, upper
 * centres plumb below the opposite haunch centres; so r = S/4, R = (1/4 + 1/√2) S, rise 0.42388 S.
 */
public final class FourCentredHead extends CurvedShape {
  private static final double ALPHA = Math.PI / 4;
  private static final double ROOT8 = Math.sqrt(8);

  /** r over rise in the common setting-out. */
  private static final double HAUNCH_OF_RISE =
      0.25 / (Math.sqrt(Math.pow(0.25 + Math.sqrt(0.5), 2) - 0.0625) - 0.5);

  /** The shape. */
  public FourCentredHead() {
    super(
        "four-centred",
        length("rise", "height of the point above the springing line"),
        length("radius", "radius of the two arcs that meet in the point"),
        length("haunch-radius", "radius of the two arcs at the springings"));
  }

  @Override
  SoffitCurve strike(CurvedSpec given) throws NoHead {
    double h = given.halfSpan();
    Double rise = given.length("rise");
    Double crown = given.length("radius");
    Double haunch = given.length("haunch-radius");
    double r = haunch != null ? haunch : rise != null ? HAUNCH_OF_RISE * rise : h / 2;
    if (haunch == null && rise == null && crown != null) {
      r = (ROOT8 * h - crown) / (ROOT8 - 1);
    }
    if (!(r >= given.leastHaunch()) || !(r < h)) {
      throw given.refuse(
          haunch != null ? "haunch-radius" : rise != null ? "rise" : "radius",
          "the haunch radius of a four-centred head lies between 1/200 of the span, "
              + given.say(Limit.LEAST, given.leastHaunch())
              + ", and half of it, "
              + given.say(h)
              + "; this makes it "
              + given.say(r),
          haunch != null
              ? given.near("haunch-radius", h / 2, "a quarter of the span")
              : rise != null
                  ? given.near("rise", h / 2 / HAUNCH_OF_RISE, "the common setting-out")
                  : given.near("radius", h / 2 + Math.sqrt(2) * h, "the common setting-out"));
    }
    double big;
    double alpha = ALPHA;
    if (crown != null) {
      big = crown;
      checkRadius(given, h, r, big, rise);
      if (rise != null) {
        alpha = angle(given, h, r, big, rise);
      }
    } else {
      big = rise != null ? radius(given, h, r, rise) : r + ROOT8 * (h - r);
    }
    Vec line = Vec.direction(alpha);
    Point haunchCentre = new Point(h - r, 0);
    Point centre = haunchCentre.plus(line.times(r - big));
    double start = Math.acos(-centre.x() / big);
    return SoffitCurve.of(
        null,
        new ArcRun(centre, big, start, start - alpha),
        new ArcRun(haunchCentre, r, alpha, alpha));
  }

  /** Height of the point. */
  private static double point(double h, double r, double big, double alpha) {
    double x = h - r - (big - r) * Math.cos(alpha);
    return (r - big) * Math.sin(alpha) + Math.sqrt(big * big - x * x);
  }

  private static void checkRadius(CurvedSpec given, double h, double r, double big, Double rise)
      throws NoHead {
    // Less, and the crown arcs would pass the centre line before they meet it.
    double least = r + (h - r) / (rise == null ? Math.cos(ALPHA) : 1);
    if (!(big >= least) || big > 1000 * h) {
      throw given.refuse(
          "radius",
          "the crown arcs need a radius of at least " + given.say(least),
          rise == null
              ? new Change[] {
                given.near(
                    "radius", r + ROOT8 * (h - r), "upper centres below the opposite haunch's")
              }
              : new Change[0]);
    }
  }

  /** R for a rise at α = 45°: the point rises with R, so halving finds it. */
  private static double radius(CurvedSpec given, double h, double r, double rise) throws NoHead {
    double lo = r + (h - r) / Math.cos(ALPHA);
    double hi = 1000 * h;
    checkRange(given, rise, point(h, r, lo, ALPHA), point(h, r, hi, ALPHA), h);
    for (int i = 0; i < 200; i++) {
      double mid = (lo + hi) / 2;
      if (point(h, r, mid, ALPHA) < rise) {
        lo = mid;
      } else {
        hi = mid;
      }
    }
    return hi;
  }

  /** α for three given measures: the point sinks as α grows. */
  private static double angle(CurvedSpec given, double h, double r, double big, double rise)
      throws NoHead {
    double lo = 0;
    double hi = Math.acos((h - r) / (big - r));
    checkRange(given, rise, point(h, r, big, hi), point(h, r, big, lo), h);
    for (int i = 0; i < 200; i++) {
      double mid = (lo + hi) / 2;
      if (point(h, r, big, mid) > rise) {
        lo = mid;
      } else {
        hi = mid;
      }
    }
    return hi;
  }

  private static void checkRange(CurvedSpec given, double rise, double least, double most, double h)
      throws NoHead {
    if (rise < least || rise > most) {
      boolean alone = given.length("radius") == null && given.length("haunch-radius") == null;
      throw given.refuse(
          alone ? List.of("rise") : List.of("rise", "haunch-radius"),
          "arcs like these make a point between "
              + given.say(least)
              + " and "
              + given.say(most)
              + " above the springing line, not at "
              + given.say(rise),
          List.of(
              alone
                  ? given.near("rise", h / 2 / HAUNCH_OF_RISE, "the common setting-out")
                  : rise < least
                      ? given.higher("rise", least, "the lowest point these radii make")
                      : given.lower("rise", most, "the highest point these radii make")));
    }
  }
}
