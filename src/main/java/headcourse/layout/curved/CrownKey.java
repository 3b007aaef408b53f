package headcourse.layout.curved;

import headcourse.geom.Edge;
import headcourse.geom.Point;
import headcourse.geom.Similarity;
import headcourse.geom.Vec;
import headcourse.job.HeadSpec;
import java.util.List;

/**
 * The key: its sides are joints of the arch; its lower end is the soffit moved straight down by its
 * drop, its upper end the extrados moved straight up by its rise. Over a point it spans both arcs.
 *
 * @param intrados the soffit
 * @param joint width of a joint
 * @param drop how far it hangs below the soffit
 */
record CrownKey(Intrados intrados, double joint, double drop) {
  private static final int HALVINGS = 100;

  /** Rise of a key's side to its length, at the least. Common practice, no source. */
  private static final double FLATTEST = 0.5;

  /** Its outer edge on the right, where the joint stands so far from the crown. */
  CutLine edge(double s) {
    return intrados.joint(s, 0).moved(-joint / 2);
  }

  /** The right corner of its lower end. */
  Point corner(CutLine edge) {
    return intrados.at(intrados.crossing(edge, 0, -drop)).plus(new Vec(0, -drop));
  }

  /** The right half of its lower end, left to right. */
  List<Edge> soffit(CutLine edge) {
    Similarity down = Similarity.move(0, -drop);
    return intrados.between(0, intrados.crossing(edge, 0, -drop)).stream()
        .map(e -> e.transformed(down))
        .toList();
  }

  private double bottom(double s) {
    CutLine edge = edge(s);
    double at = intrados.crossing(edge, 0, -drop);
    return at > 0 ? 2 * corner(edge).x() : 0;
  }

  /**
   * How far the key's joint stands from the crown.
   *
   * @param given what the job gives
   * @param extrados what its top runs up to; asked only where its upper width alone is given
   * @return 0 without a key; NaN where its widths are left open
   */
  static double half(CurvedSpec given, Intrados intrados, Extrados extrados) throws NoHead {
    HeadSpec.Key key = given.head().key();
    if (key == null) {
      return 0;
    }
    if (key.bottom() == null && key.top() == null) {
      return Double.NaN;
    }
    CrownKey crown = new CrownKey(intrados, given.joint(), key.drop().mm());
    boolean lower = key.bottom() != null;
    double width = lower ? key.bottom().mm() : key.top().mm();
    if (width < given.tick()) {
      throw given.refuse(
          lower ? "key.bottom" : "key.top",
          "a key is wider than nothing",
          given.near(
              lower ? "key.bottom" : "key.top",
              given.head().stones().target().mm(),
              "as wide as its neighbours are to be"));
    }
    if (!lower && extrados == null) {
      throw given.refuse(
          "key.top",
          "a stepped head's key is given by its lower width",
          given.near("key.bottom", width * 0.8, "a lower width in place of the upper one"));
    }
    Extrados top = lower ? null : extrados.raised(key.rise().mm());
    double lo = given.joint() / 2;
    double hi = intrados.length() * (1 - 1e-6);
    if (widthAt(crown, top, hi) <= width) {
      throw given.refuse(
          lower ? "key.bottom" : "key.top",
          "a key of " + given.say(width) + " is wider than the whole head",
          given.lower(
              lower ? "key.bottom" : "key.top",
              Math.min(given.head().stones().target().mm(), intrados.length() / 2),
              "no wider than its neighbours are to be"));
    }
    for (int i = 0; i < HALVINGS; i++) {
      double mid = (lo + hi) / 2;
      if (widthAt(crown, top, mid) < width) {
        lo = mid;
      } else {
        hi = mid;
      }
    }
    return hi;
  }

  /** Refuses a key whose sides lie down, and one that hangs so low that its sides meet. */
  static void check(CurvedSpec given, Division division) throws NoHead {
    HeadSpec.Key key = given.head().key();
    if (key == null) {
      return;
    }
    if (division.lines().get(0).along().y() < FLATTEST) {
      boolean hangs = key.drop().isPositive();
      throw given.refuse(
          hangs ? "key.drop" : key.top() == null ? "key.bottom" : "key.top",
          "the key would reach so far round the arch that its sides lie flatter than 30°",
          hangs
              ? given.change("key.drop", "0", "the key ends at the soffit")
              : given.near(
                  key.top() == null ? "key.bottom" : "key.top",
                  given.head().stones().target().mm(),
                  "as wide as its neighbours are to be"));
    }
    CrownKey crown = new CrownKey(division.intrados(), division.joint(), key.drop().mm());
    if (crown.bottom(division.lines().get(0).s()) < given.tick()) {
      if (crown.drop > 0) {
        throw given.refuse(
            "key.drop",
            "the key's sides meet before they reach its lower end",
            given.change("key.drop", "0", "the key ends at the soffit"));
      }
      throw given.refuse(
          key.top() == null ? "key" : "key.top",
          "the key's sides meet at the soffit: it has no lower edge",
          given.near(
              "key.bottom",
              given.head().stones().target().mm(),
              "as wide below as its neighbours are to be"));
    }
  }

  private static double widthAt(CrownKey crown, Extrados top, double s) {
    return top == null ? crown.bottom(s) : 2 * top.head(crown.edge(s)).x();
  }
}
