package headcourse.layout.curved;

import headcourse.geom.Point;
import headcourse.job.ShapeDef.Kind;
import headcourse.job.ShapeDef.ParamDef;
import java.util.List;

/**
 * Two arcs of one radius, centred on the springing line, that meet in a point: equilateral (radius
 * the span), drop (less), lancet (more). The rise is √(H(2R − H)), H half the span; so R = (H +
 * rise²/H)/2.
 */
public final class PointedHead extends CurvedShape {
  private static final String RATIO = "radius";

  /** The shape. */
  public PointedHead() {
    super(
        "pointed",
        new ParamDef(
            RATIO, Kind.NUMBER, List.of(), "radius as a part of the span: 1.0 is equilateral"),
        length("rod", "radius of the arcs as a length"),
        length("rise", "height of the point above the springing line"),
        new ParamDef(
            "point",
            Kind.WORD,
            List.of("equilateral", "drop", "lancet"),
            "radius 1, 3/4 or 1 1/2 of the span, unless radius, rod or rise say which"));
  }

  @Override
  SoffitCurve strike(CurvedSpec given) throws NoHead {
    double h = given.halfSpan();
    Double ratio = given.head().params().number(RATIO).orElse(null);
    Double rod = given.length("rod");
    Double rise = given.length("rise");
    String word = given.word("point", "");
    double r;
    String by;
    if (ratio != null) {
      r = ratio * 2 * h;
      by = "the radius of " + ratio + " of the span";
    } else if (rod != null) {
      r = rod;
      by = "the rod";
    } else if (rise != null) {
      r = (h + rise * rise / h) / 2;
      by = "the rise";
    } else {
      r = 2 * h * (word.equals("drop") ? 0.75 : word.equals("lancet") ? 1.5 : 1);
      by = "the point";
    }
    if (!(r >= h - 1e-9) || r > 100 * h) {
      String key = ratio != null ? RATIO : rod != null ? "rod" : "rise";
      throw given.refuse(
          key,
          "the arcs of a pointed head have a radius between half the span, "
              + given.say(h)
              + ", and fifty times the span; "
              + by
              + " makes it "
              + given.say(r),
          ratio != null
              ? given.change(key, "1.0", "equilateral")
              : given.near(key, rod != null ? 2 * h : h * Math.sqrt(3), "equilateral"));
    }
    r = Math.max(r, h);
    double follows = Math.sqrt(h * (2 * r - h));
    if (rod != null && Math.abs(rod - r) > given.tick()) {
      throw given.contradiction("rod", List.of(RATIO), by, rod, r);
    }
    if (rise != null && Math.abs(rise - follows) > given.tick()) {
      throw given.contradiction("rise", List.of(RATIO, "rod"), by, rise, follows);
    }
    checkWord(given, word, r / (2 * h), by);
    Point centre = new Point(h - r, 0);
    double angle = Math.atan2(follows, r - h);
    return SoffitCurve.of(r, new ArcRun(centre, r, angle, angle));
  }

  private static void checkWord(CurvedSpec given, String word, double k, String by) throws NoHead {
    String is = Math.abs(k - 1) < 1e-3 ? "equilateral" : k < 1 ? "drop" : "lancet";
    if (!word.isEmpty() && !word.equals(is)) {
      throw given.refuse(
          "point",
          "the point is to be " + word + ", but " + by + " makes it " + is,
          given.change("point", is, "agrees with " + by));
    }
  }
}
