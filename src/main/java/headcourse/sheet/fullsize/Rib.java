package headcourse.sheet.fullsize;

import headcourse.bench.HeadWork;
import headcourse.geom.Box;
import headcourse.geom.Edge;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Similarity;
import headcourse.geom.Vec;
import headcourse.layout.HeadLayout;
import headcourse.layout.JointLine;
import headcourse.layout.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The right half of a centring's rib, true size: the soffit less the lagging that lies on the rib.
 *
 * @param curve from the centre line to the springing, y up
 * @param ticks what is marked along it
 */
record Rib(Path curve, List<Tick> ticks) {
  /** Chords of the longest soffit stand off its curve by less than a hundredth of a millimetre. */
  private static final int STEPS = 400;

  private static final double SHORT = 7;
  private static final double LONG = 25;

  Rib {
    ticks = List.copyOf(ticks);
  }

  /**
   * A mark across the rib.
   *
   * @param from on the curve
   * @param to away from it, towards the opening
   * @param text what it says; a word's key where {@code word}
   * @param word whether the text is the key of a word
   */
  record Tick(Point from, Point to, String text, boolean word) {}

  /** The rib of a head; empty where its soffit is not curved. */
  static Optional<Rib> of(HeadWork head, double lagging) {
    HeadLayout.Curve curve = head.layout().curve();
    if (curve == null || curve.striking() != null) {
      return Optional.empty();
    }
    List<Point> points = new ArrayList<>();
    Vec last = new Vec(0, -1);
    for (Edge e : curve.intrados().edges()) {
      if (e.to().x() <= 1e-9) {
        // The left half's end at an apex would be set off across the centre line.
        continue;
      }
      for (int i = 0; i <= STEPS; i++) {
        Point at = e.at((double) i / STEPS);
        if (at.x() < -1e-9) {
          continue;
        }
        Vec along = e.tangent((double) i / STEPS);
        last = new Vec(along.y(), -along.x());
        add(points, at.plus(last.times(lagging)));
      }
    }
    List<Point> right = fromCentre(points);
    if (right.size() < 2) {
      return Optional.empty();
    }
    List<Tick> ticks = new ArrayList<>();
    Point crown = right.get(0);
    ticks.add(new Tick(crown, new Point(0, crown.y() - LONG), "fullsize.rib-centre", true));
    Point foot = right.get(right.size() - 1);
    ticks.add(new Tick(foot, foot.plus(last.times(LONG)), "fullsize.rib-springing", true));
    for (JointLine j : head.layout().joints()) {
      if (j.side() == Side.RIGHT && !j.inner().isEmpty() && !j.outer().isEmpty()) {
        joint(right, j).ifPresent(ticks::add);
      }
    }
    return Optional.of(new Rib(Path.through(right.toArray(new Point[0])), ticks));
  }

  private static void add(List<Point> points, Point p) {
    if (points.isEmpty() || points.get(points.size() - 1).distance(p) > 1e-6) {
      points.add(p);
    }
  }

  /** Under an apex both halves' curves cross on the centre line, where each ends. */
  private static List<Point> fromCentre(List<Point> points) {
    List<Point> right = new ArrayList<>();
    for (int i = 0; i < points.size(); i++) {
      Point p = points.get(i);
      if (p.x() < 0) {
        continue;
      }
      if (right.isEmpty() && p.x() > 1e-9) {
        Point before = i > 0 ? points.get(i - 1) : new Point(-p.x(), p.y());
        double f = -before.x() / (p.x() - before.x());
        right.add(new Point(0, before.y() + f * (p.y() - before.y())));
      }
      add(right, p);
    }
    return right;
  }

  /** Where a joint's line, carried on inwards, crosses the rib. */
  private static Optional<Tick> joint(List<Point> rib, JointLine j) {
    Vec in = j.foot().minus(j.head()).unit();
    for (int i = 0; i + 1 < rib.size(); i++) {
      Vec step = rib.get(i + 1).minus(rib.get(i));
      Vec off = rib.get(i).minus(j.foot());
      double det = step.cross(in);
      if (Math.abs(det) < 1e-12) {
        continue;
      }
      double f = in.cross(off) / det;
      double reach = step.cross(off) / det;
      if (f >= -1e-9 && f <= 1 + 1e-9 && reach > -1e-6) {
        Point at = rib.get(i).plus(step.times(f));
        return Optional.of(
            new Tick(at, at.plus(in.times(SHORT)), j.inner() + " | " + j.outer(), false));
      }
    }
    return Optional.empty();
  }

  /** All that is drawn, as it lies. */
  Box box(Similarity lie) {
    Box box = curve.transformed(lie).bounds();
    for (Tick t : ticks) {
      box = box.union(Path.through(lie.apply(t.from), lie.apply(t.to)).bounds());
    }
    return box;
  }
}
