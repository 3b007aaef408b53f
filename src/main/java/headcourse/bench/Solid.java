package headcourse.bench;

import headcourse.geom.HalfPlane;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Region;
import java.util.Optional;

/**
 * A stone as a body: face slab and return.
 *
 * @param area of the face, mm²
 * @param volume mm³
 * @param centre of mass in the plane of the face, model space
 * @param depth of the centre of mass behind the face, mm
 */
record Solid(double area, double volume, Point centre, double depth) {
  /**
   * {@code V = t·area(face) + (s − t)·area(lowest t of the face)}, less the relief; t thickness, s
   * return. The lowest t is measured from the soffit's chord: a curved arris is worked from a
   * straight one.
   *
   * @param frame the stone
   * @param t thickness, mm
   * @param leg its return
   */
  static Solid of(StoneFrame frame, double t, ReturnLeg leg) {
    Path outline = frame.stone().outline();
    Region face = Region.within(outline);
    double slab = t * face.area();
    double back = Math.max(0, leg.depth().mm() - t);
    Optional<Path> strip =
        new HalfPlane(frame.lowerLeft().plus(frame.up().times(t)), frame.up().times(-1))
            .clip(outline);
    if (leg.relief().isPositive()) {
      strip = strip.flatMap(leg.kept(frame.stone().side())::clip);
    }
    if (back == 0 || strip.isEmpty()) {
      return new Solid(face.area(), slab, face.centroid(), t / 2);
    }
    Region under = Region.within(strip.get());
    double run = back * under.area();
    double share = run / (slab + run);
    return new Solid(
        face.area(),
        slab + run,
        face.centroid().towards(under.centroid(), share),
        t / 2 * (1 - share) + (t + back / 2) * share);
  }
}
