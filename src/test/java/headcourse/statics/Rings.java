package headcourse.statics;

import headcourse.geom.Point;
import headcourse.geom.Vec;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;

/** Circular arches of equal blocks with radial joints, inner radius one. */
final class Rings {
  private Rings() {}

  /** Where a block's weight is taken to act. */
  enum Weighed {
    /** At its centre of area. */
    TRULY,
    /** Along the middle line, in proportion to it. */
    MIDDLE_LINE
  }

  /** An arch whose joints are so many times as long as its inner radius, by a share. */
  static DoubleFunction<Blocks> of(
      double halfAngle, double depth, int blocks, double friction, Weighed weighed) {
    return share -> ring(halfAngle, depth * share, blocks, friction, weighed);
  }

  /** The same with depth over the radius of its middle line. */
  static Blocks byMiddle(
      double halfAngle, double ratio, int blocks, double friction, Weighed weighed) {
    return ring(halfAngle, ratio / (1 - ratio / 2), blocks, friction, weighed);
  }

  /** Depth over the radius of the middle line. */
  static double ratio(double depth) {
    return depth / (1 + depth / 2);
  }

  private static Blocks ring(double half, double t, int n, double friction, Weighed weighed) {
    List<Joint> joints = new ArrayList<>();
    List<Load> loads = new ArrayList<>();
    double out = 1 + t;
    for (int i = 0; i <= n; i++) {
      double a = -half + 2 * half * i / n;
      Vec v = new Vec(Math.sin(a), Math.cos(a));
      joints.add(new Joint(Point.ORIGIN.plus(v), Point.ORIGIN.plus(v.times(out))));
      if (i > 0) {
        double b = a - 2 * half / n;
        double reach =
            weighed == Weighed.TRULY
                ? 2 * (Math.pow(out, 3) - 1) / (3 * (out * out - 1))
                : 1 + t / 2;
        loads.add(
            new Load((out * out - 1) / 2 * (a - b), reach * (Math.cos(b) - Math.cos(a)) / (a - b)));
      }
    }
    return new Blocks(joints, loads, friction);
  }
}
