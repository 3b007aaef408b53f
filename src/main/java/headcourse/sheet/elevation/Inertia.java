package headcourse.sheet.elevation;

import headcourse.geom.Point;
import headcourse.geom.Vec;
import java.util.List;

/** How the area of a polygon is spread about its centroid. */
final class Inertia {
  private Inertia() {}

  /**
   * Direction of the axis along which a polygon is longest, radians from x towards y, above -π/2 up
   * to π/2: of its second moments {@code Ix, Iy, Ixy} half the angle of {@code (Ix - Iy, 2 Ixy)}.
   */
  static double axis(List<Point> vertices, Point centroid) {
    double xx = 0;
    double yy = 0;
    double xy = 0;
    double area = 0;
    Point last = vertices.get(vertices.size() - 1);
    for (Point p : vertices) {
      Vec a = last.minus(centroid);
      Vec b = p.minus(centroid);
      double cross = a.cross(b);
      xx += cross * (a.x() * a.x() + a.x() * b.x() + b.x() * b.x());
      yy += cross * (a.y() * a.y() + a.y() * b.y() + b.y() * b.y());
      xy += cross * (a.x() * (2 * a.y() + b.y()) + b.x() * (a.y() + 2 * b.y())) / 2;
      area += cross;
      last = p;
    }
    double sign = Math.signum(area);
    return Math.atan2(2 * xy * sign, (xx - yy) * sign) / 2;
  }
}
