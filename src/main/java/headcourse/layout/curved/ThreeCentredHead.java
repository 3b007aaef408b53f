package headcourse.layout.curved;

import headcourse.geom.Point;
import headcourse.geom.Vec;
import headcourse.job.Change;
import headcourse.units.Limit;
import java.util.ArrayList;
import java.util.List;

/**
 * Two haunch arcs of radius r, centred on the springing line, and a crown arc of radius R that
 * meets them without a corner. With half span H and rise f the distance of the centres is R − r, so
 * {@code (H − r)² + (R − f)² = (R − r)²}. Two of rise, radius and haunch radius are enough; with
 * one, each arc turns through 60° ({@code R = 2H − r}, {@code R − f = √3 (H − r)}); with none it
 * rises a third of the span. Too low for three arcs of 60° the haunch radius is a third of the
 * rise. Common practice, no source.
 */
public final class ThreeCentredHead extends CurvedShape {
  private static final double ROOT3 = Math.sqrt(3);
  private static final double SAME = 1e-7;

  /** The shape. */
  public ThreeCentredHead() {
    super(
        "three-centred",
        length("rise", "height of the soffit's crown above the springing line"),
        length("radius", "radius of the crown arc"),
        length("haunch-radius", "radius of the two arcs at the springings"));
  }

  @Override
  SoffitCurve strike(CurvedSpec given) throws NoHead {
    double h = given.halfSpan();
    Double rise = given.length("rise");
    Double crown = given.length("radius");
    Double haunch = given.length("haunch-radius");
    if (haunch != null && !(haunch > 0 && haunch <= h + SAME)) {
      throw given.refuse(
          "haunch-radius",
          "the haunch radius lies between nothing and half the span, " + given.say(h),
          given.lower("haunch-radius", h / 2, "a quarter of the span"));
    }
    double r;
    double f;
    if (rise == null && haunch == null && crown == null) {
      rise = given.job().grid().snapMm(2 * h / 3).mm();
      given.remark(
          "rise",
          "rise taken as a third of the span: " + given.say(rise),
          List.of(given.say(rise), "1/3"));
    }
    if (rise != null) {
      f = rise;
      checkRise(given, h, f);
      if (h - f < SAME) {
        r = h;
      } else if (haunch != null) {
        r = haunch;
      } else if (crown != null) {
        r = (h * h + f * f - 2 * crown * f) / (2 * (h - crown));
      } else {
        r = haunch(h, f);
      }
    } else if (haunch != null && crown != null) {
      r = haunch;
      f = crown >= h ? crown - Math.sqrt((crown - r) * (crown - r) - (h - r) * (h - r)) : -1;
    } else {
      r = haunch != null ? haunch : 2 * h - crown;
      f = 2 * h - r - ROOT3 * (h - r);
    }
    if (!(r > 0) || !(f > 0) || r > f + SAME || f > h + SAME) {
      throw impossible(given, h);
    }
    double big = h - f < SAME ? h : crown(h, r, f);
    if (!Double.isFinite(big) || big > 1000 * h) {
      throw impossible(given, h);
    }
    if (crown != null && Math.abs(rise(h, r, crown) - f) > given.tick()) {
      throw given.contradiction(
          "radius", List.of("rise", "haunch-radius"), "the rise and the haunch radius", crown, big);
    }
    if (r < given.leastHaunch()) {
      throw sharp(given, h, r);
    }
    return struck(h, r, f, big);
  }

  /** The rise that a haunch and a crown radius make over half a span; NaN where they never meet. */
  private static double rise(double h, double r, double big) {
    return big - Math.sqrt((big - r) * (big - r) - (h - r) * (h - r));
  }

  private static void checkRise(CurvedSpec given, double h, double f) throws NoHead {
    if (!(f > 0) || f > h + SAME) {
      throw given.refuse(
          "rise",
          "a three-centred head rises no more than half its span, " + given.say(h),
          given.lower("rise", 2 * h / 3, "a third of the span"));
    }
  }

  /** The haunch radius where nothing but the rise says what it is. */
  private static double haunch(double h, double rise) {
    return Math.max((rise - (2 - ROOT3) * h) / (ROOT3 - 1), rise / 3);
  }

  private static double crown(double h, double r, double f) {
    return (h * h - 2 * h * r + f * f) / (2 * (f - r));
  }

  private static NoHead impossible(CurvedSpec given, double h) {
    Double rise = given.length("rise");
    Double haunch = given.length("haunch-radius");
    Double crown = given.length("radius");
    String key = rise != null && haunch != null ? "haunch-radius" : "radius";
    List<Change> changes = new ArrayList<>();
    if (rise == null) {
      double value = haunch != null ? 2 * h - haunch : 1.5 * h;
      changes.add(given.near(key, value, "three arcs of 60°"));
    } else if (haunch == null || crown == null) {
      double r = haunch(h, rise);
      changes.add(
          given.near(key, haunch != null ? r : crown(h, r, rise), "the usual one for this rise"));
    }
    return given.refuse(
        List.of(key),
        "no three arcs meet here without a corner: the haunch radius must be less than the rise,"
            + " the crown radius more than half the span",
        changes);
  }

  private static NoHead sharp(CurvedSpec given, double h, double r) {
    Double rise = given.length("rise");
    Double haunch = given.length("haunch-radius");
    Double crown = given.length("radius");
    double usual =
        rise != null ? haunch(h, rise) : haunch == null || crown == null ? h / 2 : 2 * h - crown;
    List<Change> changes = new ArrayList<>();
    if (haunch == null && crown == null) {
      changes.add(given.near("rise", 2 * h / 3, "a third of the span"));
    } else if (usual >= given.leastHaunch() && (rise == null || haunch == null || crown == null)) {
      changes.add(
          haunch != null
              ? given.near("haunch-radius", usual, "the usual one")
              : rise != null
                  ? given.near("radius", crown(h, usual, rise), "the usual one for this rise")
                  : given.near("radius", 2 * h - usual, "the usual one"));
    }
    return given.refuse(
        List.of(haunch != null ? "haunch-radius" : rise != null ? "rise" : "radius"),
        "a haunch radius of "
            + given.say(Limit.MOST, r)
            + " is a corner, not a curve; it is at least 1/200 of the span, "
            + given.say(Limit.LEAST, given.leastHaunch()),
        changes);
  }

  private static SoffitCurve struck(double h, double r, double f, double big) {
    Point crown = new Point(0, f - big);
    if (big - r < SAME) {
      return SoffitCurve.of(big, new ArcRun(crown, big, Math.PI / 2, Math.PI / 2));
    }
    Point haunch = new Point(h - r, 0);
    Vec line = haunch.minus(crown);
    // The meeting lies on the line through both centres.
    double meeting = line.angle();
    return SoffitCurve.of(
        null,
        new ArcRun(crown, big, Math.PI / 2, Math.PI / 2 - meeting),
        new ArcRun(haunch, r, meeting, meeting));
  }
}
