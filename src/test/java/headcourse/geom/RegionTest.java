package headcourse.geom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class RegionTest {
  private static final double TINY = 1e-9;

  /** Half disc: area πr²/2, centroid 4r/3π from the diameter (any table of centroids). */
  @Test
  void halfDisc() {
    Path half =
        new Path(
            List.of(
                new Arc(new Point(100, 50), 30, 0, Math.PI),
                new Straight(new Point(70, 50), new Point(130, 50))),
            true);
    Region r = Region.within(half);
    assertEquals(Math.PI * 450, r.area(), TINY);
    assertEquals(100, r.centroid().x(), TINY);
    assertEquals(50 + 4 * 30 / (3 * Math.PI), r.centroid().y(), TINY);
  }

  /** Segment of chord 21 and height 6: area 89.254148 (general geometry reference, recomputed). */
  @Test
  void segmentCutFromItsCircle() {
    Path circle = Path.circle(new Point(0, 6 - 12.1875), 12.1875);
    Path segment = new HalfPlane(Point.ORIGIN, new Vec(0, 1)).clip(circle).orElseThrow();
    assertEquals(89.254148, Region.within(segment).area(), 1e-6);
    assertEquals(21, Extent.along(segment, new Vec(1, 0)).length(), 1e-9);
    assertEquals(6, Extent.along(segment, new Vec(0, 1)).length(), 1e-9);
  }

  /** Quarter ellipse: area πab/4, centroid 4a/3π, 4b/3π (any table of centroids). */
  @Test
  void quarterEllipseTurned() {
    EllipticArc whole = new EllipticArc(new Point(5, 7), 60, 24, 0.4, 0, 2 * Math.PI);
    Path path = new Path(List.of(whole), true);
    Vec a = Vec.direction(0.4);
    Path quarter =
        new HalfPlane(new Point(5, 7), a)
            .clip(path)
            .flatMap(new HalfPlane(new Point(5, 7), a.normal())::clip)
            .orElseThrow();
    Region r = Region.within(quarter);
    assertEquals(Math.PI * 60 * 24 / 4, r.area(), 1e-8);
    Vec c = r.centroid().minus(new Point(5, 7));
    assertEquals(4 * 60 / (3 * Math.PI), c.dot(a), TINY);
    assertEquals(4 * 24 / (3 * Math.PI), c.dot(a.normal()), TINY);
  }

  @Test
  void partsAddUp() {
    Path ring =
        new Path(
            List.of(
                new Arc(Point.ORIGIN, 80, 0.3, 2),
                new Straight(
                    Point.ORIGIN.plus(Vec.direction(2.3).times(80)),
                    Point.ORIGIN.plus(Vec.direction(2.3).times(50))),
                new Arc(Point.ORIGIN, 50, 2.3, -2),
                new Straight(
                    Point.ORIGIN.plus(Vec.direction(0.3).times(50)),
                    Point.ORIGIN.plus(Vec.direction(0.3).times(80)))),
            true);
    Region whole = Region.within(ring);
    assertEquals((80 * 80 - 50 * 50) * 2 / 2.0, whole.area(), TINY);
    // A level line through the hollow leaves two feet below it.
    HalfPlane above = new HalfPlane(new Point(0, 40), new Vec(0, 1));
    HalfPlane below = new HalfPlane(new Point(0, 40), new Vec(0, -1));
    Region top = Region.within(above.clip(ring).orElseThrow());
    Region feet = Region.within(below.clip(ring).orElseThrow());
    assertEquals(whole.area(), top.area() + feet.area(), 1e-8);
    assertTrue(feet.area() > 0);
    assertEquals(
        whole.area() * whole.centroid().y(),
        top.area() * top.centroid().y() + feet.area() * feet.centroid().y(),
        1e-6);
  }

  @Test
  void nothingInside() {
    HalfPlane far = new HalfPlane(new Point(0, 100), new Vec(0, 1));
    assertTrue(far.clip(Path.rect(0, 0, 10, 10)).isEmpty());
    assertEquals(100, Region.within(Path.rect(0, 0, 10, 10)).area(), TINY);
  }
}
